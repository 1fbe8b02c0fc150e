/** Committed files that are made from the source: making them again must change nothing. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { makeSamples } from '../../src/build/generate.mjs';
import { indexText } from '../../src/build/generate-index.mjs';
import { generatedTexts } from '../../src/build/generated.ts';
import { layOut } from '../../src/build/samples/book.ts';
import { samples } from '../../src/build/samples/index.ts';
import { compareWorkbooks } from '../../src/workbook/compare.ts';

const AGAIN = 'run `npm run generate` and commit what it wrote';

test('the list of functions', () => {
  expect(readFileSync('src/functions/index.ts', 'utf8'), AGAIN).toBe(indexText('src/functions'));
});

test.each([...generatedTexts()])('%s', (path, text) => {
  expect(readFileSync(path, 'utf8'), AGAIN).toBe(text);
});

describe('sample workbooks', async () => {
  const made = await makeSamples(samples, layOut);

  test('are the ones in the folder', () => {
    const files = readdirSync('sample-workbooks').filter((name) => name.endsWith('.xlsx'));
    expect(files.sort()).toEqual([...made.keys()].sort());
  });

  test.each([...made.keys()])('%s, part by part', (name) => {
    const committed = new Uint8Array(readFileSync(`sample-workbooks/${name}`));
    expect(compareWorkbooks(committed, new Uint8Array(made.get(name)!.bytes)), AGAIN).toEqual({
      differences: [],
      cells: {},
    });
  });

  test.each([...made.keys()])('%s has no error and nothing that is not checked', (name) => {
    expect(made.get(name)!.summary).toMatch(/not checked: 0\nerrors: 0/);
  });
});
