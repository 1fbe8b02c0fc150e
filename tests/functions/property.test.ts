/** What must hold for every function of the registry, on random input with fixed seeds. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Quantity } from '../../src/calculation/result.ts';
import { type Answer, type Argument, type Cell, CellError, isCellError } from '../../src/functions/calling/cell.ts';
import { LONGEST_REASON } from '../../src/functions/calling/reasons.ts';
import { fromSi, toSi } from '../../src/functions/calling/units.ts';
import type { Example, NamedArgument, WorksheetFunction } from '../../src/functions/define.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from './compare.ts';

const SEED = 20260103;

const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.01, max: 500, noNaN: true }) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 2, arbitrary: fc.constantFrom<Cell>(null, '', 0, -1, 1e308, 5e-324, true, false) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<Cell>('us', 'metric', 'felt', 'high', 'good', 'sandstone', '12 in', 'PLASTER'),
  },
  { weight: 1, arbitrary: fc.string() },
  { weight: 1, arbitrary: fc.constantFrom<Cell>(new CellError('#N/A', ''), new CellError('#DIV/0!', 'by hand')) },
);
const rows = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }))
  .chain(([r, c]) => fc.array(fc.array(anyCell, { minLength: c, maxLength: c }), { minLength: r, maxLength: r }));
const anyArgument: fc.Arbitrary<Argument> = fc.oneof({ weight: 3, arbitrary: anyCell }, { weight: 1, arbitrary: rows });

const cellsOf = (answer: Answer): unknown[] => (Array.isArray(answer) ? answer.flat() : [answer]);

describe.each(functions.map((f) => [f.id, f] as const))('%s on anything at all', (_, f) => {
  test('never throws, and answers numbers, words, or reasons that can be shown', () => {
    fc.assert(
      fc.property(fc.array(anyArgument, { maxLength: 9 }), (args) => {
        const answer = f.call(args);
        for (const cell of cellsOf(answer)) {
          expect(cell).not.toBeNull();
          expect(cell).toBeDefined();
          if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
          if (isCellError(cell)) {
            expect(cell.reason.length).toBeLessThanOrEqual(LONGEST_REASON);
            expect(cell.reason).not.toMatch(/undefined|NaN|\[object|\{\w+\}|null/);
          }
        }
        expect(f.call(args)).toEqual(answer);
        for (const text of cellsOf(f.check(args))) expect(typeof text).toMatch(/string|object/);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

const spills = (f: WorksheetFunction) => f.arguments.some(({ takes }) => takes === 'cells');

describe.each(functions.filter(spills).map((f) => [f.id, f] as const))('%s in a column', (_, f) => {
  test('gives what single calls give', () => {
    const positions = f.arguments.map(({ takes }) => takes === 'cells');
    fc.assert(
      fc.property(
        fc.array(fc.array(anyCell, { minLength: positions.length, maxLength: positions.length }), {
          minLength: 2,
          maxLength: 5,
        }),
        (table) => {
          const fixed = positions.map((q, i) =>
            q ? null : f.arguments[i]!.name === 'settings' ? 'us' : table[0]![i]!,
          );
          const columns = positions.map((q, i): Argument => (q ? table.map((row) => [row[i]!]) : fixed[i]!));
          const answer = f.call(columns);
          if (isCellError(answer)) {
            expect(f.call(positions.map((q, i) => (q ? table[0]![i]! : fixed[i]!)))).toEqual(answer);
            return;
          }
          const singles = table.map((row) => [f.call(positions.map((q, i) => (q ? row[i]! : fixed[i]!)))]);
          expect(answer).toEqual(singles);
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });
});

/** Cells with the same physics in the other system of units. */
const inOther = (args: readonly Argument[], list: readonly NamedArgument[]): Argument[] =>
  args.map((one, i) => {
    const quantity = list[i]?.quantity;
    return quantity && typeof one === 'number' ? fromSi(toSi(one, quantity, 'metric'), quantity, 'us') : one;
  });

/** LIFT_LIMIT's source publishes parallel constants for both systems, not exact conversions. */
const PARALLEL = new Set(['LIFT_LIMIT', 'LIFT_INDEX']);

const isPlain = ({ args }: Example) => args.length > 0 && args.every((one) => typeof one === 'number');

describe.each(
  functions
    .filter((f) => f.takesSettings && f.result.kind === 'number' && !PARALLEL.has(f.id))
    .filter((f) => f.examples.some(isPlain))
    .map((f) => [f.id, f] as const),
)('%s in US units', (_, f) => {
  test.each(f.examples.filter(isPlain).map((e) => [e] as const))('is the metric result converted', ({ args }) => {
    const list = f.arguments;
    const quantity = (f.result as { quantity: Quantity }).quantity;
    const padded = [...args, ...Array.from({ length: list.length - 1 - args.length }, () => null)];
    const metric = f.call([...padded, 'metric']) as number;
    const us = f.call([...inOther(padded, list), 'us']) as number;
    // Some twenty roundings lie between the two ways.
    expect(difference(us, fromSi(toSi(metric, quantity, 'metric'), quantity, 'us'), 1e-12)).toBeUndefined();
  });
});
