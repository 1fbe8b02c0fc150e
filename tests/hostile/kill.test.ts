/** Commands that are ended in the middle of a write, and disks that do not let them write: the old file or the new one, whole. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { Workbook } from '../../src/workbook/workbook.ts';

const ROOT = resolve(import.meta.dirname, '../..');

interface Ended {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stderr: string;
}

/** Runs a command in a process of its own, on a disk that behaves as told. */
function run(command: string, args: readonly string[], disk = ''): Ended {
  const preload = join(import.meta.dirname, 'disk.mjs');
  const program = join(import.meta.dirname, 'run-command.mjs');
  const { status, signal, stderr } = spawnSync(process.execPath, ['--import', preload, program, command, ...args], {
    encoding: 'utf8',
    env: { ...process.env, HOSTILE_DISK: disk },
  });
  return { status, signal, stderr };
}

// What is missing or old is built first, once.
beforeAll(() => {
  for (const command of ['evaluate', 'rows'])
    spawnSync(process.execPath, ['src/build/run.mjs', command, '--help'], { cwd: ROOT });
}, 120_000);

let folder = '';
const path = (name: string): string => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kill-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const book = readFileSync(join(import.meta.dirname, 'fixtures', 'openpyxl-book.xlsx'));
const list = `length,width,height,weight\r\n${'60,40,30,20\r\n'.repeat(400)}`;

const COMMANDS = [
  { command: 'fill', input: 'in.xlsx', output: 'out.xlsx', content: book as Uint8Array | string },
  { command: 'rows', input: 'in.csv', output: 'out.csv', content: list as Uint8Array | string },
] as const;

/** Steps of a write, in order, with what the file is called by then. */
const STEPS = [
  ['before open', 'old'],
  ['after open', 'old'],
  ['half', 'old'],
  ['before sync', 'old'],
  ['after sync', 'old'],
  ['before rename', 'old'],
  ['after rename', 'new'],
] as const;

describe.each(COMMANDS)('$command', ({ command, input, output, content }) => {
  let whole: Buffer;
  beforeAll(() => {
    const own = mkdtempSync(join(tmpdir(), 'whole-'));
    writeFileSync(join(own, input), content);
    expect(run(command, [join(own, input), join(own, output)])).toMatchObject({ status: 0, stderr: '' });
    whole = readFileSync(join(own, output));
    rmSync(own, { recursive: true });
  });

  const begin = (old: string | undefined): void => {
    writeFileSync(path(input), content);
    if (old !== undefined) writeFileSync(path(output), old);
  };

  /** Files beside the two that the user knows. */
  const others = (): string[] => readdirSync(folder).filter((name) => name !== input && name !== output);

  test.each(STEPS)('ended %s: the file is the %s one, and a later run works', (step, is) => {
    begin('the old one');
    expect(run(command, [path(input), path(output)], `kill ${step}`).signal).toBe('SIGKILL');
    const found = readFileSync(path(output));
    expect(found.equals(is === 'old' ? Buffer.from('the old one') : whole)).toBe(true);
    expect(readFileSync(path(input)).equals(Buffer.from(content))).toBe(true);
    // What is left over has a name that no program takes for the user's file, and is in nobody's way.
    const left = others();
    for (const name of left) expect(name).toMatch(new RegExp(`^\\.${output}\\.[0-9a-f]{12}\\.part$`));
    expect(left).toHaveLength(is === 'new' || step === 'before open' ? 0 : 1);
    expect(run(command, [path(input), path(output)])).toMatchObject({ status: 0, stderr: '' });
    expect(readFileSync(path(output)).equals(whole)).toBe(true);
    expect(others()).toEqual(left);
  });

  test('ended where there was no file yet: none, or a whole one', () => {
    begin(undefined);
    run(command, [path(input), path(output)], 'kill half');
    expect(statSync(path(output), { throwIfNoEntry: false })).toBeUndefined();
    run(command, [path(input), path(output)], 'kill after rename');
    expect(readFileSync(path(output)).equals(whole)).toBe(true);
  });

  test.each([
    ['a disk that fills up', 'fail half ENOSPC', /the disk is full\. Make room and try again/],
    ['a disk that fills up at the end', 'fail before sync ENOSPC', /the disk is full\. Make room and try again/],
    ['a share of the disk that is used up', 'fail half EDQUOT', /your share of the disk is full/],
    ['a folder that may not be written to', 'fail before open EACCES', /the folder does not let anybody write into it/],
    ['a file that another program holds', 'fail before rename EBUSY', /open in another program/],
    [
      'a file that another program holds, as another system says it',
      'fail before rename EPERM',
      /open in another program/,
    ],
    ['a disk that breaks', 'fail before sync EIO', /EIO/],
  ])('%s: one line that names the file, and nothing lost', (_, disk, line) => {
    begin('the old one');
    const { status, stderr } = run(command, [path(input), path(output)], disk);
    expect(status).toBe(2);
    expect(stderr).toMatch(line);
    expect(stderr.trimEnd()).not.toContain('\n');
    expect(stderr).toContain(output);
    expect(readFileSync(path(output), 'utf8')).toBe('the old one');
    expect(readFileSync(path(input)).equals(Buffer.from(content))).toBe(true);
    expect(others()).toEqual([]);
  });
});

/** A disk of its own for a folder. Where this system does not let one be made, the same answers are made by hand. */
function withDisk(options: string, use: (mounted: boolean) => void): void {
  const disk = path('disk');
  mkdirSync(disk);
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', disk]).status === 0;
  try {
    use(mounted);
  } finally {
    if (mounted) spawnSync('umount', [disk]);
  }
}

describe('real disks', () => {
  test('full: the old workbook stays', () => {
    writeFileSync(path('in.xlsx'), book);
    withDisk('size=8k', (mounted) => {
      const output = path('disk/out.xlsx');
      writeFileSync(output, 'the old one');
      const { status, stderr } = run('fill', [path('in.xlsx'), output], mounted ? '' : 'fail half ENOSPC');
      expect(stderr).toBe('out.xlsx could not be written: the disk is full. Make room and try again\n');
      expect(status).toBe(2);
      expect(readFileSync(output, 'utf8')).toBe('the old one');
      expect(readdirSync(path('disk'))).toEqual(['out.xlsx']);
    });
  });

  test('read-only: the old workbook stays', () => {
    writeFileSync(path('in.xlsx'), book);
    withDisk('size=64k', (mounted) => {
      const output = path('disk/out.xlsx');
      writeFileSync(output, 'the old one');
      if (mounted) spawnSync('mount', ['-o', 'remount,ro', path('disk')]);
      const { status, stderr } = run('fill', [path('in.xlsx'), output], mounted ? '' : 'fail before open EROFS');
      expect(stderr).toBe('out.xlsx could not be written: the disk is read-only. Choose another folder\n');
      expect(status).toBe(2);
      expect(readFileSync(output, 'utf8')).toBe('the old one');
    });
  });
});

test('the filled workbook is one that can be read', () => {
  writeFileSync(path('in.xlsx'), book);
  expect(run('fill', [path('in.xlsx'), path('out.xlsx')]).status).toBe(0);
  expect(
    Workbook.read(readFileSync(path('out.xlsx')))
      .sheet('Jackets')
      ?.cell('I2')?.value,
  ).toBeCloseTo(10, 12);
});
