import { expect, test } from 'vitest';
import { plan } from '../../../src/calculation/plans/plan.ts';
import { ADVICE, PLAN_ROWS } from '../../../src/calculation/plans/plan-rows.ts';
import { settings } from '../kit.ts';

const LABELS =
  'padding, surface area, volume, seam, shell area, layers, mean layers, thickness, outer length, outer width, outer height, plaster, water, slurry, mixes, mix temperature, cloth, padding sheets, sealer, weight, wet weight, drying time, foot size, margin, balance height, tip angle, stable, largest foot load, foot pressure, safety factor, weakest, safety factor when made, strong enough, rib height, bolts, turn weight, shelf load, crew, advice';

test('labels stand in the order of the contract', () => {
  expect([...PLAN_ROWS.map(({ label }) => label), ADVICE].join(', ')).toBe(LABELS);
});

test('every quantity of a plan has its row, and each row its quantity', () => {
  const made = plan({ length: 0.6, width: 0.4, height: 0.3, weight: 20 }, settings());
  expect(PLAN_ROWS.map(({ of }) => of).sort()).toEqual(Object.keys(made).sort());
  for (const { of, quantity } of PLAN_ROWS)
    expect(typeof made[of] === 'number', of).toBe(quantity !== null && of !== 'crew');
  expect(made.crew).toBe('hoist');
});
