/** Which folder may import which: the arrows of DEVELOPERS.md, checked on every import of the source. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const SRC = resolve('src');

/** For each folder the other folders that it may import. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  calculation: [],
  functions: ['calculation'],
  drawing: ['calculation'],
  texts: ['calculation'],
  workbook: ['functions'],
  engine: ['functions', 'calculation', 'workbook'],
  addin: ['functions', 'drawing', 'texts', 'calculation', 'taskpane'],
  taskpane: ['functions', 'drawing', 'texts', 'calculation'],
  workbench: ['functions', 'drawing', 'texts', 'calculation', 'taskpane', 'engine', 'workbook'],
  cli: ['functions', 'drawing', 'texts', 'calculation', 'engine', 'workbook'],
  build: ['functions', 'drawing', 'texts', 'calculation', 'engine', 'workbook'],
};

/** Packages that a folder may import; folders not named here may import any. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  calculation: /^(?!.)/,
  functions: /^zod$/,
  drawing: /^(?!.)/,
  texts: /^(?!.)/,
};

const sources = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(ts|mjs)$/.test(file))
  .map((file) => ({ file, folder: file.split(/[\\/]/)[0]!, text: readFileSync(join(SRC, file), 'utf8') }));

const importsOf = (text: string): string[] =>
  [...text.matchAll(/^(?:import|export)\s[^'"]*?from\s+['"]([^'"]+)['"]|^import\s+['"]([^'"]+)['"]/gm)].map(
    (found) => (found[1] ?? found[2])!,
  );

test('every source folder has its arrows here', () => {
  for (const { folder } of sources) expect(Object.keys(ALLOWED)).toContain(folder);
});

describe.each(Object.keys(ALLOWED))('%s', (folder) => {
  const here = sources.filter((source) => source.folder === folder);
  test('imports only the folders that it may', () => {
    for (const { file, text } of here)
      for (const path of importsOf(text)) {
        if (!path.startsWith('.')) continue;
        const target = relative(SRC, resolve(SRC, dirname(file), path)).split(/[\\/]/)[0]!;
        if (target === '..' || target === folder) continue;
        expect(ALLOWED[folder], `${file} imports ${path}`).toContain(target);
      }
  });

  test('imports only the packages that it may', () => {
    const allowed = PACKAGES[folder];
    if (!allowed) return;
    for (const { file, text } of here)
      for (const path of importsOf(text))
        if (!path.startsWith('.')) expect(path, `${file} imports ${path}`).toMatch(allowed);
  });
});

test('the calculation knows no host and nothing but SI', () => {
  for (const { file, text } of sources.filter(({ folder }) => folder === 'calculation'))
    expect(text, file).not.toMatch(/\b(Office|Excel|CustomFunctions|window|document|process)\./);
});
