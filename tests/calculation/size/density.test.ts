import { describe, expect, it } from 'vitest';
import { type Fault, isFault } from '../../../src/calculation/result.ts';
import { density, MATERIALS } from '../../../src/calculation/size/density.ts';
import { expectFault } from '../kit.ts';

describe('density', () => {
  // Exact: a table in kg/L.
  it.each([
    ['fresh bone', 1.85],
    ['fossil bone', 2.9],
    ['sandstone', 2.35],
    ['shale', 2.4],
    ['mudstone', 2.4],
    ['limestone', 2.55],
    ['dolomite', 2.7],
    ['clay', 2.21],
    ['sand', 2],
    ['gravel', 2],
    ['soil', 1.92],
    ['quartz', 2.65],
    ['calcite', 2.71],
    ['gypsum', 2.32],
  ])('%s: %d kg/L', (name, kilogramsPerLitre) => {
    expect(density(name)).toBe(kilogramsPerLitre * 1000);
  });

  it('ignores case and spaces', () => {
    expect(density('  Fossil  BONE ')).toBe(2900);
  });

  it('asks which bone', () => {
    expectFault(density('bone'), 'value', 'material');
    expectFault(density(' Bone'), 'value', 'material');
    expect((density('bone') as Fault).problem).toContain('fossil bone or fresh bone');
  });

  it('refuses what it does not know', () => {
    for (const name of ['', 'plutonium', 'constructor', '__proto__', 'toString'])
      expectFault(density(name), 'value', 'material');
  });

  it('has a density inside its range, and a source, for every material', () => {
    for (const [name, m] of Object.entries(MATERIALS)) {
      expect(isFault(density(name))).toBe(false);
      expect(name).toBe(name.toLowerCase());
      expect(m.low).toBeLessThanOrEqual(m.density);
      expect(m.high).toBeGreaterThanOrEqual(m.density);
      expect(m.source.length).toBeGreaterThan(5);
    }
  });
});
