import { expect, test } from 'vitest';
import { withSemicolons } from '../../../src/build/help/separators.ts';
import { DECIMAL_COMMA, formulaText } from '../../../src/functions/calling/formula-text.ts';
import { functions } from '../../../src/functions/index.ts';

test('the same as the registry writes, for all examples', () => {
  for (const f of functions)
    for (const { args } of f.examples)
      expect(withSemicolons(formulaText(f.id, args))).toBe(formulaText(f.id, args, DECIMAL_COMMA));
});

test('text in quotes and references stay as they are', () => {
  expect(withSemicolons('=IF(A1>1.5,"a, b; 1.5",Sheet1!B2)')).toBe('=IF(A1>1,5;"a, b; 1.5";Sheet1!B2)');
});
