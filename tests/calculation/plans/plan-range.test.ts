import { describe, expect, test } from 'vitest';
import { type Plan, plan } from '../../../src/calculation/plans/plan.ts';
import { type Ends, planRange } from '../../../src/calculation/plans/plan-range.ts';
import { PLAN_ROWS } from '../../../src/calculation/plans/plan-rows.ts';
import type { Specimen } from '../../../src/calculation/plans/specimen.ts';
import { isFault } from '../../../src/calculation/result.ts';
import type { Given } from '../../../src/calculation/settings.ts';
import { EXAMPLE, expectFault, expectNear, known, settings } from '../kit.ts';

const SPECIMEN: Specimen = { length: 0.6, width: 0.4, height: 0.3, weight: 20 };

const rangeOf = (given: Given = {}, specimen = SPECIMEN) => {
  const shop = settings(given);
  const central = plan(specimen, shop);
  return { central, ends: planRange(specimen, shop, central) };
};

/** The ends of the contract's table, written out once more. */
const MOVES: readonly (readonly [Given, Given])[] = [
  [{ layerThickness: 1.2e-3 }, { layerThickness: 2e-3 }],
  [{ finishCoat: 0.5e-3 }, { finishCoat: 2e-3 }],
  [{ waterRatio: 0.38 * 0.9 }, { waterRatio: 0.38 * 1.1 }],
  [{ clothWeight: 0.203434484849 * 0.95 }, { clothWeight: 0.203434484849 * 1.05 }],
  [{ waste: 0.05 }, { waste: 0.2 }],
  [{ flange: 0.04 }, { flange: 0.07 }],
  [{ lap: 0.03 }, { lap: 0.08 }],
  [{ paddingDensity: 149.506 * 0.8 }, { paddingDensity: 149.506 * 1.2 }],
  [{ flexuralStrength: 8273708.752 * 0.7 }, { flexuralStrength: 8273708.752 * 1.3 }],
];

const COUNTS = new Set<keyof Plan>(['layers', 'mixes', 'bolts', 'crew']);

test('plaster of the example', () => {
  const { ends } = rangeOf();
  expectNear(ends.plaster!.low as number, 12.74926799, EXAMPLE);
  expectNear(ends.plaster!.high as number, 22.67275523, EXAMPLE);
});

describe('one at a time, in quadrature, for every quantity that is no count', () => {
  const { central, ends } = rangeOf();
  const surface = known(central.surfaceArea);
  const moved: readonly (readonly [Plan, Plan])[] = [
    ...MOVES.map(([low, high]) => [plan(SPECIMEN, settings(low)), plan(SPECIMEN, settings(high))] as const),
    [
      plan({ ...SPECIMEN, surface: surface * 0.85 }, settings()),
      plan({ ...SPECIMEN, surface: surface * 1.15 }, settings()),
    ],
    [plan({ ...SPECIMEN, weight: 18 }, settings()), plan({ ...SPECIMEN, weight: 22 }, settings())],
  ];
  test.each(PLAN_ROWS.filter(({ of, quantity }) => quantity && !COUNTS.has(of)).map(({ of }) => of))('%s', (of) => {
    const middle = central[of] as number;
    let below = 0;
    let above = of === 'dryingTime' ? middle ** 2 : 0;
    for (const pair of moved) {
      const values = [middle, ...pair.map((one) => one[of] as number)];
      below += (middle - Math.min(...values)) ** 2;
      above += (Math.max(...values) - middle) ** 2;
    }
    const { low, high } = ends[of] as Ends<number>;
    // Sums in another order, of ends that were rounded elsewhere.
    expect(low as number).toBeCloseTo(middle - Math.sqrt(below), 9);
    expect(high as number).toBeCloseTo(middle + Math.sqrt(above), 9);
  });
});

test('words and TRUE or FALSE have no ends', () => {
  const { ends } = rangeOf();
  for (const { of, quantity } of PLAN_ROWS) expect(ends[of] === undefined, of).toBe(quantity === null);
});

test('counts are counted at the ends of what they are counted from', () => {
  const { central, ends } = rangeOf({ layingRate: 0.05, padding: 'foam' }, { ...SPECIMEN, weight: 60 });
  expect([ends.layers!.low, central.layers, ends.layers!.high]).toEqual([8, 8, 8]);
  const slurry = ends.slurry as Ends<number>;
  const oneMix = 0.05 * 40 * (1.5e-3 - 0.203434484849 / 2540);
  expect(ends.mixes).toEqual({
    low: 2 * Math.ceil((slurry.low as number) / 2 / oneMix),
    high: 2 * Math.ceil((slurry.high as number) / 2 / oneMix),
  });
  expect(ends.bolts).toEqual({ low: central.bolts, high: central.bolts });
});

test('layers at the two ends of the weight', () => {
  const { ends } = rangeOf({}, { ...SPECIMEN, weight: 100 });
  // By hand: 4 + 12·√((90 − 2)/498) = 9.04 and 4 + 12·√(108/498) = 9.59.
  expect(ends.layers).toEqual({ low: 9, high: 10 });
});

test('a crew may be people at the one end and a hoist at the other', () => {
  const { ends } = rangeOf({}, { length: 0.5, width: 0.3, height: 0.2, weight: 16 });
  expect(ends.crew).toEqual({ low: 2, high: 'hoist' });
});

test('a value of the shop narrows the range to 5 % of it', () => {
  const { central, ends } = rangeOf({ waste: 0.3, layerThickness: 2e-3 });
  const wide = rangeOf({}).ends;
  const sheets = ends.paddingSheets as Ends<number>;
  const [low, high] = [0.285, 0.315].map((waste) => plan(SPECIMEN, settings({ waste, layerThickness: 2e-3 })));
  expect(sheets.low as number).toBeLessThan(known(low!.paddingSheets));
  expect(sheets.high as number).toBeGreaterThan(known(high!.paddingSheets));
  const spread = ({ low: a, high: b }: Ends<number>, middle: number) => ((b as number) - (a as number)) / middle;
  expect(spread(ends.thickness as Ends<number>, known(central.thickness))).toBeLessThan(
    spread(wide.thickness as Ends<number>, 0.0115),
  );
});

test('a calibration that was measured is one more input, and what it was measured with keeps still', () => {
  const given = { calibration: 1.1, calibrationLow: 1, calibrationHigh: 1.3 };
  const { central, ends } = rangeOf(given);
  expect(ends.thickness).toEqual({ low: central.thickness, high: central.thickness });
  const middle = known(central.plaster);
  expect(ends.plaster!.high as number).toBeGreaterThan((middle * 1.3) / 1.1);
  expect(ends.plaster!.low as number).toBeLessThan((middle * 1) / 1.1);
});

test('drying takes as long as calculated, or up to twice as long', () => {
  const { ends } = rangeOf({ calibrationLow: 1, calibrationHigh: 1, clothWeight: 0 });
  // Cloth of no weight has no range, and all else that drying hangs on keeps still.
  const middle = known(plan(SPECIMEN, settings({ clothWeight: 0 })).dryingTime);
  expectNear(ends.dryingTime!.low as number, middle, 1e-12);
  expectNear(ends.dryingTime!.high as number, 2 * middle, 1e-12);
});

test('where an end has no answer, its fault stands in low and high; where the plan has none, the same fault', () => {
  // Feet of 35 cm have no room under 40 cm.
  const none = rangeOf({ footSize: 0.35 });
  for (const of of ['margin', 'tipAngle', 'largestFootLoad'] as const) {
    expectFault(none.central[of], 'none');
    expect(none.ends[of]).toEqual({ low: none.central[of], high: none.central[of] });
  }
  const damp = rangeOf({ waste: 0.98 });
  // Waste of 0.98 and 5 % more is no waste that the settings take: what hangs on it has no upper end, all else has.
  for (const of of ['plaster', 'water', 'slurry', 'mixes', 'cloth', 'paddingSheets', 'sealer'] as const) {
    expectFault(damp.ends[of]!.low, 'value', 'waste');
    expectFault(damp.ends[of]!.high, 'value', 'waste');
  }
  for (const of of ['surfaceArea', 'weight', 'thickness', 'dryingTime', 'safetyFactor', 'crew'] as const)
    expect(isFault(damp.ends[of]!.low) || isFault(damp.ends[of]!.high), of).toBe(false);
});

test('a surface that may be nothing at all has no low end', () => {
  const { ends } = rangeOf({ shapeUncertainty: 1 });
  expectFault(ends.surfaceArea!.low, 'value', 'shape uncertainty');
  expectFault(ends.plaster!.high, 'value', 'shape uncertainty');
  expect(isFault(ends.thickness!.low)).toBe(false);
});

test('no end is below 0, also where the feet jump to another place', () => {
  // Some more weight makes this jaw long and heavy, whichever input it comes from.
  const { ends } = rangeOf({}, { length: 0.72, width: 0.17, height: 0.1, weight: 13 });
  expect(ends.tipAngle!.low).toBe(0);
});
