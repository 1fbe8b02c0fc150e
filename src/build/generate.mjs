// Makes the committed files that follow from the source: the list of functions, metadata, the reference and the sample workbooks.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { alone, build, root } from './build.mjs';
import { indexText } from './generate-index.mjs';

/** Writes a file whole or not at all, and only if it changed; says so. */
const write = (path, content) => {
  const target = join(root, path);
  const old = (() => {
    try {
      return readFileSync(target);
    } catch {
      return undefined;
    }
  })();
  if (old && Buffer.compare(old, Buffer.from(content)) === 0) return;
  mkdirSync(join(target, '..'), { recursive: true });
  writeFileSync(`${target}.new`, content);
  renameSync(`${target}.new`, target);
  console.log(`wrote ${path}`);
};

const compiled = (path) => import(pathToFileURL(join(root, 'build', path)).href);

/** A sample workbook with all its formulas calculated, by the command that people use. */
const filled = (bytes, folder, name) => {
  const [raw, done] = [join(folder, `raw-${name}`), join(folder, name)];
  writeFileSync(raw, bytes);
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'src/build/run.mjs'), 'fill', raw, done], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`${name} could not be filled:\n${stdout}${stderr}`);
  return { bytes: readFileSync(done), summary: stdout };
};

/**
 * All sample workbooks by name, with what `fill` said of each.
 *
 * @param samples the plans
 * @param layOut makes a workbook of a plan, formulas not calculated yet
 */
export const makeSamples = async (samples, layOut) => {
  const folder = mkdtempSync(join(tmpdir(), 'jacket-samples-'));
  try {
    const made = new Map();
    for (const plan of samples.map((sample) => sample()))
      made.set(plan.file, filled(await layOut(plan), folder, plan.file));
    return made;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

const generate = async () => {
  write('src/functions/index.ts', indexText(join(root, 'src/functions')));
  await alone(() => build(['cli']));
  const { generatedTexts } = await compiled('build/generated.js');
  for (const [path, text] of generatedTexts()) write(path, text);
  const { samples } = await compiled('build/samples/index.js');
  const { layOut } = await compiled('build/samples/book.js');
  for (const [name, { bytes, summary }] of await makeSamples(samples, layOut)) {
    write(`sample-workbooks/${name}`, bytes);
    console.log(`${name}\n${summary}`);
  }
};

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await generate();
