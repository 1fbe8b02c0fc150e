import type { Output } from '../../src/cli/output.ts';

/** An output that keeps what a command writes. */
export interface Recorded extends Output {
  readonly printed: string[];
  readonly explained: string[];
}

export function recorded(): Recorded {
  const printed: string[] = [];
  const explained: string[] = [];
  return {
    printed,
    explained,
    out: (text) => printed.push(text),
    error: (text) => explained.push(text),
    progress: () => undefined,
  };
}
