/** The workbench: the page around the grid, and the one workbook that is open in it. */

import { addressOf, areaOf } from '../engine/workbook-book.ts';
import { mountPane } from '../taskpane/pane.ts';
import { Workbook } from '../workbook/index.ts';
import { ask } from './ask.ts';
import { blankBook } from './blank-book.ts';
import { type Calculation, watchCalculation } from './calculation.ts';
import { onChanges } from './changes.ts';
import { csvText, hasFormulas } from './csv-text.ts';
import { type Draft, dropDraft, keepCells, keepFile, leftDrafts, ownDraft, readDraft, takeDraft } from './draft.ts';
import { byId } from './element.ts';
import { createGrid, type Grid } from './grid.ts';
import { gridHost } from './grid-host.ts';
import { guard } from './guard.ts';
import { cellSpeaker } from './live-region.ts';
import { createMessages, type Messages } from './messages.ts';
import { nameControls } from './names.ts';
import { showNotes } from './note.ts';
import { type OpenFile, openBytes, openFile, problemText } from './open-file.ts';
import { displayed, layOutPrint, MOST_PRINTED } from './print.ts';
import { cellReason } from './reasons.ts';
import { fetchSample, SAMPLES, type Sample } from './samples.ts';
import { type FileHandle, saveFile } from './save.ts';
import { draftCells, isChanged, openSession, type Session, sheetNumberOf, touch } from './session.ts';
import { setUpTabs } from './sheet-tabs.ts';
import { patchFromGrid } from './to-book.ts';

/** A draft is written so long after the last change, milliseconds. */
const DRAFT_DELAY = 400;

/** A selected cell: sheet from 0, row and column from 1. */
interface Active {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

export class Bench {
  readonly grid: Grid;
  readonly messages: Messages;
  readonly #calculation: Calculation;
  readonly #lookAgain: () => void;
  readonly #drawTabs: () => void;
  #session: Session | undefined;
  #draft: string | undefined;
  #draftTimer: ReturnType<typeof setTimeout> | undefined;
  #saved = '';

  constructor(dark: boolean) {
    this.messages = createMessages(byId('bench-messages'));
    const place = byId('bench-grid');
    this.grid = createGrid(place, dark);
    const { api, injector } = this.grid;
    guard({
      api,
      injector,
      say: (text) => this.messages.say(text),
      isHeading: (sheet, row, column) => this.#isHeading(sheetNumberOf(sheet), row + 1, column + 1),
      formatInFile: (sheet, row, column) => this.#formatInFile(sheetNumberOf(sheet), addressOf(row + 1, column + 1)),
      onTouched: (sheet, cells) => {
        if (!this.#session) return;
        touch(this.#session, sheet, cells);
        this.#tellBelowTable(sheetNumberOf(sheet), cells);
        this.#changed();
      },
    });
    this.grid.start();
    this.#calculation = watchCalculation(injector);
    nameControls(place);
    this.#drawTabs = setUpTabs(api, byId('bench-tabs'));
    const looks = [
      cellSpeaker(byId('bench-cell'), () => this.#spoken()),
      showNotes(api, byId('bench-note'), byId('bench-sheet'), () => this.#note()),
    ];
    this.#lookAgain = () => {
      for (const look of looks) look();
    };
    onChanges(injector, this.#lookAgain);
    this.#calculation.onResults(() => {
      this.#lookAgain();
      if (this.#session && isChanged(this.#session)) this.#keepSoon();
    });
    const host = gridHost({
      api,
      injector,
      calculation: this.#calculation,
      session: () => this.#open(),
      active: () => this.active(),
    });
    mountPane(byId('bench-pane'), host);
    addEventListener('beforeunload', (event) => {
      if (this.#session && isChanged(this.#session)) event.preventDefault();
    });
    addEventListener('beforeprint', () => this.#layOutPrint());
  }

  /** Opens what this tab had before, or the first sample. */
  async begin(): Promise<void> {
    const draft = await this.#draftBefore();
    if (draft) this.#restore(draft);
    else await this.openSample(SAMPLES[0]);
    await this.#calculation.settled();
    this.#lookAgain();
    if (!draft) await this.#offerLeft();
  }

  async #draftBefore(): Promise<Draft | undefined> {
    try {
      this.#draft = await ownDraft();
      return await readDraft(this.#draft);
    } catch {
      // A browser that keeps nothing: work goes on without drafts.
      this.#draft = undefined;
      this.messages.say('This browser keeps no drafts. Save often.');
      return undefined;
    }
  }

  #restore(draft: Draft): void {
    try {
      this.#show(openBytes(draft.bytes, draft.name, draft.kind), draft);
      this.messages.say(`Your changes to ${draft.name} are here as you left them. They are not saved yet.`);
    } catch (error) {
      this.messages.say(problemText(error, draft.name), { urgent: true });
    }
  }

  /** Work that a closed tab left behind. */
  async #offerLeft(): Promise<void> {
    if (this.#draft === undefined) return;
    const [newest] = await leftDrafts();
    if (!newest) return;
    this.messages.say(
      `There are changes to ${newest.name} from ${new Date(newest.when).toLocaleString()} that were not saved.`,
      {
        actions: [
          { label: 'Open them', run: () => void this.#take(newest.id) },
          { label: 'Throw them away', run: () => void dropDraft(newest.id) },
        ],
      },
    );
  }

  async #take(id: string): Promise<void> {
    if (!(await this.#mayLeave())) return;
    const draft = (await takeDraft(id)) ? await readDraft(id) : undefined;
    if (!draft) return;
    this.#draft = id;
    this.#restore(draft);
  }

  #open(): Session {
    if (!this.#session) throw new Error('no workbook is open yet');
    return this.#session;
  }

  get contents() {
    return this.#open().contents;
  }

  active(): Active | undefined {
    const sheet = this.grid.api.getActiveWorkbook()?.getActiveSheet();
    const cell = sheet?.getSelection()?.getCurrentCell();
    if (!this.#session || !sheet || !cell) return undefined;
    return { sheet: sheetNumberOf(sheet.getSheetId()), row: cell.actualRow + 1, column: cell.actualColumn + 1 };
  }

  #reason({ sheet, row, column }: Active): string | undefined {
    return this.#session && cellReason(this.#session, (name) => this.grid.knows(name), sheet, row, column);
  }

  #spoken() {
    const at = this.active();
    if (!at) return undefined;
    const { formula } = this.contents.at(at.sheet, at.row, at.column);
    const reason = this.#reason(at);
    const address = addressOf(at.row, at.column);
    const range = this.grid.api.getActiveWorkbook()?.getActiveSheet().getSelection()?.getActiveRange()?.getA1Notation();
    return {
      address,
      shown: displayed(this.grid.api, at.row, at.column),
      formula,
      ...(reason === undefined ? {} : { reason }),
      ...(range === undefined || range === address ? {} : { range }),
    };
  }

  #note() {
    const at = this.active();
    const text = at && this.#reason(at);
    return text === undefined ? undefined : { address: addressOf(at!.row, at!.column), text };
  }

  #isHeading(sheet: number, row: number, column: number): boolean {
    const name = this.#session?.book.sheets[sheet]?.name;
    return (this.#session?.book.tables ?? []).some(
      ({ sheet: of, area, headerRows }) =>
        of === name &&
        headerRows > 0 &&
        row === area.firstRow &&
        column >= area.firstColumn &&
        column <= area.lastColumn,
    );
  }

  /** Tables keep their size here, so a row typed below one is not part of it: that has to be said. */
  #tellBelowTable(sheet: number, cells: readonly (readonly [row: number, column: number])[]): void {
    const name = this.#session?.book.sheets[sheet]?.name;
    const table = this.#session?.book.tables.find(
      ({ sheet: of, area, totalsRows }) =>
        of === name &&
        totalsRows === 0 &&
        cells.some(
          ([row, column]) => row === area.lastRow && column + 1 >= area.firstColumn && column + 1 <= area.lastColumn,
        ),
    );
    if (!table) return;
    this.messages.say(
      `Row ${table.area.lastRow + 1} lies below the table ${table.name}, which does not grow here: formulas of the table leave it out. Make the table longer in a spreadsheet program.`,
    );
  }

  #formatInFile(sheet: number, address: string): string {
    const { workbook } = this.#open().file;
    const cell = workbook.sheets[sheet]?.cell(address);
    return workbook.numberFormat(cell?.style ?? 0);
  }

  /** Shows a file. Everything that can fail has happened before. */
  #show(file: OpenFile, draft?: Draft, origin: { handle?: FileHandle; changed?: number } = {}): void {
    this.#session = openSession(this.grid, file, (name) => this.grid.knows(name), draft?.cells);
    Object.assign(this.#session, origin);
    this.#saved = '';
    byId('bench-wait').hidden = true;
    this.#drawTabs();
    this.#tell();
  }

  /** The line below the title: which file, and what has become of it. */
  #tell(): void {
    const { file, notDrawn } = this.#open();
    const changed = isChanged(this.#open());
    const state = changed ? 'changed, not saved yet' : this.#saved;
    const kept = notDrawn.length > 0 ? `kept, not drawn here: ${notDrawn.join(', ')}` : '';
    byId('bench-file').textContent = [file.name, state, kept].filter((part) => part !== '').join(' · ');
    document.title = `${changed ? '• ' : ''}${file.name} · Storage jackets`;
  }

  #changed(): void {
    this.#tell();
    this.#keepSoon();
  }

  #keepSoon(): void {
    clearTimeout(this.#draftTimer);
    this.#draftTimer = setTimeout(() => void this.#keep(), DRAFT_DELAY);
  }

  /** Writes the draft: the file once, then its changed cells. */
  async #keep(): Promise<void> {
    const session = this.#session;
    const id = this.#draft;
    if (!session || id === undefined || !isChanged(session)) return;
    try {
      if (!this.#keptFiles.has(session)) {
        const { name, kind, bytes } = session.file;
        await keepFile({ id, name, kind, bytes });
        this.#keptFiles.add(session);
      }
      if (session === this.#session && isChanged(session)) await keepCells(id, draftCells(session));
    } catch {
      this.#draft = undefined;
      this.messages.say('The browser has no room for a draft. Save soon.', { urgent: true });
    }
  }

  readonly #keptFiles = new WeakSet<Session>();

  async #forgetDraft(): Promise<void> {
    clearTimeout(this.#draftTimer);
    if (this.#draft !== undefined) await dropDraft(this.#draft).catch(() => undefined);
  }

  /** True if the open workbook has nothing unsaved, or the person lets it go. */
  async #mayLeave(): Promise<boolean> {
    if (!this.#session || !isChanged(this.#session)) return true;
    const { name } = this.#session.file;
    const answer = await ask(`${name} has changes that are not saved.`, {
      stay: 'Stay here',
      save: 'Save, then go on',
      drop: 'Go on without saving',
    });
    if (answer === 'save') return this.save();
    return answer === 'drop';
  }

  /** Opens a file in place of the open one. */
  async open(bytes: Uint8Array, name: string, handle?: FileHandle, changed?: number): Promise<boolean> {
    let file: OpenFile;
    try {
      file = openFile(bytes, name);
    } catch (error) {
      this.messages.say(problemText(error, name), { urgent: true });
      return false;
    }
    if (!(await this.#mayLeave())) return false;
    await this.#forgetDraft();
    this.messages.clear();
    this.#show(file, undefined, { ...(handle ? { handle } : {}), ...(changed ? { changed } : {}) });
    return true;
  }

  async openSample({ file, sheet, cell }: Sample): Promise<void> {
    try {
      if (!(await this.open(await fetchSample(file), file))) return;
    } catch (error) {
      this.messages.say(error instanceof Error ? error.message : `The sample ${file} is not there.`, { urgent: true });
      return;
    }
    const book = this.grid.api.getActiveWorkbook();
    const wanted = sheet === undefined ? undefined : book?.getSheetByName(sheet);
    if (wanted) book?.setActiveSheet(wanted);
    if (cell !== undefined) {
      const { firstRow, firstColumn } = areaOf(cell);
      book
        ?.getActiveSheet()
        .getRange(firstRow - 1, firstColumn - 1)
        .activate();
    }
  }

  async openBlank(): Promise<void> {
    await this.open(blankBook('Sheet 1'), 'jackets.xlsx');
  }

  /** Saves. True if it is saved. */
  async save(): Promise<boolean> {
    const book = this.grid.api.getActiveWorkbook();
    if (book?.isCellEditing()) await book.endEditingAsync(true);
    await this.#calculation.settled();
    const session = this.#open();
    const { file, contents, touched, kept } = session;
    try {
      const fresh = Workbook.read(file.bytes, file.name);
      const count = patchFromGrid(fresh, contents, touched, kept);
      const bytes = fresh.bytes();
      const asCsv = file.kind === 'csv' && !hasFormulas(contents);
      const name = file.kind === 'csv' && !asCsv ? file.name.replace(/\.[^.]*$/, '.xlsx') : file.name;
      const saved = await saveFile(asCsv ? csvText(contents) : bytes, {
        name,
        kind: asCsv ? 'csv' : 'xlsx',
        ...(session.handle && asCsv === (file.kind === 'csv') ? { handle: session.handle } : {}),
        ...(session.changed === undefined ? {} : { changed: session.changed }),
        confirmOverwrite: async () =>
          (await ask(`${name} was changed by something else since it was opened here.`, {
            stop: 'Do not save',
            over: 'Save over it',
          })) === 'over',
      });
      if (saved.where === 'none') return false;
      this.#savedAs(openBytes(bytes, saved.name, asCsv ? 'csv' : 'xlsx'), saved);
      await this.#forgetDraft();
      const cells = count === 1 ? '1 cell' : `${count} cells`;
      const kind = file.kind === 'csv' && !asCsv ? ' A .csv cannot keep formulas, so this is a workbook now.' : '';
      this.messages.say(
        `${saved.where === 'file' ? 'Saved as' : 'Handed to the browser as'} ${saved.name}: ${cells} changed, all else is as it was.${kind}`,
      );
      return true;
    } catch (error) {
      this.messages.say(`Not saved. ${problemText(error, file.name)}`, { urgent: true });
      return false;
    }
  }

  /** The saved file takes the place of the opened one; the grid stays as it is. */
  #savedAs(file: OpenFile, { handle, changed }: { handle?: FileHandle; changed?: number }): void {
    const { handle: _, changed: __, ...session } = this.#open();
    this.#session = {
      ...session,
      file,
      touched: new Map(),
      ...(handle ? { handle } : {}),
      ...(changed === undefined ? {} : { changed }),
    };
    this.#saved = 'saved';
    this.#tell();
  }

  #layOutPrint(): void {
    const at = this.active();
    const page = byId('bench-print');
    page.replaceChildren();
    if (!this.#session || !at) return;
    const { rows, columns } = this.contents.extent(at.sheet);
    const most = Math.max(1, Math.min(rows, Math.floor(MOST_PRINTED / Math.max(1, columns))));
    layOutPrint(
      page,
      `${this.#session.file.name}: ${this.contents.sheetName(at.sheet)}`,
      most,
      Math.max(1, columns),
      (row, column) => ({
        text: displayed(this.grid.api, row, column),
        isNumber: typeof this.contents.at(at.sheet, row, column).value === 'number',
      }),
    );
  }

  async print(): Promise<void> {
    const book = this.grid.api.getActiveWorkbook();
    if (book?.isCellEditing()) await book.endEditingAsync(true);
    await this.#calculation.settled();
    window.print();
  }

  async undo(): Promise<void> {
    await this.grid.api.undo();
  }

  async redo(): Promise<void> {
    await this.grid.api.redo();
  }

  /** What is being typed now; empty where nothing is. */
  edited(): string {
    if (!this.grid.api.getActiveWorkbook()?.isCellEditing()) return '';
    return this.grid.editorText();
  }

  settled(): Promise<void> {
    return this.#calculation.settled();
  }
}
