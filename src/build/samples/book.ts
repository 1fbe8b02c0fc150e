/** Lays out sample workbooks: cells with a look, formulas in the form that files keep, and the parts that a reader expects. */

import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import {
  type Cell,
  type CellStyle,
  type ConditionalRule,
  type DataValidation,
  type SheetChart,
  type TableDefinition,
  writeXlsx,
} from 'hucre';
import { functions } from '../../functions/index.ts';
import { toStored } from '../../workbook/index.ts';

/** Colours of the product's look, for paper: the light tokens. */
export const INK = '23272B';
export const FAINT_INK = '5A6067';
const LINE = 'D8D2C7';
export const CLAY = '8A4B2F';
const PAPER = 'FAF8F4';
const WARN_PAPER = 'FFF3D6';
const WARN = '7A5200';

const FONT = 'Arial';

/** The looks that a cell of a sample may have. */
export type Look =
  | 'title'
  | 'text'
  | 'faint'
  | 'heading'
  | 'numberHeading'
  | 'input'
  | 'result'
  | 'total'
  | 'caution'
  | 'label';

const font = (rgb: string, more: object = {}) => ({ name: FONT, size: 10, color: { rgb }, ...more });
const fill = (rgb: string) => ({ type: 'pattern' as const, pattern: 'solid' as const, fgColor: { rgb } });
const rule = { style: 'thin' as const, color: { rgb: LINE } };
const wrap = { wrapText: true, vertical: 'top' as const };

const heading = (horizontal: 'left' | 'right'): CellStyle => ({
  font: font(INK, { bold: true }),
  fill: fill(PAPER),
  border: { bottom: { style: 'medium', color: { rgb: CLAY } } },
  alignment: { wrapText: true, vertical: 'bottom', horizontal },
});

const LOOKS: Readonly<Record<Look, CellStyle>> = {
  title: { font: font(CLAY, { size: 16, bold: true }) },
  text: { font: font(INK), alignment: wrap },
  faint: { font: font(FAINT_INK) },
  heading: heading('left'),
  numberHeading: heading('right'),
  input: { font: font(INK), border: { bottom: rule } },
  result: { font: font(INK), fill: fill(PAPER), border: { bottom: rule } },
  total: { font: font(INK, { bold: true }), border: { top: rule, bottom: rule } },
  caution: { font: font(WARN), fill: fill(WARN_PAPER), alignment: wrap },
  label: { font: font(INK, { bold: true }), alignment: wrap },
};

/** A number format that shows a unit behind the number, such as 12.3 kg. */
export const withUnit = (decimals: number, unit: string): string =>
  `${decimals ? `0.${'0'.repeat(decimals)}` : '0'}" ${unit}"`;

export interface CellPlan {
  readonly value: string | number | boolean | null;
  /** As people type it, without `=`. */
  readonly formula?: string;
  /** The area that it fills when it spills. */
  readonly spills?: string;
  readonly look: Look;
  readonly format?: string;
}

export interface SheetPlan {
  readonly name: string;
  readonly widths: readonly number[];
  readonly rows: readonly (readonly (CellPlan | null)[])[];
  /** Rows and columns that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly tables?: readonly TableDefinition[];
  readonly validations?: readonly DataValidation[];
  readonly rules?: readonly ConditionalRule[];
  readonly charts?: readonly SheetChart[];
  readonly heights?: ReadonlyMap<number, number>;
  readonly landscape?: boolean;
  /** Last cell of the print area. */
  readonly printTo: string;
  /** Heading row that is printed on each page, counted from 1. */
  readonly headingRow?: number;
}

export interface BookPlan {
  readonly file: string;
  readonly title: string;
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly { readonly name: string; readonly range: string }[];
}

export const put = (value: CellPlan['value'], look: Look, format?: string): CellPlan => ({
  value,
  look,
  ...(format ? { format } : {}),
});

/** A formula cell. What it shows is calculated after the workbook is laid out. */
export const calculate = (formula: string, look: Look, format?: string, spills?: string): CellPlan => ({
  value: null,
  formula,
  look,
  ...(format ? { format } : {}),
  ...(spills ? { spills } : {}),
});

const ids = functions.map((f) => `JACKET.${f.id}`);

/** A1 for row 0 and column 0. */
export const address = (row: number, column: number): string => {
  let letters = '';
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return `${letters}${row + 1}`;
};

const cellOf = (plan: CellPlan): Partial<Cell> => {
  const style = { ...LOOKS[plan.look], ...(plan.format ? { numFmt: plan.format } : {}) };
  if (plan.formula === undefined) {
    const type = plan.value === null ? 'empty' : (typeof plan.value as 'string' | 'number' | 'boolean');
    return { value: plan.value, type, style };
  }
  const formula = toStored(plan.formula, ids);
  // What spills is marked as a dynamic array. A call with a single result stands as a plain formula: it binds all the same, and a viewer
  // that does not know the functions shows its cached value, while it would calculate an array anew and fail.
  const array = plan.spills;
  return {
    value: null,
    type: 'formula',
    formula,
    formulaResult: 0,
    style,
    ...(array ? { formulaType: 'array' as const, formulaRef: array, formulaDynamic: true } : {}),
  };
};

/** Fixed, so that the same plan gives the same bytes. */
const WRITTEN = new Date('2026-01-01T00:00:00Z');

/** Takes out the order to calculate everything when the file is opened: a program without our functions would lose the cached values. */
const keepingValues = (bytes: Uint8Array): Uint8Array => {
  const parts = unzipSync(bytes);
  const edit = (part: string, change: (xml: string) => string) => {
    parts[part] = strToU8(change(strFromU8(parts[part]!)));
  };
  edit('xl/workbook.xml', (xml) => xml.replace(/<calcPr[^>]*\/>/, ''));
  // Viewers show cached text only of files whose program they know.
  edit('docProps/app.xml', (xml) => xml.replace(/<Application>[^<]*</, '<Application>Microsoft Excel<'));
  return zipSync(parts, { level: 6, mtime: WRITTEN });
};

/** The workbook of a plan, formulas not calculated yet. */
export const layOut = async (plan: BookPlan): Promise<Uint8Array> => keepingValues(await written(plan));

const written = (plan: BookPlan): Promise<Uint8Array> =>
  writeXlsx({
    properties: { title: plan.title, creator: 'Storage jackets', created: WRITTEN, modified: WRITTEN },
    defaultFont: { name: FONT, size: 10 },
    namedRanges: [...plan.names],
    sheets: plan.sheets.map((sheet) => {
      const cells = new Map<string, Partial<Cell>>();
      for (const [r, row] of sheet.rows.entries())
        for (const [c, one] of row.entries()) if (one) cells.set(`${r},${c}`, cellOf(one));
      return {
        name: sheet.name,
        columns: sheet.widths.map((width) => ({ width })),
        rows: sheet.rows.map((row) => row.map((one) => one?.value ?? null)),
        cells,
        view: { showGridLines: false },
        ...(sheet.frozen ? { freezePane: sheet.frozen } : {}),
        ...(sheet.tables ? { tables: [...sheet.tables] } : {}),
        ...(sheet.validations ? { dataValidations: [...sheet.validations] } : {}),
        ...(sheet.rules ? { conditionalRules: [...sheet.rules] } : {}),
        ...(sheet.charts ? { charts: [...sheet.charts] } : {}),
        ...(sheet.heights ? { rowDefs: new Map([...sheet.heights].map(([row, height]) => [row, { height }])) } : {}),
        pageSetup: {
          orientation: sheet.landscape ? ('landscape' as const) : ('portrait' as const),
          fitToPage: true,
          fitToWidth: 1,
          fitToHeight: 0,
          printArea: `$A$1:${sheet.printTo.replace(/([A-Z]+)(\d+)/, '$$$1$$$2')}`,
          ...(sheet.headingRow ? { printTitlesRow: `$${sheet.headingRow}:$${sheet.headingRow}` } : {}),
        },
      };
    }),
  });
