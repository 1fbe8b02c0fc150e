import { describe, expect, it } from 'vitest';
import { plasterOfLayer } from '../../../src/calculation/mixing/plaster-of-layer.ts';
import { expectNear, ROUNDING, settings } from '../kit.ts';

describe('plasterOfLayer', () => {
  it('leaves out the glass', () => {
    const s = settings({ layerThickness: 0.002, clothWeight: 0.3, glassDensity: 2500 });
    expectNear(plasterOfLayer(s), 0.002 - 0.00012, ROUNDING);
  });

  it('is the whole layer without cloth', () => {
    expect(plasterOfLayer(settings({ clothWeight: 0 }))).toBe(0.0015);
  });
});
