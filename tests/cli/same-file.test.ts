import { linkSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { isSameFile } from '../../src/cli/same-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'same-file-'));
afterAll(() => rmSync(folder, { recursive: true }));
const path = (name: string): string => join(folder, name);

test('the same name, another way to it, links of both kinds', () => {
  writeFileSync(path('a'), 'x');
  writeFileSync(path('b'), 'x');
  mkdirSync(path('inner'));
  symlinkSync(path('a'), path('soft'));
  linkSync(path('a'), path('hard'));
  for (const other of ['a', 'inner/../a', 'soft', 'hard'])
    expect(isSameFile(path('a'), join(folder, other))).toBe(true);
  expect(isSameFile(path('a'), path('b'))).toBe(false);
});

test('files that are not there', () => {
  expect(isSameFile(path('new'), path('new'))).toBe(true);
  expect(isSameFile(path('new'), path('other'))).toBe(false);
});
