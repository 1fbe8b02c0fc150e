/** What the search for a browser asks of the machine. */
export interface Machine {
  readonly platform: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly isRoot: boolean;
  readonly canRun: (path: string) => boolean;
  readonly release: () => string;
  readonly run: (program: string, args: string[]) => boolean;
  readonly log: (text: string) => void;
}

export function candidates(platform: string, env: Machine['env']): string[];
export function findChromium(machine?: Pick<Machine, 'platform' | 'env' | 'canRun'>): string | undefined;
export function ensureChromium(options?: { readonly install?: boolean } & Partial<Machine>): string;
export function launchArgs(isRoot?: boolean): string[];
