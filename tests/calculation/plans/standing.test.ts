import { expect, test } from 'vitest';
import { standing } from '../../../src/calculation/plans/standing.ts';
import { noAnswer } from '../../../src/calculation/result.ts';
import { EXAMPLE, expectFault, expectNear, ROUNDING, settings } from '../kit.ts';

const SPECIMEN = { length: 0.6, width: 0.4, height: 0.3, weight: 20 };

test('balance height by hand: foot 10 cm, wall 11.5 mm, padding 6.35 mm, half of 30 cm', () => {
  const stands = standing(SPECIMEN, 7, 40, settings());
  expectNear(stands.balanceHeight, 0.1 + 0.0115 + 0.00635 + 0.15, ROUNDING);
});

test('margin and tip angle of the example', () => {
  const stands = standing(SPECIMEN, 7, 40, settings());
  expectNear(stands.margin, 0.09696064153, EXAMPLE);
  expectNear(stands.tipAngle, 19.90005581, EXAMPLE);
});

test('feet with no room leave the height known', () => {
  const stands = standing(SPECIMEN, 7, 40, settings({ footSize: 0.5 }));
  expectFault(stands.margin, 'none');
  expectFault(stands.tipAngle, 'none');
  expectNear(stands.balanceHeight, 0.5 + 0.0115 + 0.00635 + 0.15, ROUNDING);
});

test('without layers there is no height, and so no angle', () => {
  const fault = noAnswer('no layers');
  const stands = standing(SPECIMEN, fault, 40, settings());
  expect([stands.balanceHeight, stands.tipAngle]).toEqual([fault, fault]);
  expectNear(stands.margin, 0.09696064153, EXAMPLE);
});
