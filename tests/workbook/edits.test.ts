import { expect, test } from 'vitest';
import { applyEdits, opened, withAttributes } from '../../src/workbook/edits.ts';

test('edits in any order; insertions come before the replacement at their place', () => {
  const edits = [
    { start: 4, end: 6, text: 'XX' },
    { start: 2, end: 2, text: '1' },
    { start: 2, end: 2, text: '2' },
    { start: 2, end: 3, text: 'c' },
    { start: 6, end: 6, text: '!' },
  ];
  expect(applyEdits('abCdef', edits)).toBe('ab12cdXX!');
  expect(applyEdits('abc', [])).toBe('abc');
});

test.each([
  ['<c r="A1" t="s">', { t: 'str' }, '<c r="A1" t="str">'],
  ["<c r='A1'  t = 's' s=\"1\"/>", { t: null }, '<c r=\'A1\' s="1"/>'],
  ['<c r="A1"/>', { t: 'b', cm: '1', vm: null }, '<c r="A1" t="b" cm="1"/>'],
  ['<c r="A1" >', { t: null, cm: undefined }, '<c r="A1" >'],
  ['<c note=" t=\'s\' >" t="s">', { t: null }, '<c note=" t=\'s\' >">'],
  ['<c x:t="s" t="s">', { t: 'b' }, '<c x:t="s" t="b">'],
  ['<c>', { r: '"<&' }, '<c r="&quot;&lt;&amp;">'],
  ['<c\n\tr="A1"\n>', { s: '2' }, '<c\n\tr="A1" s="2"\n>'],
])('%s', (tag, changes, result) => {
  expect(withAttributes(tag, changes)).toBe(result);
});

test('a tag that no longer closes itself', () => {
  expect([opened('<c r="A1" />'), opened('<c r="/>">'), opened('<c/>')]).toEqual(['<c r="A1">', '<c r="/>">', '<c>']);
});
