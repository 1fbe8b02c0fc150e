/**
 * Random calls of every function. As many as `npm run hostile:calls -- N` asks for, by default 200,000 in all.
 *
 * Not asserted value by value but as laws: see judge.ts.
 */
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import type { Argument } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { callFault, usFault } from './judge.ts';
import { anyCall, goodCall, shown } from './random-calls.ts';

const SEED = Number(process.env.HOSTILE_SEED ?? 20261125);
const CALLS = Number(process.env.HOSTILE_CALLS ?? 200_000);

/** Whole jobs and packings take some hundred times as long as the others, so fewer calls go to them. */
const LONG: ReadonlySet<string> = new Set(['COMPARE', 'PLAN', 'CUT_LIST', 'COLLECTION', 'MIX_TABLE', 'CHECK']);
const LONG_SHARE: number = 0.05;
const shares = functions.map(({ id }) => (LONG.has(id) ? LONG_SHARE : 1));
const WHOLE = CALLS / shares.reduce((sum, share) => sum + share);

/** Of the calls of one function: anything at all; the others should come to something. */
const ANY = 0.6;
const counts = (id: string): { any: number; good: number } => {
  const all = Math.ceil(WHOLE * (LONG.has(id) ? LONG_SHARE : 1));
  const any = Math.ceil(all * ANY);
  return { any, good: all - any };
};

/** The published tables of lifting have their own rounded numbers for each system. */
const PARALLEL: ReadonlySet<string> = new Set(['LIFT_LIMIT', 'LIFT_INDEX']);

let tried = 0;

const run = (arbitrary: fc.Arbitrary<Argument[]>, numRuns: number, fault: (args: Argument[]) => string | undefined) => {
  let what = '';
  const property = fc.property(arbitrary, (args) => {
    tried++;
    let found: string | undefined;
    try {
      found = fault(args);
    } catch (error) {
      found = `an exception: ${(error as Error).stack?.split('\n').slice(0, 3).join(' ')}`;
    }
    if (found) what = found;
    return found === undefined;
  });
  const { failed, counterexample, counterexamplePath } = fc.check(property, { seed: SEED, numRuns });
  if (failed)
    throw new Error(
      `${what}; arguments ${fc.stringify(shown(counterexample?.[0]))}; seed ${SEED}, path ${counterexamplePath}`,
    );
};

describe.each(functions.map((f) => [f.id, f] as const))('%s', (_, f) => {
  test('any cells at all', () => {
    run(anyCall(f), counts(f.id).any, (args) => callFault(f, args));
  });

  test('calls that should come to something, in both systems of units', () => {
    const inBoth = f.takesSettings && !PARALLEL.has(f.id) && f.id !== 'SETTINGS';
    run(goodCall(f), counts(f.id).good, (args) => callFault(f, args) ?? (inBoth ? usFault(f, args) : undefined));
  });
});

// A function that fails stops early, so the number holds where all pass.
afterAll(() => {
  process.stdout.write(`${tried} calls of ${functions.length} functions\n`);
});

test('as many calls as were asked for', () => {
  const planned = functions.map(({ id }) => counts(id)).reduce((sum, { any, good }) => sum + any + good, 0);
  expect(planned).toBeGreaterThanOrEqual(CALLS);
});
