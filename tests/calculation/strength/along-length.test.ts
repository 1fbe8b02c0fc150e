import { describe, it } from 'vitest';
import { alongLength, halfSection, INSET_MOVED_IN, moment } from '../../../src/calculation/strength/along-length.ts';
import { bending } from '../../../src/calculation/strength/bending.ts';
import { modulus } from '../../../src/calculation/strength/section.ts';
import { expectFault, expectNear, known, ROUNDING, settings } from '../kit.ts';

describe('alongLength', () => {
  it('stands on feet a fifth from the ends if long and heavy, else half a foot in', () => {
    expectNear(INSET_MOVED_IN, 0.2, ROUNDING);
    expectNear(moment(1.5, 0.4, 60, settings()), known(bending(1.5, 60, 0.3)), ROUNDING);
    expectNear(moment(1.5, 0.4, 20, settings()), known(bending(1.5, 20, 0.05)), ROUNDING);
    expectNear(moment(0.3, 0.12, 20, settings()), known(bending(0.3, 20, 0.02)), ROUNDING);
  });

  it('is the moment over the section modulus', () => {
    const s = settings();
    expectNear(
      alongLength(1.5, 0.4, 0.3, 20, 0.013, s),
      known(moment(1.5, 0.4, 20, s)) / modulus(halfSection(1.5, 0.4, 0.3, 0.013, s)),
      ROUNDING,
    );
  });

  it('refuses a foot as long as the jacket', () => {
    expectFault(moment(0.5, 0.4, 20, settings({ footSize: 0.5 })), 'value', 'foot size');
  });
});
