import { describe, it } from 'vitest';
import { mixVolume } from '../../../src/calculation/mixing/mix-volume.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, settings } from '../kit.ts';

describe('mixVolume', () => {
  it('gives the example value', () => {
    expectNear(mixVolume(10, settings()), 7.430803636e-3, EXAMPLE);
  });

  it('refuses plaster that is not above 0, and answers however much it is', () => {
    expectPositiveArguments((m) => mixVolume(m!, settings()), [1], ['plaster']);
    // A kilogram makes less than a cubic metre, so the volume of any finite mass is finite.
    expectNear(mixVolume(1e308, settings()), 7.430803636e304, EXAMPLE);
    expectFault(mixVolume(Number.POSITIVE_INFINITY, settings()), 'value', 'plaster');
  });
});
