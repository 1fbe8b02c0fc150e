import { expect, test } from 'vitest';
import { layerArea, patchArea, stripArea } from '../../../src/calculation/plans/layer-area.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

test('strips by hand: two halves, two layers of 10.16 cm on a seam of 1.5 m', () => {
  expectNear(stripArea(1.5, settings()), 2 * 1.5 * 0.1016 * 2, ROUNDING);
  expect(stripArea(1.5, settings({ edgeStripLayers: 0 }))).toBe(0);
});

test('patches by hand: six feet, each with six of 15 cm and five of 10 cm', () => {
  expectNear(patchArea(0.6, 0.4, settings()), 6 * (6 * 0.15 ** 2 + 5 * 0.1 ** 2), ROUNDING);
});

test('patches of a small specimen follow its foot, a third of the width', () => {
  expectNear(patchArea(0.3, 0.12, settings()), 6 * (6 * 0.06 ** 2 + 5 * 0.04 ** 2), ROUNDING);
  expectNear(patchArea(0.3, 0.12, settings({ footPatchSize: 0.1, tipPatches: 0 })), 6 * 6 * 0.01, ROUNDING);
});

test('layers each counted, and what is laid on them', () => {
  expectNear(layerArea(0.8, 1.7, 7), 7.3, ROUNDING);
  expectPositiveArguments((area, layers) => layerArea(area!, 1, layers!), [0.8, 7], ['shell_area', 'layers']);
  expectFault(layerArea(1e308, 0, 1e9), 'overflow');
});
