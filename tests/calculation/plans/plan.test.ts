import { describe, expect, test } from 'vitest';
import { feet } from '../../../src/calculation/feet/feet.ts';
import { footLoads } from '../../../src/calculation/feet/foot-loads.ts';
import { MIDDLE } from '../../../src/calculation/feet/points.ts';
import { crew } from '../../../src/calculation/handling/crew.ts';
import { plan } from '../../../src/calculation/plans/plan.ts';
import { safetyFactor } from '../../../src/calculation/strength/safety-factor.ts';
import { EXAMPLE, expectFault, expectNear, known, settings } from '../kit.ts';

const SPECIMEN = { length: 0.6, width: 0.4, height: 0.3, weight: 20 };

/** A section, a plate and a shell are worked out: both ways of calculating them leave this much open. */
const STRENGTH = 5e-3;

describe('the example', () => {
  const made = plan(SPECIMEN, settings());
  test('has its values', () => {
    expectNear(made.shellArea, 0.7923952088, EXAMPLE);
    expectNear(made.plaster, 16.55436172, EXAMPLE);
    expectNear(made.weight, 40.09227299, EXAMPLE);
    expectNear(made.tipAngle, 19.90005581, EXAMPLE);
    expectNear(made.safetyFactor, 5.394734468, STRENGTH);
  });
  test('stands, holds, and needs a hoist', () => {
    expect(made).toMatchObject({
      padding: 'felt',
      stable: true,
      strongEnough: true,
      layers: 6,
      mixes: 2,
      crew: 'hoist',
    });
    expect(made.weakest).toBe('across, lifted by the flanges');
  });
  test('is wet at first, when it is weaker and heavier', () => {
    const wet = settings({ condition: 'wet' });
    expect(made.safetyFactorWhenMade).toBe(safetyFactor(0.6, 0.4, 0.3, known(made.wetWeight), 7, wet));
    expectNear(made.turnWeight, known(made.wetWeight) / 2, 1e-15);
  });
  test('puts the largest load of its feet on one foot', () => {
    const three = known(feet(0.6, 0.4, known(made.weight), MIDDLE, settings()));
    expect(made.largestFootLoad).toBe(Math.max(...known(footLoads(three, MIDDLE, known(made.weight)))));
  });
});

test('crew is counted from the wet weight and the outer width', () => {
  const made = plan({ length: 0.3, width: 0.25, height: 0.1, weight: 4 }, settings());
  expect(made.crew).toBe(crew(known(made.wetWeight), 23, known(made.outerWidth)));
  expect(made.crew).toBeTypeOf('number');
});

test('length and width may come in any order', () => {
  const turned = plan({ ...SPECIMEN, length: 0.4, width: 0.6 }, settings());
  const made = plan(SPECIMEN, settings());
  // Sums in another order.
  for (const key of ['shellArea', 'outerLength', 'outerWidth', 'margin', 'safetyFactor', 'plaster'] as const)
    expectNear(turned[key], known<number>(made[key]), 1e-12);
});

test('layers of the settings, not those of the specimen alone, make the wall', () => {
  const made = plan(SPECIMEN, settings({ coverLayers: 2 }));
  expectNear(made.thickness, 8 * 1.5e-3 + 1e-3, 1e-14);
});

test('where feet have no room, all that needs none of them is still there', () => {
  const made = plan(SPECIMEN, settings({ footSize: 0.35 }));
  for (const key of ['margin', 'tipAngle', 'stable', 'largestFootLoad', 'footPressure'] as const)
    expectFault(made[key], 'none');
  expectNear(made.shellArea, 0.7923952088, EXAMPLE);
  expect(made.footSize).toBe(0.35);
});

test('not strong enough just below the target', () => {
  const factor = known(plan(SPECIMEN, settings()).safetyFactor);
  expect(plan(SPECIMEN, settings({ targetSafetyFactor: factor })).strongEnough).toBe(true);
  expect(plan(SPECIMEN, settings({ targetSafetyFactor: factor * 1.001 })).strongEnough).toBe(false);
});
