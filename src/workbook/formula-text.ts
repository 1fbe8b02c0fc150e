/** Formulas between their stored form, the form people and the engine read, and other cells. */

/** Shifts the relative references of a formula by rows and columns, as filling down and across does. */
export function translateFormula(text: string, rows: number, columns: number): string {
  throw new Error(`not written yet: ${text} ${rows} ${columns}`);
}

/** Stored form to the form people type: `_xldudf_JACKET_PLASTER(` to `JACKET.PLASTER(`. `ids` are full names such as `JACKET.PLASTER`. */
export function toEngine(stored: string, ids: readonly string[]): string {
  throw new Error(`not written yet: ${stored} ${ids.length}`);
}

/** The way back: `JACKET.PLASTER(` to `_xldudf_JACKET_PLASTER(`, newer functions and LET names with the prefixes the file wants. */
export function toStored(formula: string, ids: readonly string[]): string {
  throw new Error(`not written yet: ${formula} ${ids.length}`);
}
