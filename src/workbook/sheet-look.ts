/** How a sheet looks beside its cells, and what of it a plain grid does not draw. */

import type { ThemeColours } from './colours.ts';
import { eachChild, eachInRoot, isTrue, numberOf } from './elements.ts';
import { isType, type Parts } from './parts.ts';
import { type ConditionalRule, readConditionalRules, readValidation, type ValidationRule } from './rules.ts';

export interface SheetLook {
  readonly gridLines: boolean;
  readonly rightToLeft: boolean;
  /** Height of rows that set none, points. */
  readonly rowHeight?: number;
  /** Width of columns that set none, in characters of the default font. */
  readonly columnWidth?: number;
  /** Styles of whole columns, 1-based and inclusive. */
  readonly columnStyles: readonly { readonly first: number; readonly last: number; readonly style: number }[];
  /** Names of the looks that its tables ask for, by the table's area. */
  readonly tableStyles: ReadonlyMap<string, TableLook>;
  readonly validations: readonly ValidationRule[];
  readonly conditionalRules: readonly ConditionalRule[];
  /** What is in the sheet and is kept, but not drawn by a plain grid: in words, such as `a chart`. */
  readonly notDrawn: readonly string[];
}

export interface TableLook {
  /** Name of a stock style; left out where the table has none. */
  readonly style?: string;
  readonly stripes: boolean;
}

/** Relationships whose parts are more than a plain grid draws. */
const NOT_DRAWN: readonly (readonly [string, string])[] = [
  ['comments', 'notes'],
  ['threadedComment', 'notes'],
  ['pivotTable', 'a pivot table'],
  ['slicer', 'a slicer'],
  ['timeline', 'a timeline'],
  ['oleObject', 'an embedded document'],
  ['control', 'a control'],
];

/** What a drawing holds, by the elements and parts in it. */
function inDrawing(parts: Parts, path: string): string[] {
  const found = new Set<string>();
  for (const relationship of parts.relationships(path)) {
    if (isType(relationship, 'chart') || isType(relationship, 'chartEx')) found.add('a chart');
    else if (isType(relationship, 'image')) found.add('a picture');
  }
  if (found.size === 0) found.add('a drawing');
  return [...found];
}

function notDrawn(parts: Parts, path: string): string[] {
  const found = new Set<string>();
  for (const relationship of parts.relationships(path)) {
    if (isType(relationship, 'drawing') && relationship.target !== undefined && parts.has(relationship.target))
      for (const what of inDrawing(parts, relationship.target)) found.add(what);
    for (const [type, what] of NOT_DRAWN) if (isType(relationship, type)) found.add(what);
  }
  return [...found];
}

function tableLooks(parts: Parts, path: string): Map<string, TableLook> {
  const looks = new Map<string, TableLook>();
  for (const { target, ...relationship } of parts.relationships(path)) {
    if (!isType(relationship, 'table') || target === undefined || !parts.has(target)) continue;
    const reader = parts.reader(target);
    let ref = '';
    let look: TableLook = { stripes: false };
    if (reader.next() === 'open') {
      ref = reader.attribute('ref') ?? '';
      eachChild(reader, (name) => {
        if (name !== 'tableStyleInfo') return;
        const style = reader.attribute('name');
        look = { stripes: isTrue(reader.attribute('showRowStripes')), ...(style === undefined ? {} : { style }) };
      });
    }
    looks.set(ref, look);
  }
  return looks;
}

/** Reads how a sheet looks. Its rows are passed over. */
export function readSheetLook(parts: Parts, path: string, theme: ThemeColours): SheetLook {
  let gridLines = true;
  let rightToLeft = false;
  let rowHeight: number | undefined;
  let columnWidth: number | undefined;
  let hasSparklines = false;
  const columnStyles: { first: number; last: number; style: number }[] = [];
  const validations: ValidationRule[] = [];
  const conditionalRules: ConditionalRule[] = [];
  const reader = parts.reader(path);
  eachInRoot(reader, (name) => {
    if (name === 'sheetViews')
      eachChild(reader, () => {
        gridLines = isTrue(reader.attribute('showGridLines') ?? '1');
        rightToLeft = isTrue(reader.attribute('rightToLeft'));
      });
    else if (name === 'sheetFormatPr') {
      rowHeight = numberOf(reader.attribute('defaultRowHeight'));
      columnWidth = numberOf(reader.attribute('defaultColWidth'));
    } else if (name === 'cols')
      eachChild(reader, () => {
        const style = Number(reader.attribute('style') ?? 0);
        if (style > 0)
          columnStyles.push({ first: Number(reader.attribute('min')), last: Number(reader.attribute('max')), style });
      });
    else if (name === 'dataValidations') eachChild(reader, () => validations.push(readValidation(reader)));
    else if (name === 'conditionalFormatting') conditionalRules.push(...readConditionalRules(reader, theme));
    else if (name === 'extLst')
      eachChild(reader, () => {
        eachChild(reader, (kind) => {
          if (kind === 'sparklineGroups') hasSparklines = true;
        });
      });
  });
  return {
    gridLines,
    rightToLeft,
    ...(rowHeight === undefined ? {} : { rowHeight }),
    ...(columnWidth === undefined ? {} : { columnWidth }),
    columnStyles,
    tableStyles: tableLooks(parts, path),
    validations,
    conditionalRules,
    notDrawn: [...notDrawn(parts, path), ...(hasSparklines ? ['sparklines'] : [])],
  };
}
