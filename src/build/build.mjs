// Builds what the product runs from: TypeScript to build/, then webpack to dist/. `--only NAME` makes one bundle, `--out FOLDER` puts it elsewhere.
// With the bundle `workbench` come the help pages, with `functions` all files that a web server hands out beside it; `--base-url ADDRESS` says where they will stand.
//
// Finished files are moved into dist/ in one step each, and one build waits for another, so that several commands may start at once.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
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

/** Webpack to a folder of its own, then file by file to where they belong. */
async function bundle(names, to) {
  const { default: webpack } = await import('webpack');
  const { default: configs } = await import('../../webpack.config.mjs');
  const chosen = configs.filter(({ name }) => names.length === 0 || names.includes(name));
  if (chosen.length === 0) throw new Error(`There is no bundle ${names.join(', ')}`);
  const fresh = join(to, `.new-${process.pid}`);
  try {
    const compiler = webpack(chosen.map((config) => ({ ...config, output: { ...config.output, path: fresh } })));
    const stats = await new Promise((done, fail) => {
      compiler.run((error, result) => (error ? fail(error) : done(result)));
    });
    await new Promise((done) => compiler.close(done));
    if (stats.hasErrors() || stats.hasWarnings()) throw new Error(stats.toString({ preset: 'errors-warnings' }));
    for (const file of readdirSync(fresh)) renameSync(join(fresh, file), join(to, file));
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

const compiled = (path) => import(pathToFileURL(join(root, 'build', path)).href);

/** Builds the named bundles, or all. Throws with what is wrong. Call it through `alone`. */
export async function build(names = [], { to = dist, baseUrl } = {}) {
  const complaints = compile();
  if (complaints) throw new Error(complaints);
  const address = baseUrl && (await compiled('build/site.js')).checkedBaseUrl(baseUrl);
  await bundle(names, to);
  if (names.length === 0 || names.includes('functions')) (await compiled('build/site.js')).writeSite(root, to, address);
  else if (names.includes('workbench')) (await compiled('build/site.js')).writeHelp(root, join(to, 'help'));
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const text = { type: 'string' };
  try {
    const { values } = parseArgs({
      options: { only: { ...text, multiple: true, default: [] }, 'base-url': text, out: text },
    });
    const to = values.out && resolve(values.out);
    await alone(() => build(values.only, { to, baseUrl: values['base-url'] }));
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
