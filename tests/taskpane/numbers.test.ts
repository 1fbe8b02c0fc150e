import { expect, it } from 'vitest';
import { CellError } from '../../src/functions/calling/cell.ts';
import { cellWords, estimate, isRounded, setting, typed } from '../../src/taskpane/numbers.ts';

it.each([
  [12.6472, 'mass', 'metric', '12.6 kg'],
  [1234.5, 'mass', 'metric', '1235 kg'],
  [0.012345, 'mass', 'us', '0.0123 lb'],
  [2, 'count', 'metric', '2'],
  [1234, 'count', 'metric', '1234'],
  [0.1, 'fraction', 'metric', '10 %'],
  [0.375, 'ratio', 'metric', '0.375 (ratio)'],
  [38, 'percent', 'metric', '38 parts per 100'],
  [12.5, 'money', 'metric', '12.5 in your money'],
  [0, 'mass', 'metric', '0 kg'],
  [-3.256, 'temperature', 'metric', '-3.26 °C'],
  [1.2345e-7, 'mass', 'metric', '1.23e-7 kg'],
  [1.2345e12, 'mass', 'metric', '1.23e+12 kg'],
] as const)('an estimate of %d %s, %s', (value, quantity, system, words) => {
  expect(estimate(value, quantity, system)).toBe(words);
});

it('what was typed is known again', () => {
  expect(typed(203.4344, 'clothWeight', 'metric')).toBe('203.434 g/m²');
  expect(typed(8.5, 'count', 'us')).toBe('8.5');
  expect(typed(8.5, undefined, 'us')).toBe('8.5');
});

it('says whether an estimate was rounded', () => {
  expect(isRounded(12.6472, 'mass')).toBe(true);
  expect(isRounded(12.5, 'mass')).toBe(false);
  expect(isRounded(1234, 'count')).toBe(false);
});

it('settings come from SI', () => {
  expect(setting(0.00635, 'thickness', 'us')).toBe('0.25 in');
  expect(setting(null, 'money', 'us')).toBe('blank');
  expect(setting('felt', undefined, 'us')).toBe('felt');
});

it('cells in words', () => {
  expect(cellWords(null, 'mass', 'metric')).toBe('blank');
  expect(cellWords('', undefined, 'metric')).toBe('blank');
  expect(cellWords(true, undefined, 'metric')).toBe('TRUE');
  expect(cellWords('felt', undefined, 'metric')).toBe('felt');
  expect(cellWords(5, 'length', 'us')).toBe('5 in');
  expect(cellWords(new CellError('#N/A', 'why'), undefined, 'metric')).toBe('#N/A');
});
