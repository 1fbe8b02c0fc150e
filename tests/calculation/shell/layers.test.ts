import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layers } from '../../../src/calculation/shell/layers.ts';
import { expectPositiveArguments, known, SEED, settings } from '../kit.ts';

describe('layers', () => {
  // Exact: counts.
  it.each([
    [20, 6],
    [50 * 0.45359237, 6],
    [0.001, 4],
    [2, 4],
    [500, 16],
    [501, 16],
    [1e308, 16],
    // Halves go up: 4 + 12·√s is 4.5 at s = (0.5/12)².
    [2 + 498 * (0.5 / 12) ** 2 * 1.000001, 5],
    [2 + 498 * (0.5 / 12) ** 2 * 0.999999, 4],
    [2 + 498 * (11.5 / 12) ** 2 * 1.000001, 16],
  ])('%d kg: %d', (weight, count) => {
    expect(layers(weight, settings())).toBe(count);
  });

  it('rounds an exact half up', () => {
    // √(1/4) is exact: 1 + 3·0.5 = 2.5.
    const s = settings({ leastLayers: 1, mostLayers: 4, leastLayersWeight: 1, mostLayersWeight: 5 });
    expect(layers(2, s)).toBe(3);
  });

  it('never falls with weight, and stays within its ends', () => {
    const kilograms = fc.double({ min: 0.01, max: 2000, noNaN: true });
    fc.assert(
      fc.property(kilograms, kilograms, (a, b) => {
        const [light, heavy] = [Math.min(a, b), Math.max(a, b)].map((w) => known(layers(w, settings())));
        expect(light!).toBeLessThanOrEqual(heavy!);
        expect(light!).toBeGreaterThanOrEqual(4);
        expect(heavy!).toBeLessThanOrEqual(16);
        expect(Number.isInteger(light)).toBe(true);
      }),
      { seed: SEED },
    );
  });

  it('keeps to one number where both ends are one', () => {
    expect(layers(100, settings({ leastLayers: 6, mostLayers: 6 }))).toBe(6);
  });

  it('refuses a weight that is not above 0', () => {
    expectPositiveArguments((w) => layers(w!, settings()), [1], ['weight']);
  });
});
