// Shifts every default and constant of the calculation by 3 % in turn (counts by one) and prints which test notices.
//
//   npm run test:planted              all of them
//   npm run test:planted -- waste     those whose name contains "waste"
//
// Works on a copy in a temporary folder. A constant that no test notices must stand in accepted.tsv with the reason; else the exit status is 1.
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const SHIFT = 1.03;
const NUMBER = String.raw`-?\d+(?:_\d+)*(?:\.\d+)?(?:e-?\d+)?`;

/** Where numbers stand in the source that are defaults or constants: a name for each, and the place of the literal. */
const PATTERNS = [
  // export const NAME = 1.5;
  { find: new RegExp(`export const ([A-Z][A-Z0-9_]*)(?:: number)? = (${NUMBER});`, 'g') },
  // number('waste', 'fraction', 0.1, …
  { find: new RegExp(`number\\(\\s*'([^']+)',\\s*'[^']+',\\s*(${NUMBER}),`, 'g') },
  // plausible: between(0.05, 0.2 … and factor(0.8, 1.2 …
  { find: new RegExp(`(between|factor)\\((${NUMBER}), `, 'g'), suffix: 'low' },
  { find: new RegExp(`(between|factor)\\(${NUMBER}, (${NUMBER})`, 'g'), suffix: 'high' },
  // entries of tables of constants, one a line
  { find: new RegExp(`^ {2}'?([a-z][\\w -]*)'?: (${NUMBER}),$`, 'gm') },
];

const files = readdirSync(join(root, 'src/calculation'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join('src/calculation', file));

/** The setting whose definition a place stands in. */
const settingAt = (text, at) =>
  [...text.slice(0, at).matchAll(/(?:number|following)\(\s*'([^']+)'/g)].at(-1)?.[1] ?? '';

const planted = files.flatMap((file) => {
  const text = readFileSync(join(root, file), 'utf8');
  return PATTERNS.flatMap(({ find, suffix }) =>
    [...text.matchAll(find)].map((match) => {
      const literal = match[2];
      const at = match.index + match[0].lastIndexOf(literal);
      const name = suffix ? `${settingAt(text, match.index)}, ${suffix}` : match[1];
      return { file, name, literal, at };
    }),
  ).filter(({ literal }) => Number(literal.replaceAll('_', '')) !== 0);
});

const shifted = ({ file, name, literal }) => {
  const value = Number(literal.replaceAll('_', ''));
  const line = readFileSync(join(root, file), 'utf8');
  const isCount = new RegExp(`number\\(\\s*'${name}',\\s*'count'`).test(line);
  return String(isCount ? value + 1 : value * SHIFT);
};

const workspace = () => {
  const folder = mkdtempSync(join(tmpdir(), 'jacket-planted-'));
  for (const name of readdirSync(root)) {
    if (['node_modules', 'dist', 'build', '.git'].includes(name)) continue;
    cpSync(join(root, name), join(folder, name), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return folder;
};

/** Tests that look at numbers: those against outside values and the committed defaults first, since they are quick, then all. */
const LOOKED_AT = [
  ['tests/references', 'tests/functions/settings.test.ts', 'tests/functions/registry.test.ts'],
  ['tests/calculation', 'tests/functions'],
];

const failureOf = (folder, tests) =>
  new Promise((done) => {
    const report = join(folder, 'report.json');
    const options = ['--bail=1', '--maxWorkers=1', '--reporter=json', `--outputFile=${report}`];
    const args = ['node_modules/vitest/vitest.mjs', 'run', ...tests, ...options];
    spawn(process.execPath, args, { cwd: folder, stdio: 'ignore' }).on('close', () => {
      const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
      for (const { name, assertionResults, status } of testResults) {
        const failed = assertionResults.find((one) => one.status === 'failed');
        if (failed) return done(`${relative(folder, name)}: ${failed.fullName.trim()}`);
        if (status === 'failed' && !assertionResults.length) return done(`${relative(folder, name)}: cannot be loaded`);
      }
      return done(undefined);
    });
  });

/** The first test that fails, or undefined. */
const firstToNotice = async (folder) => {
  for (const tests of LOOKED_AT) {
    const failed = await failureOf(folder, tests);
    if (failed) return failed;
  }
  return undefined;
};

const accepted = new Map(
  readFileSync(join(import.meta.dirname, 'accepted.tsv'), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split('\t')),
);

const wanted = process.argv.slice(2).join(' ').toLowerCase();
const queue = planted.filter(({ name, file }) => `${file} ${name}`.toLowerCase().includes(wanted));
let unnoticed = 0;

const worker = async () => {
  const folder = workspace();
  try {
    for (let one = queue.shift(); one; one = queue.shift()) {
      const target = join(folder, one.file);
      const text = readFileSync(target, 'utf8');
      writeFileSync(target, text.slice(0, one.at) + shifted(one) + text.slice(one.at + one.literal.length));
      const noticed = await firstToNotice(folder);
      writeFileSync(target, text);
      const key = `${one.file} ${one.name}`;
      const reason = accepted.get(key);
      if (!noticed && !reason) unnoticed += 1;
      console.log(
        `${key}\t${one.literal} → ${shifted(one)}\t${noticed ?? (reason ? `not noticed: ${reason}` : 'NOT NOTICED')}`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const total = queue.length;
await Promise.all(Array.from({ length: Math.min(2, availableParallelism()) }, worker));
console.log(`${total} shifted, ${unnoticed} unnoticed without a reason`);
process.exitCode = unnoticed ? 1 : 0;
