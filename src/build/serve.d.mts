import type { Server } from 'node:http';

export const PORT: number;
export const POLICY: string;
export function fileFor(path: string, dist: string, samples: string): string | undefined;
export function serve(options?: {
  readonly port?: number;
  readonly dist?: string;
  readonly samples?: string;
  readonly ready?: Promise<unknown>;
}): Promise<{
  readonly server: Server;
  readonly port: number;
  readonly address: string;
  close(): Promise<void>;
}>;
