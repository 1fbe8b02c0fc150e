import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/calculation/result.ts';
import { layersNeeded, limits } from '../../../src/calculation/shell/layers-needed.ts';
import { seam } from '../../../src/calculation/shell/seam.ts';
import { shellArea } from '../../../src/calculation/shell/shell-area.ts';
import { safetyFactor } from '../../../src/calculation/strength/safety-factor.ts';
import { weight as jacketWeight } from '../../../src/calculation/weight/weight.ts';
import { expectFault, expectPositiveArguments, known, settings } from '../kit.ts';

describe('layersNeeded', () => {
  it('gives the example value', () => {
    expect(layersNeeded(1.2, 0.8, 0.6, 300, settings())).toBe(15);
  });

  it('is the least number of layers that reaches the target with its own weight', () => {
    const s = settings();
    for (const [length, width, height, weight] of [
      [1.2, 0.8, 0.6, 300],
      [0.6, 0.4, 0.3, 60],
      [1.5, 0.4, 0.3, 150],
    ] as const) {
      const area = known(shellArea(length, width, height, s));
      // Strips of 4 in in two layers on both halves; 3 feet a half with 6 patches of 1.5 feet and 5 of one foot, feet 10 cm.
      const extra = 2 * known(seam(length, width, s)) * 0.1016 * 2 + 2 * 3 * (6 * 0.15 ** 2 + 5 * 0.1 ** 2);
      const factor = (layers: number): number =>
        known(
          safetyFactor(length, width, height, known(jacketWeight(area, layers + extra / area, weight, s)), layers, s),
        );
      const needed = known(layersNeeded(length, width, height, weight, s));
      expect(factor(needed)).toBeGreaterThanOrEqual(2);
      for (let fewer = 4; fewer < needed; fewer++) expect(factor(fewer)).toBeLessThan(2);
    }
  });

  it('is never below the least layers, and has no answer above the most', () => {
    expect(layersNeeded(0.3, 0.2, 0.15, 1, settings())).toBe(4);
    expect(layersNeeded(0.3, 0.2, 0.15, 1, settings({ leastLayers: 7 }))).toBe(7);
    const none = layersNeeded(1.2, 0.8, 0.6, 3000, settings());
    expectFault(none, 'none');
    expect((none as Fault).problem).toContain('use a pallet or more feet');
    expect((none as Fault).amounts.most!.value).toBe(16);
  });

  it('needs more layers for a higher target and wet', () => {
    const plain = known(layersNeeded(0.6, 0.4, 0.3, 60, settings()));
    expect(known(layersNeeded(0.6, 0.4, 0.3, 60, settings({ targetSafetyFactor: 4 })))).toBeGreaterThan(plain);
    expect(known(layersNeeded(0.6, 0.4, 0.3, 60, settings({ condition: 'wet' })))).toBeGreaterThan(plain);
  });

  it('is doubtful where the strength is at its answer', () => {
    const doubtful = (...input: Parameters<typeof layersNeeded>): readonly string[] =>
      limits.filter((l) => !l.holds(...input)).map((l) => l.text);
    expect(doubtful(1.2, 0.8, 0.6, 300, settings())).toEqual([]);
    // Four layers on a specimen as small as a fist, twelve on a larger one.
    expect(doubtful(0.1, 0.08, 0.06, 0.5, settings())[0]).toContain('thin shell');
    expect(doubtful(0.3, 0.3, 0.3, 20, settings({ leastLayers: 4 }))).toEqual([]);
    expect(doubtful(0.3, 0.3, 0.3, 20, settings({ leastLayers: 12 }))[0]).toContain('thin shell');
    // No answer, nothing to doubt.
    expect(doubtful(1.2, 0.8, 0.6, 3000, settings({ shape: 'box' }))).toEqual([]);
  });

  it('refuses what is not above 0', () => {
    expectPositiveArguments(
      (l, w, h, m) => layersNeeded(l!, w!, h!, m!, settings()),
      [1.2, 0.8, 0.6, 300],
      ['length', 'width', 'height', 'weight'],
    );
  });
});
