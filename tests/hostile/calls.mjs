// `npm run hostile:calls -- N`: the random calls of calls.test.ts, N in all. A second number is another seed.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const [calls = '10000000', seed] = process.argv.slice(2);
const root = resolve(import.meta.dirname, '../..');
const begin = Date.now();
const { status } = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', 'tests/hostile/calls.test.ts', '--testTimeout=0', '--reporter=dot'],
  {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, HOSTILE_CALLS: calls, ...(seed ? { HOSTILE_SEED: seed } : {}) },
  },
);
console.log(`${Math.round((Date.now() - begin) / 1000)} s`);
process.exitCode = status ?? 1;
