/**
 * The mark of a dynamic array: attribute `cm` of its cell points into the metadata part, to an entry called XLDAPR.
 * Source: [MS-XLSX] 2.6.202 and saved workbooks.
 */

import { applyEdits, type Edit, withAttributes } from './edits.ts';
import { isType, type Parts } from './parts.ts';
import type { WorkbookPart } from './read-workbook.ts';
import type { Span } from './sheet-rows.ts';

const NAME = 'XLDAPR';
const PATH = 'xl/metadata.xml';
const CONTENT = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml';
const DYNAMIC_SPACE = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';

const metadataType = (p: string): string =>
  `<${p}metadataType name="${NAME}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;

const futureMetadata = (p: string): string =>
  `<${p}futureMetadata name="${NAME}" count="1"><${p}bk><${p}extLst><${p}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="${DYNAMIC_SPACE}" fDynamic="1" fCollapsed="0"/></${p}ext></${p}extLst></${p}bk></${p}futureMetadata>`;

const cellBlock = (p: string, type: number): string => `<${p}bk><${p}rc t="${type}" v="0"/></${p}bk>`;

/** What an existing part holds, and where new entries go. */
interface Found {
  prefix: string;
  types: number;
  typesTag?: Span;
  typesEnd: number;
  /** 1-based number of the XLDAPR type; 0 without one. */
  type: number;
  /** Number of cell blocks, and the 1-based number of the one that points to XLDAPR; 0 without one. */
  blocks: number;
  block: number;
  cellTag?: Span;
  cellEnd: number;
  /** Start of the first part that comes after future metadata, and after cell metadata. */
  afterFuture: number;
  afterCell: number;
}

function read(parts: Parts, path: string): Found {
  const reader = parts.reader(path);
  const root = reader.openRoot();
  const { prefix } = reader;
  const found: Found = {
    prefix,
    types: 0,
    typesEnd: -1,
    type: 0,
    blocks: 0,
    block: 0,
    cellEnd: -1,
    afterFuture: -1,
    afterCell: -1,
  };
  if (root.local !== 'metadata' || reader.selfClosing) throw parts.broken(path);
  let section = '';
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    const { local, depth, start, end } = reader;
    if (event === 'open' && depth === 2) {
      section = local;
      if (local === 'metadataTypes') found.typesTag = { start, end };
      if (local === 'cellMetadata') found.cellTag = { start, end };
      if (found.afterFuture < 0 && /^(cellMetadata|valueMetadata|extLst)$/.test(local)) found.afterFuture = start;
      if (found.afterCell < 0 && /^(valueMetadata|extLst)$/.test(local)) found.afterCell = start;
    } else if (event === 'open' && local === 'metadataType') {
      found.types++;
      if (reader.attribute('name') === NAME) found.type = found.types;
    } else if (event === 'open' && section === 'cellMetadata' && local === 'bk') found.blocks++;
    else if (event === 'open' && section === 'cellMetadata' && local === 'rc') {
      if (found.block === 0 && found.type > 0 && Number(reader.attribute('t')) === found.type)
        found.block = found.blocks;
    } else if (event === 'close' && depth === 1) {
      if (local === 'metadataTypes') found.typesEnd = start;
      if (local === 'cellMetadata') found.cellEnd = start;
    } else if (event === 'close' && depth === 0) {
      if (found.afterFuture < 0) found.afterFuture = start;
      if (found.afterCell < 0) found.afterCell = start;
    }
  }
  return found;
}

export interface DynamicArrayMark {
  /** Number for the attribute `cm`. */
  readonly number: number;
  /** Writes what the number needs into the metadata part. Does nothing where it is there already. */
  readonly write: () => void;
}

/** The mark of a dynamic array in this workbook. */
export function dynamicArrayMark(parts: Parts, workbook: WorkbookPart): DynamicArrayMark {
  const path = parts.relationships(workbook.path).find((relationship) => isType(relationship, 'sheetMetadata'))?.target;
  if (path === undefined || !parts.has(path)) {
    const part = {
      path: parts.has(PATH) ? 'xl/metadata-arrays.xml' : PATH,
      text: newPart(workbook.strict),
      type: relationshipType(workbook),
      content: CONTENT,
    };
    return { number: 1, write: () => parts.addPart(workbook.path, part) };
  }
  const found = read(parts, path);
  if (found.block > 0) return { number: found.block, write: () => {} };
  const text = parts.text(path);
  const { prefix: p } = found;
  const type = found.type || found.types + 1;
  const edits: Edit[] = [];
  const insert = (at: number, added: string): void => void edits.push({ start: at, end: at, text: added });
  const count = ({ start, end }: Span, value: number): void =>
    void edits.push({ start, end, text: withAttributes(text.slice(start, end), { count: String(value) }) });
  if (found.type === 0) {
    if (!found.typesTag || found.typesEnd < found.typesTag.end) throw parts.broken(path);
    count(found.typesTag, type);
    insert(found.typesEnd, metadataType(p));
    insert(found.afterFuture, futureMetadata(p));
  }
  if (found.cellTag && found.cellEnd >= found.cellTag.end) {
    count(found.cellTag, found.blocks + 1);
    insert(found.cellEnd, cellBlock(p, type));
  } else insert(found.afterCell, `<${p}cellMetadata count="1">${cellBlock(p, type)}</${p}cellMetadata>`);
  return { number: found.blocks + 1, write: () => parts.write(path, applyEdits(text, edits)) };
}

const relationshipType = (workbook: WorkbookPart): string =>
  `${workbook.strict ? 'http://purl.oclc.org/ooxml/officeDocument' : 'http://schemas.openxmlformats.org/officeDocument/2006'}/relationships/sheetMetadata`;

const newPart = (strict: boolean): string =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<metadata xmlns="${strict ? 'http://purl.oclc.org/ooxml/spreadsheetml/main' : 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'}"><metadataTypes count="1">${metadataType('')}</metadataTypes>${futureMetadata('')}<cellMetadata count="1">${cellBlock('', 1)}</cellMetadata></metadata>`;
