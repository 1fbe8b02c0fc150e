/** What host-stand-in.js puts on the page. */
export interface HostAnswer {
  readonly ok: boolean;
  readonly value: unknown;
  readonly code?: number;
}

export interface HostCall {
  readonly id: string;
  readonly args: readonly unknown[];
  readonly addresses?: readonly (string | null)[];
}

export interface StandInCell {
  f?: string;
  v?: unknown;
  spill?: [number, number];
}

export interface HostStandIn {
  call(id: string, args: readonly unknown[], options?: { addresses?: readonly (string | null)[] }): Promise<HostAnswer>;
  callMany(calls: readonly HostCall[]): Promise<HostAnswer[]>;
  callAndCancel(id: string, args: readonly unknown[], wait: number, patience: number): Promise<HostAnswer | undefined>;
  readonly workbook: {
    sheets: Record<string, Record<string, StandInCell>>;
    names: Record<string, string>;
    log: unknown[][];
    unknown: string[];
  };
  select(sheet: string, address: string): void;
  calculated(): void;
  failNext(code: string): void;
}

declare global {
  interface Window {
    readonly hostStandIn: HostStandIn;
  }
}
