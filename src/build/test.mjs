// The whole test run: types, lint and format, build, then all tests. Ends with one plain line: N passed, N failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const counts = { passed: 0, failed: 0 };

/** Runs one program of the project with its output shown; true if it succeeded. */
const run = (script, ...args) =>
  spawnSync(process.execPath, [join(root, script), ...args], { cwd: root, stdio: 'inherit' }).status === 0;

const step = (name, ok) => {
  console.log(`${ok ? 'passed' : 'FAILED'}: ${name}`);
  counts[ok ? 'passed' : 'failed'] += 1;
  return ok;
};

step('types', run('node_modules/typescript/bin/tsc', '-p', 'tsconfig.json'));
step('lint and format', run('node_modules/@biomejs/biome/bin/biome', 'ci', '--error-on-warnings', '.'));
step('build', run('src/build/build.mjs'));

const folder = mkdtempSync(join(tmpdir(), 'jacket-tests-'));
try {
  const report = join(folder, 'report.json');
  const ok = run(
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  );
  const { numPassedTests, numFailedTests, numFailedTestSuites, testResults } = JSON.parse(readFileSync(report, 'utf8'));
  counts.passed += numPassedTests;
  counts.failed += numFailedTests;
  // A file that cannot even be loaded has no tests of its own to fail.
  const broken = testResults.filter((file) => file.status === 'failed' && !file.assertionResults.length).length;
  counts.failed += broken;
  if (!ok && !numFailedTests && !broken) counts.failed += Math.max(1, numFailedTestSuites);
} catch (error) {
  console.error(`the test report could not be read: ${error.message}`);
  counts.failed += 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}

console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exitCode = counts.failed ? 1 : 0;
