/** Tells in words what the selected cell shows, for people who hear the page. */

export interface SpokenCell {
  readonly address: string;
  /** As the cell shows it. */
  readonly shown: string;
  readonly formula: string;
  readonly reason?: string;
  /** Several selected cells, such as `B2:C4`. */
  readonly range?: string;
}

/** One cell in words: address, value, reason, formula, and what else is selected. */
export const spokenCell = ({ address, shown, formula, reason, range }: SpokenCell): string =>
  [
    address,
    shown === '' ? 'empty' : shown,
    reason,
    formula === '' ? undefined : `formula ${formula.replace(/^=/, '')}`,
    range === undefined ? undefined : `selected ${range}`,
  ]
    .filter((part) => part !== undefined && part !== '')
    .join(', ');

/** What keeps the region up to date. `read` answers the cell now, or nothing where none is selected. */
export const cellSpeaker =
  (region: HTMLElement, read: () => SpokenCell | undefined): (() => void) =>
  () => {
    const cell = read();
    const text = cell === undefined ? '' : spokenCell(cell);
    if (region.textContent !== text) region.textContent = text;
  };
