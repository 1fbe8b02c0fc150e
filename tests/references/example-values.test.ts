/** Formulas with values from an independent calculation, run through the engine as a user would type them. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { evaluateAll } from '../../src/engine/evaluate.ts';
import type { Answer } from '../../src/functions/calling/cell.ts';
import { isCellError } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from '../functions/compare.ts';

const lines = readFileSync(new URL('example-values.tsv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1);

const cell = (text: string): unknown => {
  const plain = text.trim();
  if (plain === 'true' || plain === 'false') return plain === 'true';
  return plain !== '' && Number.isFinite(Number(plain)) ? Number(plain) : plain;
};

const LABELS_WITH_COMMAS = /(along its length), (on its feet)|(across), (lifted by the flanges)/g;

/** {a, b; c, d} as rows. */
const table = (text: string): unknown[][] =>
  text
    .slice(1, -1)
    .replace(LABELS_WITH_COMMAS, (label) => label.replace(',', '\u0000'))
    .split(';')
    .map((row) => row.split(',').map((one) => cell(one.replace('\u0000', ','))));

const known = new Set(functions.map((f) => f.id));
const cases = lines
  .map((line) => line.split('\t') as [string, string, string])
  .filter(([formula]) => [...formula.matchAll(/JACKET\.(\w+)/g)].every(([, id]) => known.has(id!)));

/** A column where the listed value stands in one line. */
const shaped = (answer: Answer, expected: unknown[][]): Answer =>
  Array.isArray(answer) && expected.length === 1 && answer[0]!.length === 1 && answer.length > 1
    ? [answer.map((row) => row[0]!)]
    : answer;

describe('values from an independent calculation', async () => {
  const answers = await evaluateAll(
    functions,
    cases.map(([formula]) => `=${formula}`),
  );
  test.each(cases.map(([formula, value, relative], i) => [formula, value, Number(relative), i] as const))(
    '%s is %s',
    (_, value, relative, i) => {
      const result = answers[i]!;
      const answer: Answer = 'answer' in result ? result.answer : `unreadable: ${result.unreadable}`;
      if (value.startsWith('#')) {
        const [, code, reason] = /^(\S+) \((.*)\)$/.exec(value)!;
        expect(isCellError(answer) && `${answer.code} (${answer.reason})`).toBe(`${code} (${reason})`);
        return;
      }
      const expected = value.startsWith('{') ? table(value) : cell(value);
      const got = Array.isArray(expected) ? shaped(answer, expected) : answer;
      expect(difference(got, expected, relative)).toBeUndefined();
    },
  );
});
