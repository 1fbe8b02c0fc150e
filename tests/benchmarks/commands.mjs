// The commands as people start them: time from start to end, and peak memory.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeXlsx } from 'hucre';
import { median } from './table.mjs';

const root = resolve(import.meta.dirname, '../..');

/** Seconds and peak megabytes of one command. */
const run = (folder, ...args) => {
  const peakFile = join(folder, 'peak');
  const begin = performance.now();
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--require', join(import.meta.dirname, 'peak.cjs'), join(root, 'src/build/run.mjs'), ...args],
    { cwd: root, encoding: 'utf8', env: { ...process.env, PEAK_FILE: peakFile } },
  );
  if (status !== 0) throw new Error(`${args[0]} ended with ${status}: ${stderr}`);
  return { seconds: (performance.now() - begin) / 1000, megabytes: Number(readFileSync(peakFile, 'utf8')) / 1024 };
};

const ROWS = 2000;
const FORMULAS = (r) => [
  `_xldudf_JACKET_LAYERS(D${r})`,
  `_xldudf_JACKET_SHELL_AREA(A${r},B${r},C${r})`,
  `_xldudf_JACKET_PLASTER(F${r},E${r})`,
  `_xldudf_JACKET_WATER(G${r})`,
  `_xldudf_JACKET_MIXES(F${r},E${r})`,
  `_xldudf_JACKET_CLOTH(F${r},E${r})`,
  `_xldudf_JACKET_PADDING(F${r})`,
  `_xldudf_JACKET_WEIGHT(F${r},E${r},D${r})`,
];

/** A workbook of sizes with formulas beside them, no values calculated yet. */
const book = () => {
  const cells = new Map();
  const rows = Array.from({ length: ROWS }, (_, i) => [20 + (i % 80), 10 + (i % 30), 5 + (i % 20), 1 + (i % 120)]);
  for (let i = 0; i < ROWS; i++)
    for (const [c, formula] of FORMULAS(i + 1).entries())
      cells.set(`${i},${4 + c}`, { value: null, type: 'formula', formula, formulaResult: 0 });
  return writeXlsx({ sheets: [{ name: 'Sheet1', rows, cells }] });
};

export const commands = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'jacket-bench-'));
  try {
    const one = Array.from({ length: 7 }, () => run(folder, 'evaluate', '=JACKET.PLASTER(1,8)'));
    const input = join(folder, 'in.xlsx');
    writeFileSync(input, await book());
    const fills = Array.from({ length: 3 }, () => run(folder, 'fill', input, join(folder, 'out.xlsx')));
    const seconds = (runs) => median(runs.map((r) => r.seconds)).toFixed(2);
    const megabytes = (runs) => Math.max(...runs.map((r) => r.megabytes)).toFixed(0);
    return [
      ['evaluate, one formula, start to end', seconds(one), 's', `aim 0.6 s; ${megabytes(one)} MB`],
      [
        `fill, ${ROWS} rows × 8 formulas`,
        seconds(fills),
        's',
        `${megabytes(fills)} MB; ${statSync(input).size} bytes in`,
      ],
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
