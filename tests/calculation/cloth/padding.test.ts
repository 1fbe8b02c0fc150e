import { describe, it } from 'vitest';
import { padding } from '../../../src/calculation/cloth/padding.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

describe('padding', () => {
  it('gives the example value', () => {
    expectNear(padding(2.9, settings()), 0.9538020619, EXAMPLE);
  });

  it('is the area over the sheet, with waste', () => {
    expectNear(padding(3, settings({ paddingSheetLength: 2, paddingSheetWidth: 1, waste: 0.2 })), 1.8, ROUNDING);
  });

  it('refuses an area that is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a) => padding(a!, settings()), [1], ['shell_area']);
    expectFault(padding(1e308, settings({ paddingSheetLength: 0.1 })), 'overflow');
  });
});
