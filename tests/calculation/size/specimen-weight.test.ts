import { describe, it } from 'vitest';
import { density } from '../../../src/calculation/size/density.ts';
import { specimenWeight } from '../../../src/calculation/size/specimen-weight.ts';
import { expectFault, expectNear, expectPositiveArguments, known, ROUNDING } from '../kit.ts';

describe('specimenWeight', () => {
  it('gives the example value', () => {
    expectNear(specimenWeight(0.02, known(density('mudstone'))), 48, ROUNDING);
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((v, d) => specimenWeight(v!, d!), [1, 2], ['volume', 'material_or_density']);
    expectFault(specimenWeight(1e308, 10), 'overflow');
  });
});
