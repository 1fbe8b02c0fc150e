/** What the pane stands beside where no sheet answers: cautions and functions can still be read. */
import { type SheetHost, SheetProblem } from '../taskpane/sheet-host.ts';

const NO_SHEET = 'There is no sheet here. Open the pane from a workbook.';

const refuse = (): Promise<never> => Promise.reject(new SheetProblem(NO_SHEET));

export const absentHost = (): SheetHost => ({
  can: () => false,
  selection: () => Promise.resolve(undefined),
  onChange: () => Promise.resolve(() => undefined),
  read: refuse,
  insertFormula: refuse,
  putPicture: refuse,
  recalculate: refuse,
});
