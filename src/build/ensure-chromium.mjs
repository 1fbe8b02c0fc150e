// Finds a browser of the Chromium family for the browser tests, and installs Debian's where it may.
// Import: `ensureChromium()` answers the path. Command line: prints it, or explains what to do and ends with 1; `--no-install` only looks.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, readFileSync, statSync } from 'node:fs';
import { posix, resolve, win32 } from 'node:path';
import { fileURLToPath } from 'node:url';

const LINUX_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
  'chrome',
  'msedge',
];
const LINUX_FOLDERS = ['/usr/bin', '/snap/bin', '/opt/google/chrome', '/opt/microsoft/msedge'];
const MAC_NAMES = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
const WINDOWS_PLACES = [
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Chromium', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

/** Places to look, best first. */
export function candidates(platform, env) {
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);
    return WINDOWS_PLACES.flatMap((place) => roots.map((root) => win32.join(root, ...place)));
  }
  if (platform === 'darwin') {
    const folders = ['/Applications', ...(env.HOME ? [`${env.HOME}/Applications`] : [])];
    return MAC_NAMES.flatMap((name) => folders.map((folder) => `${folder}/${name}.app/Contents/MacOS/${name}`));
  }
  const onPath = (env.PATH ?? '').split(':').filter(Boolean);
  const folders = [...new Set([...LINUX_FOLDERS, ...onPath])];
  return LINUX_NAMES.flatMap((name) => folders.map((folder) => posix.join(folder, name)));
}

function canRun(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function readRelease() {
  try {
    return readFileSync('/etc/os-release', 'utf8');
  } catch {
    return '';
  }
}

/** What the search asks of the machine. Tests hand over their own answers. */
const machine = {
  platform: process.platform,
  env: process.env,
  isRoot: process.getuid?.() === 0,
  canRun,
  release: readRelease,
  /** Runs a program with its words on the error output; true if it succeeded. */
  run: (program, args) =>
    spawnSync(program, args, {
      stdio: ['ignore', 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0,
  log: (text) => process.stderr.write(`${text}\n`),
};

/** The browser's path, or undefined where none is found. `CHROME_PATH` comes first, and must then be right. */
export function findChromium({ platform, env, canRun: runs } = machine) {
  if (!env.CHROME_PATH) return candidates(platform, env).find(runs);
  if (runs(env.CHROME_PATH)) return env.CHROME_PATH;
  throw new Error(
    `CHROME_PATH is ${env.CHROME_PATH}, but that is not a program that can be run. Correct it, or take it away.`,
  );
}

/** What people can do themselves, by platform. */
const HOW = {
  darwin: 'Install Chromium or Google Chrome, for instance with: brew install --cask chromium',
  win32: 'Install Google Chrome. Microsoft Edge, which comes with Windows, is found too.',
  linux: 'On Debian and Ubuntu: sudo apt-get install chromium. On Fedora: sudo dnf install chromium.',
};

/**
 * The browser's path. On a system of the Debian family, for root, the distribution's own browser is installed if there is none. What
 * counts in the end is whether a browser is found: some distributions only ship a stub of that name.
 */
export function ensureChromium({ install = true, ...injected } = {}) {
  const here = { ...machine, ...injected };
  const found = findChromium(here);
  if (found) return found;
  if (install && here.platform === 'linux' && here.isRoot && /^ID(_LIKE)?=.*\bdebian\b/m.test(here.release())) {
    here.log('There is no Chromium. Installing the Debian package, about 300 MB on disk…');
    here.run('apt-get', ['update', '-qq']);
    here.run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-liberation']);
    const installed = findChromium(here);
    if (installed) return installed;
    here.log('That gave no browser.');
  }
  const how = HOW[here.platform] ?? HOW.linux;
  throw new Error(
    `The browser tests need Chromium, Chrome or Edge, and none was found.\n${how}\nIf it stands in an unusual place, set CHROME_PATH to the program.`,
  );
}

/** What a browser needs to run without a screen. Its sandbox is left out for root alone, where it cannot start. */
export const launchArgs = (isRoot = machine.isRoot) => [
  ...(isRoot ? ['--no-sandbox'] : []),
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(ensureChromium({ install: !process.argv.includes('--no-install') }));
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
