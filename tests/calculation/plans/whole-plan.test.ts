import { expect, test } from 'vitest';
import { plan } from '../../../src/calculation/plans/plan.ts';
import { wholePlan } from '../../../src/calculation/plans/whole-plan.ts';
import { known, settings } from '../kit.ts';

const SPECIMEN = { length: 0.6, width: 0.4, height: 0.3, weight: 20 };

test('a padding of its own beats that of the settings, and its density follows', () => {
  const foam = settings({ padding: 'foam' });
  expect(known(wholePlan(SPECIMEN, 'foam', settings())).plan).toEqual(plan(SPECIMEN, foam));
  expect(known(wholePlan(SPECIMEN, 'felt', foam)).plan).toEqual(plan(SPECIMEN, settings()));
});

test('left out, the padding is that of the settings', () => {
  const foam = settings({ padding: 'foam' });
  expect(known(wholePlan(SPECIMEN, undefined, foam)).plan).toEqual(plan(SPECIMEN, foam));
});

test('ends and advice are those of the padding that was asked for', () => {
  const made = known(wholePlan(SPECIMEN, 'foam', settings()));
  expect(made.ends.mixes).toEqual({ low: 4, high: 4 });
  expect(made.advice).toBe('Too heavy for three people: lift it with a hoist.');
});
