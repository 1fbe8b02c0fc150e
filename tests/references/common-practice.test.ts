/** What the trade does by habit. All of it is common practice, no source: nothing here is a published value. */

import { describe, expect, it } from 'vitest';
import { clay } from '../../src/calculation/cloth/clay.ts';
import { paddingChoice } from '../../src/calculation/cloth/padding-choice.ts';
import { footPatchSize, footSize, tipPatchSize } from '../../src/calculation/feet/foot.ts';
import { mixes } from '../../src/calculation/mixing/mixes.ts';
import { DEFAULT_SETTINGS, SETTINGS } from '../../src/calculation/settings.ts';
import { layers } from '../../src/calculation/shell/layers.ts';
import { outerSize } from '../../src/calculation/shell/outer-size.ts';
import { thickness } from '../../src/calculation/shell/thickness.ts';
import { dryTime } from '../../src/calculation/weight/dry-time.ts';
import { expectNear, known, ROUNDING, settings } from '../calculation/kit.ts';

const INCH = 0.0254;

describe('common practice, no source', () => {
  it('small specimens take 4 to 6 layers', () => {
    for (const kilograms of [0.1, 1, 2, 5, 10, 20]) {
      const count = known(layers(kilograms, settings()));
      expect(count).toBeGreaterThanOrEqual(4);
      expect(count).toBeLessThanOrEqual(6);
    }
  });

  it('large heavy specimens take up to about 16 layers', () => {
    expect(layers(500, settings())).toBe(16);
    expect(layers(2000, settings())).toBe(16);
  });

  it('padding is 1/4 in of polyester felt or polyethylene foam', () => {
    expectNear(DEFAULT_SETTINGS.paddingThickness, INCH / 4, ROUNDING);
    expect(SETTINGS.padding.words).toEqual(['felt', 'foam']);
  });

  it('plaster stays workable for about 40 minutes', () => {
    expect(DEFAULT_SETTINGS.workingTime).toBe(40);
  });

  it('a half padded with foam needs two mixes, a half padded with felt can be done in one', () => {
    // A small jacket, of which a half is less than a bucket.
    expect(mixes(0.5, 5, settings({ padding: 'felt' }))).toBe(2 * 1);
    expect(mixes(0.5, 5, settings({ padding: 'foam' }))).toBe(2 * 2);
  });

  it('clay pockets are about 1/8 in thick', () => {
    const s = settings();
    expectNear(known(clay(1, s)) / s.clayDensity, INCH / 8, ROUNDING);
  });

  it('a shell dries for at least 24 hours before it is sealed', () => {
    expect(dryTime(4, settings({ roomTemperature: 45, roomHumidity: 0.1, airSpeed: 10 }))).toBe(24);
  });

  it('felt is for small, fragile or high-relief specimens, foam for larger and heavier ones', () => {
    expect(paddingChoice(5, false, false, settings())).toBe('felt');
    expect(paddingChoice(100, true, false, settings())).toBe('felt');
    expect(paddingChoice(100, false, true, settings())).toBe('felt');
    expect(paddingChoice(100, false, false, settings())).toBe('foam');
  });

  it('strength is in the layers, the foam is only a spacer', () => {
    // The padding moves the shell outward and adds nothing to its thickness.
    const thick = settings({ paddingThickness: 0.05 });
    expect(thickness(8, thick)).toBe(thickness(8, settings()));
    expect(known(outerSize(0.6, 0.4, 0.3, 8, thick))[0]).toBeGreaterThan(
      known(outerSize(0.6, 0.4, 0.3, 8, settings()))[0],
    );
  });

  it('a foot of 4 in is held by at least 5 or 6 patches of 6 in', () => {
    const s = settings({ footSize: 4 * INCH });
    expectNear(footPatchSize(s, 0.6, 0.4), 6 * INCH, ROUNDING);
    expect([5, 6]).toContain(s.footPatches);
  });

  it('4 or 5 smaller patches go on the tip of a foot', () => {
    const s = settings({ footSize: 4 * INCH });
    expect([4, 5]).toContain(s.tipPatches);
    expect(tipPatchSize(s, 0.6, 0.4)).toBeLessThan(footPatchSize(s, 0.6, 0.4));
  });

  it('feet are about 4 in where there is room', () => {
    // The default is 10 cm, 1.6 % less.
    expectNear(footSize(settings(), 0.6, 0.4), 4 * INCH, 0.02);
  });

  it('strips on the edge are 4 in wide', () => {
    expectNear(DEFAULT_SETTINGS.edgeStripWidth, 4 * INCH, ROUNDING);
  });
});
