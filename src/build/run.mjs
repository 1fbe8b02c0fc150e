// Runs a command of the product: `node src/build/run.mjs evaluate …`. Builds first if a source file is newer than what was built.
import { readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = resolve(import.meta.dirname, '../..');
/** `rows` stands in a bundle of its own. */
const bundle = process.argv[2] === 'rows' ? 'rows' : 'cli';
const program = join(root, 'dist', `${bundle}.js`);

/** When a file was last changed, 0 if there is none. */
const changed = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Whether the program is missing or older than anything it is made from. Folders count too: they change when a file goes. */
function isOld() {
  const built = changed(program);
  if (built === 0) return true;
  const newer = (path) => changed(path) > built;
  if (
    ['webpack.config.mjs', 'tsconfig.json', 'tsconfig.build.json', 'package-lock.json'].some((file) =>
      newer(join(root, file)),
    )
  )
    return true;
  const folderIsNewer = (folder) =>
    newer(folder) ||
    readdirSync(folder, { withFileTypes: true }).some((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? folderIsNewer(path) : newer(path);
    });
  return folderIsNewer(join(root, 'src'));
}

async function buildIfOld() {
  if (!isOld()) return;
  process.stderr.write('Building, this takes a few seconds…\n');
  const { alone, build } = await import('./build.mjs');
  await alone(async () => {
    if (isOld()) await build([bundle]);
  });
}

try {
  await buildIfOld();
} catch (error) {
  process.stderr.write(`The program could not be built:\n${error.message}\n`);
  process.exit(2);
}
const { main } = await import(pathToFileURL(program).href);
await main(process.argv.slice(2));
