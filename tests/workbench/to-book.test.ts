import { expect, test } from 'vitest';
import { typedText } from '../../src/workbench/to-book.ts';

test('a formula as people type it', () => {
  expect(typedText('=JACKET.AREA(A1,B1,C1)')).toBe('JACKET.AREA(A1,B1,C1)');
});

test('an array formula of the older kind without what the grid wraps around it', () => {
  expect(typedText('=_JACKET_AREA(A1:A3*2,3,1)')).toBe('A1:A3*2');
});
