import { describe, expect, it } from 'vitest';
import { footHeight, footPatchSize, footSize, tipPatchSize } from '../../../src/calculation/feet/foot.ts';
import { expectNear, ROUNDING, settings } from '../kit.ts';

describe('feet', () => {
  it('are 10 cm where there is room, else a third of the shorter size', () => {
    expect(footSize(settings(), 0.6, 0.4)).toBe(0.1);
    expectNear(footSize(settings(), 0.2, 0.14), 0.14 / 3, ROUNDING);
    expectNear(footSize(settings(), 0.14, 0.2), 0.14 / 3, ROUNDING);
    expectNear(footSize(settings({ shape: 'cylinder' }), 0.14, 0.2), 0.14 / 3, ROUNDING);
    expect(footSize(settings(), 0.3, 0.3)).toBeLessThanOrEqual(0.1);
  });

  it('are as set', () => {
    expect(footSize(settings({ footSize: 0.08 }), 0.2, 0.1)).toBe(0.08);
  });

  it('are as high as wide, with patches of 1.5 sizes and tips of one, unless set', () => {
    const s = settings({ footSize: 0.08 });
    expect(footHeight(s, 1, 1)).toBe(0.08);
    expectNear(footPatchSize(s, 1, 1), 0.12, ROUNDING);
    expect(tipPatchSize(s, 1, 1)).toBe(0.08);
    const set = settings({ footSize: 0.08, footHeight: 0, footPatchSize: 0.2, tipPatchSize: 0.05 });
    expect(footHeight(set, 1, 1)).toBe(0);
    expect(footPatchSize(set, 1, 1)).toBe(0.2);
    expect(tipPatchSize(set, 1, 1)).toBe(0.05);
  });
});
