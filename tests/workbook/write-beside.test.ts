import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { writeBeside } from '../../src/workbook/write-beside.ts';

/** What the disk answers when a file is opened or given its name; undefined lets it through. */
const disk: { opening?: string; renaming?: string } = {};
vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof import('node:fs/promises')>();
  const fail = (code: string) => Promise.reject(Object.assign(new Error(code), { code }));
  return {
    ...real,
    open: (...given: Parameters<typeof real.open>) => (disk.opening ? fail(disk.opening) : real.open(...given)),
    rename: (...given: Parameters<typeof real.rename>) => (disk.renaming ? fail(disk.renaming) : real.rename(...given)),
  };
});

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'beside-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
  disk.opening = disk.renaming = undefined;
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

test.each<[keyof typeof disk, string, string]>([
  ['opening', 'EACCES', 'the folder does not let anybody write into it. Choose another folder'],
  ['opening', 'EROFS', 'the disk is read-only. Choose another folder'],
  ['opening', 'ENOSPC', 'the disk is full. Make room and try again'],
  ['opening', 'EIO', 'the disk answered EIO'],
  ['renaming', 'EBUSY', 'it is open in another program. Close it there'],
  ['renaming', 'EPERM', 'it is read-only or open in another program. Close it there or choose another name'],
])('%s answered with %s: the old file stays whole', async (when, code, reason) => {
  const path = join(folder, 'book.xlsx');
  writeFileSync(path, 'old');
  disk[when] = code;
  const message = `book.xlsx could not be written: ${reason}`;
  await expect(writeBeside(path, bytes)).rejects.toMatchObject({ name: 'WorkbookError', message });
  expect(readFileSync(path, 'utf8')).toBe('old');
  expect(readdirSync(folder)).toEqual(['book.xlsx']);
});

test('a link stays a link, and the file behind it is replaced', async () => {
  mkdirSync(join(folder, 'real'));
  writeFileSync(join(folder, 'real', 'book.xlsx'), 'old');
  symlinkSync(join(folder, 'real', 'book.xlsx'), join(folder, 'link.xlsx'));
  await writeBeside(join(folder, 'link.xlsx'), bytes);
  expect(lstatSync(join(folder, 'link.xlsx')).isSymbolicLink()).toBe(true);
  expect(new Uint8Array(readFileSync(join(folder, 'real', 'book.xlsx')))).toEqual(bytes);
});
