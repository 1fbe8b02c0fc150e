import type { BookPlan } from './samples/book.ts';

export function makeSamples(
  samples: readonly (() => BookPlan)[],
  layOut: (plan: BookPlan) => Promise<Uint8Array>,
): Promise<Map<string, { readonly bytes: Uint8Array; readonly summary: string }>>;
