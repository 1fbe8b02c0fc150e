/** Reads the small parts of a workbook: the list of sheets, names, tables, shared texts and number formats. */

import { MAIN, RELATIONSHIPS } from './namespaces.ts';
import { BUILT_IN_FORMATS } from './number-formats.ts';
import { isType, type Parts, type Relationship } from './parts.ts';
import { readString } from './sheet-rows.ts';
import { decodeEscapes } from './text-escapes.ts';
import type { BookName, BookTable } from './types.ts';

export interface SheetEntry {
  readonly name: string;
  readonly path: string;
  readonly state: 'visible' | 'hidden' | 'veryHidden';
}

export interface WorkbookPart {
  readonly path: string;
  readonly relationships: readonly Relationship[];
  readonly sheets: readonly SheetEntry[];
  readonly names: readonly BookName[];
  readonly date1904: boolean;
  /** True for the strict edition of the format. */
  readonly strict: boolean;
}

const isTrue = (text: string | undefined): boolean => text === '1' || text === 'true';

const stateOf = (text: string | undefined): SheetEntry['state'] =>
  text === 'hidden' || text === 'veryHidden' ? text : 'visible';

/** The workbook part, found through the relationships of the file. */
export function readWorkbookPart(parts: Parts): WorkbookPart {
  const noWorkbook = () => parts.refuse('is not a .xlsx or .xlsm workbook');
  if (!parts.has('[Content_Types].xml')) throw noWorkbook();
  const path = parts.relationships('').find((relationship) => isType(relationship, 'officeDocument'))?.target;
  if (path === undefined || !parts.has(path)) throw noWorkbook();
  if (/sheet\.binary/i.test(parts.contentType(path) ?? '') || path.toLowerCase().endsWith('.bin')) {
    throw parts.refuse('is a binary workbook (.xlsb). Save it as .xlsx');
  }
  const relationships = parts.relationships(path);
  const reader = parts.reader(path);
  const root = reader.openRoot();
  if (root.local !== 'workbook' || !MAIN.has(root.space)) throw noWorkbook();
  const strict = root.space.includes('purl.oclc.org');
  let date1904 = false;
  const listed: { name: string; id: string; state: SheetEntry['state'] }[] = [];
  const names: { name: string; text: string; place?: number; hidden: boolean }[] = [];
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event !== 'open' || !MAIN.has(reader.space)) continue;
    if (reader.local === 'workbookPr') date1904 = isTrue(reader.attribute('date1904'));
    else if (reader.local === 'sheet') {
      const id = reader.attributeIn(RELATIONSHIPS, 'id') ?? '';
      listed.push({ name: reader.attribute('name') ?? '', id, state: stateOf(reader.attribute('state')) });
    } else if (reader.local === 'definedName') {
      const name = reader.attribute('name') ?? '';
      const place = reader.attribute('localSheetId');
      const hidden = isTrue(reader.attribute('hidden'));
      names.push({ name, hidden, place: place === undefined ? undefined : Number(place), text: reader.textInside() });
    }
  }
  // Sheets that are charts alone hold no cells. They count in the numbering that names use.
  const sheets = listed.flatMap(({ name, id, state }) => {
    const target = relationships.find((relationship) => relationship.id === id);
    if (target?.target === undefined || !parts.has(target.target)) throw parts.broken(path);
    return isType(target, 'worksheet') ? [{ name, path: parts.zip.spelling(target.target)!, state }] : [];
  });
  const withSheets = names.map(({ place, ...name }) => {
    const sheet = place === undefined ? undefined : listed[place]?.name;
    return sheet === undefined ? name : { ...name, sheet };
  });
  return { path, relationships, sheets, names: withSheets, date1904, strict };
}

/** Texts that cells share, `_x` escapes decoded. */
export function readSharedStrings(parts: Parts, workbook: WorkbookPart): string[] {
  const path = workbook.relationships.find((relationship) => isType(relationship, 'sharedStrings'))?.target;
  if (path === undefined || !parts.has(path)) return [];
  const strings: string[] = [];
  const reader = parts.reader(path);
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event === 'open' && reader.local === 'si' && MAIN.has(reader.space))
      strings.push(decodeEscapes(readString(reader)));
  }
  return strings;
}

export function readTables(parts: Parts, sheets: readonly SheetEntry[]): BookTable[] {
  return sheets.flatMap((sheet) =>
    parts
      .relationships(sheet.path)
      .filter((relationship) => isType(relationship, 'table') && relationship.target !== undefined)
      .map((relationship) => readTable(parts, relationship.target!, sheet.name)),
  );
}

function readTable(parts: Parts, path: string, sheet: string): BookTable {
  const reader = parts.reader(path);
  if (reader.openRoot().local !== 'table') throw parts.broken(path);
  const name = reader.attribute('displayName') ?? reader.attribute('name') ?? '';
  const ref = reader.attribute('ref') ?? '';
  const headerRows = Number(reader.attribute('headerRowCount') ?? 1);
  const totalsRows = Number(reader.attribute('totalsRowCount') ?? 0);
  const columns: string[] = [];
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event === 'open' && reader.local === 'tableColumn') columns.push(decodeEscapes(reader.attribute('name') ?? ''));
  }
  return { name, sheet, ref, columns, headerRows, totalsRows };
}

/** Number format of each style, by the style's index. */
export function readNumberFormats(parts: Parts, workbook: WorkbookPart): string[] {
  const path = workbook.relationships.find((relationship) => isType(relationship, 'styles'))?.target;
  if (path === undefined || !parts.has(path)) return [];
  const own = new Map(BUILT_IN_FORMATS);
  const formats: string[] = [];
  let isInCells = false;
  const reader = parts.reader(path);
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event !== 'text' && reader.local === 'cellXfs') isInCells = event === 'open';
    if (event !== 'open') continue;
    if (reader.local === 'numFmt' && reader.depth === 3) {
      own.set(Number(reader.attribute('numFmtId')), decodeEscapes(reader.attribute('formatCode') ?? 'General'));
    }
    if (reader.local === 'xf' && isInCells)
      formats.push(own.get(Number(reader.attribute('numFmtId') ?? 0)) ?? 'General');
  }
  return formats;
}
