/** Starts the workbench page. */

import { Bench } from './bench.ts';
import { byId } from './element.ts';
import { helpDialog } from './help.ts';
import { focusCells, focusFirst, setUpKeys } from './keyboard.ts';
import { setUpFold } from './pane-fold.ts';
import { setUpSamples } from './sample-list.ts';
import { SAMPLES } from './samples.ts';
import { chooseFile } from './save.ts';

const button = (id: string): HTMLButtonElement => byId<HTMLButtonElement>(id);

/** Reads a file that was chosen or dropped. */
async function openChosen(bench: Bench, file: File, handle?: Parameters<Bench['open']>[2]): Promise<void> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    bench.messages.say(`${file.name} could not be read. Is it a folder, or open elsewhere?`, { urgent: true });
    return;
  }
  await bench.open(bytes, file.name, handle, file.lastModified);
}

function setUpDrop(bench: Bench): void {
  addEventListener('dragover', (event) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
  });
  addEventListener(
    'drop',
    (event) => {
      const [file] = event.dataTransfer?.files ?? [];
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      event.stopPropagation();
      if (file) void openChosen(bench, file);
    },
    { capture: true },
  );
}

async function start(): Promise<void> {
  const bench = new Bench(matchMedia('(prefers-color-scheme: dark)').matches);
  const grid = byId('bench-grid');
  const pane = byId('bench-pane');
  const actions = byId('bench-actions');
  const help = helpDialog();
  const fold = button('bench-fold');
  setUpFold(fold, pane, () => dispatchEvent(new Event('resize')));

  const open = async (): Promise<void> => {
    const chosen = await chooseFile();
    if (chosen) await openChosen(bench, chosen.file, chosen.handle);
  };
  const save = (): void => void bench.save();
  const print = (): void => void bench.print();
  const runs: Readonly<Record<string, () => void>> = {
    'bench-open': () => void open(),
    'bench-save': save,
    'bench-print-button': print,
    'bench-undo': () => void bench.undo(),
    'bench-redo': () => void bench.redo(),
    'bench-help-button': () => help.showModal(),
  };
  for (const [id, run] of Object.entries(runs)) {
    const control = button(id);
    control.addEventListener('click', run);
    control.disabled = false;
  }
  setUpSamples(
    button('bench-samples-button'),
    SAMPLES,
    (sample) => void bench.openSample(sample),
    () => void bench.openBlank(),
  );
  button('bench-samples-button').disabled = false;
  setUpDrop(bench);
  setUpKeys(
    bench.grid.api,
    grid,
    () => [
      { place: grid, focus: () => focusCells(grid) },
      { place: pane.hidden ? fold : pane, focus: () => (pane.hidden ? fold.focus() : focusFirst(pane)) },
      { place: actions, focus: () => focusFirst(actions) },
    ],
    new Map([
      ['s', save],
      ['o', () => void open()],
      ['p', print],
    ]),
  );
  await bench.begin();
  focusCells(grid);
  // For the project's own tests, which look at cells without reading pixels.
  Object.assign(window, { bench });
  document.documentElement.dataset.ready = String(Math.round(performance.now()));
}

start().catch((error: unknown) => {
  byId('bench-wait').textContent = 'The workbench could not start. Reload the page; your draft is kept.';
  throw error;
});
