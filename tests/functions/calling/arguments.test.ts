import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { guardOf, Refusal } from '../../../src/functions/calling/arguments.ts';
import { functions } from '../../../src/functions/index.ts';

describe('the guard made from a schema decides as the schema does', () => {
  test.each([
    ['positive', z.number().positive()],
    ['nonnegative', z.number().nonnegative()],
    ['any finite number', z.number()],
    ['a range', z.number().min(0.3).max(10)],
    ['an open range', z.number().gt(0.3).lt(10)],
    ['whole', z.number().int().positive()],
  ])('%s', (_, schema) => {
    const guard = guardOf(schema);
    fc.assert(
      fc.property(
        fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer(), fc.constantFrom(0, -0, 0.3, 10)),
        (x) => {
          // zod takes whole numbers only up to 2⁵³; beyond that every double is whole, and so says the guard.
          fc.pre(Math.abs(x) <= Number.MAX_SAFE_INTEGER || schema.safeParse(1.5).success);
          expect(guard(x)).toBe(schema.safeParse(x).success);
        },
      ),
      { seed: 20260101, numRuns: 500 },
    );
  });
});

test('every number argument of the registry refuses what its schema refuses', () => {
  for (const f of functions)
    for (const argument of f.arguments) {
      if (argument.takes === 'range' || argument.schema?.def?.type !== 'number') continue;
      for (const x of [-1, 0, 1, 1e-300, 1e300])
        expect(guardOf(argument.schema)(x), `${f.id} ${argument.name} ${x}`).toBe(argument.schema.safeParse(x).success);
    }
});

test('a refusal keeps its reason within what hosts carry', () => {
  expect(new Refusal('x'.repeat(400)).reason).toHaveLength(250);
});
