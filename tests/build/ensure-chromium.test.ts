import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { candidates, ensureChromium, findChromium, launchArgs } from '../../src/build/ensure-chromium.mjs';

const only =
  (...paths: string[]) =>
  (path: string) =>
    paths.includes(path);
const nothing = () => false;
const debian = () => 'ID=raspbian\nID_LIKE=debian\n';

/** A machine that has what `there` says, and on which installing adds what `installs` says. */
const machine = (there: string[], over: Record<string, unknown> = {}, installs: string[] = []) => {
  const has = [...there];
  const ran: string[] = [];
  return {
    ran,
    platform: 'linux',
    env: {},
    isRoot: true,
    release: debian,
    log: () => undefined,
    canRun: (path: string) => has.includes(path),
    run: (program: string, args: string[]) => {
      ran.push([program, ...args].join(' '));
      if (args.includes('install')) has.push(...installs);
      return true;
    },
    ...over,
  };
};

describe('findChromium', () => {
  it('takes CHROME_PATH first', () => {
    const env = { CHROME_PATH: '/own/browser' };
    expect(findChromium({ platform: 'linux', env, canRun: only('/own/browser', '/usr/bin/chromium') })).toBe(
      '/own/browser',
    );
  });

  it('says so when CHROME_PATH is wrong, though another browser is there', () => {
    const env = { CHROME_PATH: '/gone' };
    expect(() => findChromium({ platform: 'linux', env, canRun: only('/usr/bin/chromium') })).toThrow(
      'CHROME_PATH is /gone',
    );
  });

  it.each([
    ['linux', {}, '/usr/bin/chromium'],
    ['linux', { PATH: '/a:/home/me/bin' }, '/home/me/bin/google-chrome'],
    ['darwin', {}, '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
    ['darwin', { HOME: '/Users/me' }, '/Users/me/Applications/Chromium.app/Contents/MacOS/Chromium'],
    ['win32', { PROGRAMFILES: 'C:\\Programs' }, 'C:\\Programs\\Google\\Chrome\\Application\\chrome.exe'],
    ['win32', { 'PROGRAMFILES(X86)': 'C:\\Old' }, 'C:\\Old\\Microsoft\\Edge\\Application\\msedge.exe'],
  ])('finds it on %s with %o', (platform, env, path) => {
    expect(findChromium({ platform, env, canRun: only(path) })).toBe(path);
    expect(findChromium({ platform, env, canRun: nothing })).toBeUndefined();
  });

  it('prefers Chromium to the others', () => {
    const places: string[] = candidates('linux', {});
    expect(places.indexOf('/usr/bin/chromium')).toBeLessThan(places.indexOf('/usr/bin/google-chrome'));
  });
});

describe('ensureChromium', () => {
  it('installs nothing where a browser is', () => {
    const here = machine(['/usr/bin/chromium']);
    expect(ensureChromium(here)).toBe('/usr/bin/chromium');
    expect(here.ran).toEqual([]);
  });

  it('installs for root on a system like Debian', () => {
    const here = machine([], {}, ['/usr/bin/chromium']);
    expect(ensureChromium(here)).toBe('/usr/bin/chromium');
    expect(here.ran.map((line) => line.split(' ')[1])).toEqual(['update', 'install']);
  });

  it.each([
    ['not root', { isRoot: false }, 'sudo apt-get install chromium'],
    ['another system', { release: () => 'ID=fedora' }, 'dnf install'],
    ['macOS', { platform: 'darwin' }, 'brew install'],
    ['Windows', { platform: 'win32' }, 'Microsoft Edge'],
    ['told not to', { install: false }, 'none was found'],
  ])('explains and installs nothing: %s', (_, over, words) => {
    const here = machine([], over, ['/usr/bin/chromium']);
    expect(() => ensureChromium(here)).toThrow(words);
    expect(here.ran).toEqual([]);
  });

  it('explains where installing gave a stub without a browser', () => {
    const here = machine([]);
    expect(() => ensureChromium(here)).toThrow('none was found');
    expect(here.ran).toHaveLength(2);
  });
});

describe('launchArgs', () => {
  it('leaves the sandbox out for root alone', () => {
    expect(launchArgs(true)).toContain('--no-sandbox');
    expect(launchArgs(false)).not.toContain('--no-sandbox');
  });
});

describe('on the command line', () => {
  const script = resolve(import.meta.dirname, '../../src/build/ensure-chromium.mjs');

  it('ends with 1 and says why, without a stack', () => {
    const run = spawnSync(process.execPath, [script, '--no-install'], {
      encoding: 'utf8',
      env: { ...process.env, CHROME_PATH: '/gone' },
    });
    expect(run.status).toBe(1);
    expect(run.stdout).toBe('');
    expect(run.stderr).toMatch(/^CHROME_PATH is \/gone[^\n]*\n$/);
  });
});
