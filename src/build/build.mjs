// Builds what the product runs from: TypeScript to build/, then webpack to dist/. `--only NAME` makes one bundle.
//
// Finished files are moved into dist/ in one step each, and one build waits for another, so that several commands may start at once.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

export const root = resolve(import.meta.dirname, '../..');
const dist = join(root, 'dist');
const lock = join(root, 'build', '.lock');
const WAIT_MS = 100;
/** No build takes so long: whoever holds the lock longer is gone. */
const LONGEST_BUILD_MS = 300_000;

const pause = () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MS);

function ownerIsGone() {
  try {
    if (Date.now() - statSync(lock).mtimeMs > LONGEST_BUILD_MS) return true;
    process.kill(Number(readFileSync(join(lock, 'owner'), 'utf8')), 0);
    return false;
  } catch (error) {
    return error.code === 'ESRCH';
  }
}

/** Runs a build while no other one runs. */
export async function alone(build) {
  mkdirSync(dirname(lock), { recursive: true });
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      if (ownerIsGone()) rmSync(lock, { recursive: true, force: true });
      else pause();
    }
  }
  try {
    writeFileSync(join(lock, 'owner'), String(process.pid));
    return await build();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/** TypeScript to build/. Answers the text of its complaints, empty if there are none. */
function compile() {
  const packageFile = createRequire(import.meta.url).resolve('typescript/package.json');
  const { bin } = JSON.parse(readFileSync(packageFile, 'utf8'));
  const tsc = join(dirname(packageFile), bin.tsc);
  const run = spawnSync(process.execPath, [tsc, '-p', join(root, 'tsconfig.build.json')], {
    encoding: 'utf8',
    cwd: root,
  });
  return run.status === 0 ? '' : `${run.stdout}${run.stderr}` || 'TypeScript stopped without a word';
}

/** Webpack to a folder of its own, then file by file into dist/. */
async function bundle(names) {
  const { default: webpack } = await import('webpack');
  const { default: configs } = await import('../../webpack.config.mjs');
  const chosen = configs.filter(({ name }) => names.length === 0 || names.includes(name));
  if (chosen.length === 0) throw new Error(`There is no bundle ${names.join(', ')}`);
  const fresh = join(dist, `.new-${process.pid}`);
  try {
    const compiler = webpack(chosen.map((config) => ({ ...config, output: { ...config.output, path: fresh } })));
    const stats = await new Promise((done, fail) => {
      compiler.run((error, result) => (error ? fail(error) : done(result)));
    });
    await new Promise((done) => compiler.close(done));
    if (stats.hasErrors() || stats.hasWarnings()) throw new Error(stats.toString({ preset: 'errors-warnings' }));
    for (const file of readdirSync(fresh)) renameSync(join(fresh, file), join(dist, file));
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

/** Builds the named bundles, or all. Throws with what is wrong. Call it through `alone`. */
export async function build(names = []) {
  const complaints = compile();
  if (complaints) throw new Error(complaints);
  await bundle(names);
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { only: { type: 'string', multiple: true, default: [] } } });
  try {
    await alone(() => build(values.only));
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
