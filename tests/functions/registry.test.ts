import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { VERSION } from '../../src/calculation/version.ts';
import { formulaText } from '../../src/functions/calling/formula-text.ts';
import { TOPICS } from '../../src/functions/define.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from './compare.ts';

/** Longest description that every host shows whole. */
const LONGEST = 128;
const ids = new Set(functions.map((f) => f.id));

describe.each(functions.map((f) => [f.id, f] as const))('%s', (id, f) => {
  test('has an id that hosts take and that is no cell address', () => {
    expect(id).toMatch(/^[A-Z][A-Z_]{2,63}$/);
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
    expect([...ids].filter((other) => other.replaceAll('.', '_') === id)).toHaveLength(1);
  });

  test('says what it is for, how, from where, and within which limits', () => {
    expect(TOPICS).toContain(f.topic);
    expect(f.question).toMatch(/\?$/);
    expect(f.description.length).toBeGreaterThan(8);
    expect(f.description.length).toBeLessThanOrEqual(LONGEST);
    for (const words of [f.equation, f.source, f.result.what]) expect(words.length).toBeGreaterThan(3);
    for (const { text } of f.limits) expect(text.length).toBeGreaterThan(8);
    if (f.hurts?.some((hurt) => hurt === 'lifting' || hurt === 'strength' || hurt === 'stability'))
      expect(f.limits.length, 'a number that can hurt tells its limits').toBeGreaterThan(0);
  });

  test('names every argument with its unit', () => {
    for (const argument of f.arguments) {
      expect(argument.name).toMatch(/^[a-z][a-z_0-9]*$/);
      expect(argument.description.length).toBeGreaterThan(4);
      expect(argument.description.length).toBeLessThanOrEqual(LONGEST);
      if (argument.quantity) expect(argument.description, argument.name).toMatch(/, [^,]+$/);
    }
    const firstOptional = f.arguments.findIndex(({ optional }) => optional);
    if (firstOptional >= 0)
      expect(
        f.arguments.slice(firstOptional).every(({ optional }) => optional),
        'optional ones come last',
      ).toBe(true);
    const repeating = f.arguments.findIndex((argument) => argument.repeating);
    if (repeating >= 0) expect(repeating).toBe(f.arguments.length - 1);
  });

  test('is related to functions that exist', () => {
    for (const other of f.related ?? []) expect(ids, `${id} names ${other}`).toContain(other);
  });

  test.each(f.examples.map((example) => [formulaText(id, example.args), example] as const))('%s', (_, example) => {
    expect(difference(f.call(example.args), example.value)).toBeUndefined();
  });

  test('refuses one argument too many', () => {
    if (f.arguments.some((argument) => argument.repeating)) return;
    const answer = f.call(Array.from({ length: f.arguments.length + 1 }, () => 1));
    expect(answer).toMatchObject({ code: '#VALUE!', reason: expect.stringContaining('takes at most') });
  });
});

test('the version is that of the package', () => {
  expect(JSON.parse(readFileSync('package.json', 'utf8')).version).toBe(VERSION);
});
