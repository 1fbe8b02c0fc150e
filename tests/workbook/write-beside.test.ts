import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writeBeside } from '../../src/workbook/write-beside.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'beside-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});
const bytes = Uint8Array.of(1, 2, 3);

test('a new file, and one in the place of an old one', async () => {
  const path = join(folder, 'book.xlsx');
  await writeBeside(path, bytes);
  expect(new Uint8Array(readFileSync(path))).toEqual(bytes);
  chmodSync(path, 0o640);
  const before = statSync(path);
  await writeBeside(path, Uint8Array.of(4));
  expect(new Uint8Array(readFileSync(path))).toEqual(Uint8Array.of(4));
  expect(statSync(path).mode & 0o777).toBe(0o640);
  // Another file took the name: the old one was never opened for writing.
  expect(statSync(path).ino).not.toBe(before.ino);
  expect(readdirSync(folder)).toEqual(['book.xlsx']);
});

test.each([
  [
    'no such folder',
    'nowhere/book.xlsx',
    'book.xlsx could not be written: its folder does not exist. Make the folder first',
  ],
  [
    'a file for a folder',
    'file/book.xlsx',
    'book.xlsx could not be written: its folder is a file. Choose another folder',
  ],
  ['a folder of that name', 'taken', 'taken could not be written: a folder has that name. Choose another name'],
])('%s: one plain line, nothing left behind', async (_, name, line) => {
  writeFileSync(join(folder, 'file'), 'kept');
  mkdirSync(join(folder, 'taken'));
  await expect(writeBeside(join(folder, name), bytes)).rejects.toMatchObject({ name: 'WorkbookError', message: line });
  expect(readdirSync(folder).sort()).toEqual(['file', 'taken']);
  expect(readFileSync(join(folder, 'file'), 'utf8')).toBe('kept');
});
