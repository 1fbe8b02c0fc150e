import { describe, expect, test } from 'vitest';
import { materials } from '../../../src/calculation/plans/materials.ts';
import { shellAreaOver } from '../../../src/calculation/shell/shell-area.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, settings } from '../kit.ts';

const SPECIMEN = { length: 0.6, width: 0.4, height: 0.3, weight: 20 };

describe('example values', () => {
  const made = materials(SPECIMEN, settings());
  test('area, mean layers, plaster, weight', () => {
    expectNear(made.shellArea, 0.7923952088, EXAMPLE);
    expectNear(made.meanLayers, 9.23497831, EXAMPLE);
    expectNear(made.plaster, 16.55436172, EXAMPLE);
    expectNear(made.weight, 40.09227299, EXAMPLE);
  });
  test('cloth of 1.2 × 0.4 × 0.3 m, 50 kg, under foam', () => {
    expectNear(
      materials({ ...SPECIMEN, length: 1.2, weight: 50 }, settings({ padding: 'foam' })).cloth,
      16.17311427,
      EXAMPLE,
    );
  });
});

test('laps are counted on the shell, not on strips and patches', () => {
  const lapped = known(materials(SPECIMEN, settings({ lap: 0.05 })).cloth);
  const edgeToEdge = known(materials(SPECIMEN, settings({ lap: 0 })).cloth);
  const { shellArea, laid } = materials(SPECIMEN, settings());
  const factor = (0.42 / 0.37) ** 2;
  // 10 % waste on a roll of 127 cm.
  expectNear(lapped - edgeToEdge, (known(shellArea) * known(laid) * (factor - 1) * 1.1) / 1.27, 1e-11);
});

test('cover layers are laid, but are no layers of the specimen', () => {
  const made = materials(SPECIMEN, settings({ coverLayers: 3, edgeStripLayers: 0, footPatches: 0, tipPatches: 0 }));
  expect([made.layers, made.laid]).toEqual([6, 9]);
  expectNear(made.meanLayers, 9, ROUNDING);
});

test('a surface of its own replaces the estimate, and the curvature stays', () => {
  const made = materials({ ...SPECIMEN, surface: 0.7 }, settings({ reliefFactor: 2 }));
  expect(made.surfaceArea).toBe(0.7);
  expect(made.shellArea).toBe(shellAreaOver(0.7, 0.6, 0.4, 0.3, settings()));
});

test('a quantity without an answer does not take the others with it', () => {
  const made = materials({ ...SPECIMEN, length: 1e300, width: 1e300 }, settings());
  expectFault(made.surfaceArea, 'overflow');
  expectFault(made.plaster, 'overflow');
  expect(made.layers).toBe(6);
});
