import { expect, test } from 'vitest';
import { spokenCell } from '../../src/workbench/live-region.ts';

test('a number with its formula', () => {
  expect(spokenCell({ address: 'G7', shown: '12.6 kg', formula: '=JACKET.PLASTER(E7,F7)' })).toBe(
    'G7, 12.6 kg, formula JACKET.PLASTER(E7,F7)',
  );
});

test('an error with its reason, before the formula', () => {
  expect(spokenCell({ address: 'C9', shown: '#VALUE!', formula: '=A1', reason: 'length is text' })).toBe(
    'C9, #VALUE!, length is text, formula A1',
  );
});

test('an empty cell and a selected area', () => {
  expect(spokenCell({ address: 'A1', shown: '', formula: '', range: 'A1:B2' })).toBe('A1, empty, selected A1:B2');
});
