import { describe, expect, test } from 'vitest';
import { hasWildcards, isWhole, looksFor } from '../../../src/engine/repairs/wildcards.ts';

describe('a pattern for a whole text', () => {
  test.each([
    ['a*', 'Abc', true],
    ['a?c', 'abc', true],
    ['a?c', 'ac', false],
    ['a~*', 'a*', true],
    ['a~*', 'ab', false],
    ['a~~b', 'a~b', true],
    ['a~b', 'a~b', true],
    ['(a)', '(A)', true],
    ['a.c', 'abc', false],
    ['*', 'two\nlines', true],
    ['', '', true],
  ])('%s on %s: %s', (pattern, text, fits) => {
    expect(isWhole(pattern).test(text)).toBe(fits);
  });
});

test('a pattern anywhere in a text is found where it starts first', () => {
  expect(looksFor('n*n').exec('banana')?.index).toBe(2);
  expect(looksFor('~?').exec('why?')?.index).toBe(3);
});

test('signs that make a text a pattern', () => {
  expect(['*', 'a?', '~'].every(hasWildcards)).toBe(true);
  expect(hasWildcards('a.b')).toBe(false);
});
