/** A slip of paper beside the selected cell with the reason of its error, or why its number is doubtful. */

import type { FUniver } from '@univerjs/core/facade';

/** Gap between cell and slip, and the least distance from the edge, pixels. */
const GAP = 4;

export interface NoteText {
  /** Address the note is for. */
  readonly address: string;
  readonly text: string;
}

/** What shows the note for the selected cell whenever it is called. */
export function showNotes(
  api: FUniver,
  note: HTMLElement,
  frame: HTMLElement,
  read: () => NoteText | undefined,
): () => void {
  const update = (): void => {
    const known = read();
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const cell = sheet?.getSelection()?.getCurrentCell();
    if (known === undefined || !sheet || !cell) {
      note.hidden = true;
      return;
    }
    note.textContent = known.text;
    note.hidden = false;
    const box = sheet.getRange(cell.actualRow, cell.actualColumn).getCellRect();
    const outer = frame.getBoundingClientRect();
    const size = note.getBoundingClientRect();
    const left = Math.min(box.left - outer.left, outer.width - size.width - GAP);
    const below = box.bottom - outer.top + GAP;
    const top = below + size.height > outer.height - GAP ? box.top - outer.top - size.height - GAP : below;
    note.style.left = `${Math.max(GAP, left)}px`;
    note.style.top = `${Math.max(GAP, top)}px`;
  };
  api.addEvent(api.Event.SheetEditStarted, () => {
    note.hidden = true;
  });
  return update;
}
