/** The sheet of the desktop and web spreadsheet, through its own objects. */
import { type Cell, CellError, type ErrorCode, type Rows } from '../functions/calling/cell.ts';
import {
  type Ability,
  type ActiveCell,
  MOST_CELLS_READ,
  type Picture,
  type SheetHost,
  SheetProblem,
} from '../taskpane/sheet-host.ts';

const supports = (set: string, version: string): boolean => Office.context.requirements.isSetSupported(set, version);

/** What the host must offer for each ability. */
const ABLE: Readonly<Record<Ability, () => boolean>> = {
  insertFormula: () => supports('ExcelApi', '1.1'),
  putPicture: () => supports('ImageCoercion', '1.2') && supports('ExcelApi', '1.9'),
  recalculate: () => supports('ExcelApi', '1.1'),
};

/** One value as the host reads it out, with its kind: errors and blanks come as text. */
const cellOf = (value: unknown, kind: unknown): Cell => {
  if (kind === 'Empty' || value === null) return null;
  if (kind === 'Error') return new CellError(String(value) as ErrorCode, '');
  return value as Cell;
};

/** Last row and column of a worksheet. */
const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;

const local = (address: string): string => address.slice(address.lastIndexOf('!') + 1).replaceAll('$', '');

/** The sheet before the `!` of a reference, without quotation marks. */
const sheetOf = (reference: string): string | undefined => {
  const at = reference.lastIndexOf('!');
  if (at < 0) return undefined;
  const name = reference.slice(0, at);
  return name.startsWith("'") && name.endsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
};

/** Turns what the host throws into something that people can be told. */
const told = async <T>(what: string, work: Promise<T>): Promise<T> => {
  try {
    return await work;
  } catch (error) {
    if (error instanceof SheetProblem) throw error;
    const code = (error as { code?: unknown })?.code;
    if (code === 'InvalidOperationInCellEditMode')
      throw new SheetProblem('A cell is being typed into. Press Enter or Escape in the sheet, then try again.');
    if (code === 'AccessDenied') throw new SheetProblem('The sheet is protected. Unprotect it, then try again.');
    throw new SheetProblem(what);
  }
};

type Context = Excel.RequestContext;

/** The range that a reference names, or undefined. */
const rangeOf = async (context: Context, reference: string, sheet: string): Promise<Excel.Range | undefined> => {
  const spills = reference.endsWith('#');
  const plain = spills ? reference.slice(0, -1) : reference;
  const home = context.workbook.worksheets.getItem(sheetOf(plain) ?? sheet);
  const address = plain.slice(plain.lastIndexOf('!') + 1);
  if (/^\$?[A-Z]{1,3}\$?\d+(:\$?[A-Z]{1,3}\$?\d+)?$|^\$?[A-Z]{1,3}:\$?[A-Z]{1,3}$|^\$?\d+:\$?\d+$/i.test(address)) {
    const range = home.getRange(address.replaceAll('$', ''));
    return spills ? range.getSpillingToRangeOrNullObject() : range;
  }
  const [near, far] = [home.names.getItemOrNullObject(address), context.workbook.names.getItemOrNullObject(address)];
  await context.sync();
  const name = near.isNullObject ? far : near;
  return name.isNullObject ? undefined : name.getRangeOrNullObject();
};

const read = (reference: string, sheet: string): Promise<Rows> =>
  Excel.run(async (context) => {
    const asked = await rangeOf(context, reference, sheet);
    if (!asked) throw new SheetProblem(`${reference} is not a range of this workbook.`);
    asked.load('isNullObject,rowCount,columnCount,cellCount');
    await context.sync();
    if (asked.isNullObject) throw new SheetProblem(`${reference} is not a range of this workbook.`);
    let range = asked;
    // Whole columns and rows end at the last cell in use.
    if (asked.rowCount === LAST_ROW || asked.columnCount === LAST_COLUMN) {
      const used = asked.getUsedRangeOrNullObject(true);
      used.load('isNullObject');
      await context.sync();
      range = used.isNullObject ? asked.getCell(0, 0) : asked.getCell(0, 0).getBoundingRect(used);
      range.load('cellCount');
      await context.sync();
    }
    // The host tells −1 where the count is too large for it.
    if (range.cellCount < 0 || range.cellCount > MOST_CELLS_READ)
      throw new SheetProblem(`${reference} has more cells than can be shown here.`);
    range.load('values,valueTypes');
    await context.sync();
    return range.values.map((row, r) => row.map((value, c) => cellOf(value, range.valueTypes[r]?.[c])));
  });

const selection = (): Promise<ActiveCell | undefined> =>
  Excel.run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load('address,formulas,values,valueTypes,rowIndex,columnIndex');
    cell.worksheet.load('name');
    const parent = supports('ExcelApi', '1.12') ? cell.getSpillParentOrNullObject() : undefined;
    parent?.load('isNullObject,formulas,rowIndex,columnIndex');
    await context.sync();
    const home = parent && !parent.isNullObject ? parent : cell;
    const formula: unknown = home.formulas[0]?.[0];
    return {
      sheet: cell.worksheet.name,
      address: local(cell.address),
      formula: typeof formula === 'string' && formula.startsWith('=') ? formula : '',
      value: cellOf(cell.values[0]?.[0], cell.valueTypes[0]?.[0]),
      spillRow: cell.rowIndex - home.rowIndex,
      spillColumn: cell.columnIndex - home.columnIndex,
    };
  });

const onChange = (listener: () => void): Promise<() => void> =>
  Excel.run(async (context) => {
    const call = async (): Promise<void> => listener();
    const selected = context.workbook.onSelectionChanged.add(call);
    const { worksheets } = context.workbook;
    const calculated = supports('ExcelApi', '1.8') ? worksheets.onCalculated.add(call) : undefined;
    const changed = supports('ExcelApi', '1.9') ? worksheets.onChanged.add(call) : undefined;
    await context.sync();
    return () => {
      void Excel.run(selected.context, async (again) => {
        selected.remove();
        calculated?.remove();
        changed?.remove();
        await again.sync();
      }).catch(() => undefined); // The page is closing: nobody is left to be told.
    };
  });

const insertFormula = (formula: string): Promise<void> =>
  Excel.run(async (context) => {
    context.workbook.getActiveCell().formulas = [[formula]];
    await context.sync();
  });

/** The host's older interface draws SVG; the newer one then finds the drawing and gives it its words. */
const putPicture = async ({ svg, name, description }: Picture): Promise<void> => {
  await new Promise<void>((done, fail) => {
    const options = { coercionType: 'xmlSvg' as Office.CoercionType };
    Office.context.document.setSelectedDataAsync(svg, options, (result) =>
      `${result.status}` === 'succeeded' ? done() : fail(result.error),
    );
  });
  await Excel.run(async (context) => {
    const { shapes } = context.workbook.worksheets.getActiveWorksheet();
    shapes.load('items/id');
    await context.sync();
    const drawn = shapes.items.at(-1);
    if (!drawn) return;
    drawn.name = name;
    drawn.altTextTitle = name;
    drawn.altTextDescription = description;
    await context.sync();
  });
};

const recalculate = (): Promise<void> =>
  Excel.run(async (context) => {
    context.workbook.application.calculate('Full' as Excel.CalculationType);
    await context.sync();
  });

/** The sheet that this page stands beside. Use it once the host has said that it is ready. */
export const officeHost = (): SheetHost => ({
  can: (ability) => ABLE[ability](),
  selection: () => told('The selected cell could not be read. Select it again.', selection()),
  onChange: (listener) => told('The sheet does not say when it changes.', onChange(listener)),
  read: (reference, sheet) => told(`${reference} could not be read.`, read(reference, sheet)),
  insertFormula: (formula) =>
    told('The formula could not be put in the cell. Select one cell, then try again.', insertFormula(formula)),
  putPicture: (picture) => told('The drawing could not be put on the sheet.', putPicture(picture)),
  recalculate: () => told('The workbook could not be calculated again.', recalculate()),
});
