/**
 * What another spreadsheet program answers to the formulas of known-answers.tsv, which has to be installed as `soffice`:
 *
 *     npm run build && node tests/engine/second-opinion.mjs
 *
 * Writes a workbook without values, has it calculated, reads the values back, and puts into the column «second opinion» `agrees`, the other answer,
 * or `cannot say` where that program lacks the function. It changes no answer: a person decides who is right and writes the reason into the note.
 */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { toStored } from '../../build/workbook/index.js';

const ANSWERS = new URL('known-answers.tsv', import.meta.url);
const CELLS = new URL('known-answers-cells.json', import.meta.url);
const FIRST_ROW = 21;
const STEP = 8;
/** Numbers this close are the same answer. */
const TOLERANCE = 1e-9;

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

const escaped = (text) =>
  String(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** `{1,2;3,4}` and the like as rows of `3`, `"text"`, `TRUE`, `#N/A`. */
const literalRows = (literal) => {
  const inside = literal.startsWith('{') ? literal.slice(1, -1) : literal;
  const rows = [[]];
  for (const [piece] of inside.matchAll(/"(?:[^"]|"")*"|[^,;"]+|[,;]/g))
    if (piece === ';') rows.push([]);
    else if (piece !== ',') rows.at(-1).push(piece);
  return rows;
};

const columnLetter = (index) => String.fromCharCode(65 + index);
const columnOf = (address) => address.replace(/\d/g, '').charCodeAt(0) - 65;
const rowOf = (address) => Number(address.replace(/\D/g, ''));

const stored = (formula) => escaped(toStored(formula, []));

function cellXml(address, value) {
  if (typeof value === 'number') return `<c r="${address}"><v>${value}</v></c>`;
  if (typeof value === 'boolean') return `<c r="${address}" t="b"><v>${value ? 1 : 0}</v></c>`;
  if (value.startsWith('=')) return `<c r="${address}"><f>${stored(value.slice(1))}</f></c>`;
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`;
}

const arrayXml = (ref, formula) => `<c r="${ref.split(':')[0]}"><f t="array" ref="${ref}">${stored(formula)}</f></c>`;

function sheetXml({ cells, spills }, formulas) {
  const rows = new Map();
  const add = (address, xml) => {
    const row = rows.get(rowOf(address)) ?? [];
    rows.set(rowOf(address), row);
    row.push([columnOf(address), xml]);
  };
  for (const [address, value] of Object.entries(cells)) add(address, cellXml(address, value));
  for (const [ref, formula] of Object.entries(spills)) add(ref.split(':')[0], arrayXml(ref, formula));
  formulas.forEach(({ formula, answer }, i) => {
    const row = FIRST_ROW + i * STEP;
    const shape = literalRows(answer);
    const last = `${columnLetter(shape[0].length - 1)}${row + shape.length - 1}`;
    const ref = last === `A${row}` ? last : `A${row}:${last}`;
    add(`A${row}`, arrayXml(ref, formula));
  });
  const lines = [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, list]) => {
      const inOrder = list.sort(([a], [b]) => a - b).map(([, xml]) => xml);
      return `<row r="${row}">${inOrder.join('')}</row>`;
    });
  return `${XML}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData>${lines.join('')}</sheetData>TABLE</worksheet>`;
}

function workbook(formulas) {
  const { sheets, names, table } = JSON.parse(readFileSync(CELLS, 'utf8'));
  const relation = (id, kind, target) => `<Relationship Id="${id}" Type="${OFFICE}/${kind}" Target="${target}"/>`;
  const relations = (list) => `${XML}<Relationships xmlns="${PACKAGE}/relationships">${list.join('')}</Relationships>`;
  const override = (part, type) =>
    `<Override PartName="${part}" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.${type}+xml"/>`;
  const [first, last] = table.ref.split(':');
  const files = {
    '[Content_Types].xml': `${XML}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${[
      override('/xl/workbook.xml', 'sheet.main'),
      ...sheets.map((_, i) => override(`/xl/worksheets/sheet${i + 1}.xml`, 'worksheet')),
      override('/xl/tables/table1.xml', 'table'),
    ].join('')}</Types>`,
    '_rels/.rels': relations([relation('r1', 'officeDocument', 'xl/workbook.xml')]),
    'xl/workbook.xml': `${XML}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets
      .map(({ name }, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="r${i + 1}"/>`)
      .join('')}</sheets><definedNames>${Object.entries(names)
      .map(([name, text]) => `<definedName name="${name}">${escaped(text)}</definedName>`)
      .join('')}</definedNames></workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      sheets.map((_, i) => relation(`r${i + 1}`, 'worksheet', `worksheets/sheet${i + 1}.xml`)),
    ),
    'xl/tables/table1.xml': `${XML}<table xmlns="${MAIN}" id="1" name="${table.name}" displayName="${table.name}" ref="${table.ref}" totalsRowCount="1"><autoFilter ref="${first}:${last.replace(/\d+/, (n) => Number(n) - 1)}"/><tableColumns count="${table.columns.length}">${table.columns
      .map((name, i) => `<tableColumn id="${i + 1}" name="${name}"/>`)
      .join('')}</tableColumns></table>`,
  };
  for (const [i, sheet] of sheets.entries()) {
    const own = sheet.name === table.sheet;
    files[`xl/worksheets/sheet${i + 1}.xml`] = sheetXml(sheet, i === 0 ? formulas : []).replace(
      'TABLE',
      own ? '<tableParts count="1"><tablePart r:id="r1"/></tableParts>' : '',
    );
    if (own)
      files[`xl/worksheets/_rels/sheet${i + 1}.xml.rels`] = relations([
        relation('r1', 'table', '../tables/table1.xml'),
      ]);
  }
  return zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
}

/** Values of the first sheet by `row,column` from 1, as they are typed into a formula. */
function valuesOf(flatXml) {
  const values = new Map();
  let sheets = 0;
  let row = 0;
  let column = 0;
  let cell;
  let inText = false;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    if (name === 'table:table') sheets += 1;
    if (sheets !== 1) return;
    if (name === 'table:table-row') {
      row += 1;
      column = 0;
      cell = { repeated: Number(attributes['table:number-rows-repeated'] ?? 1) };
      row += cell.repeated - 1;
    } else if (name === 'table:table-cell' || name === 'table:covered-table-cell') {
      cell = { attributes, text: '' };
      column += 1;
    } else if (name === 'text:p') inText = true;
  });
  parser.on('text', (text) => {
    if (inText && cell) cell.text += text;
  });
  parser.on('closetag', ({ name, attributes }) => {
    if (name === 'text:p') inText = false;
    if (sheets !== 1 || name !== 'table:table-cell') return;
    const kind = cell.attributes['office:value-type'];
    const isError = cell.attributes['calcext:value-type'] === 'error';
    let value;
    if (isError) value = cell.text;
    else if (kind === 'boolean') value = cell.attributes['office:boolean-value'].toUpperCase();
    else if (kind === 'string')
      value = `"${(cell.attributes['office:string-value'] ?? cell.text).replaceAll('"', '""')}"`;
    else if (kind === 'date' || kind === 'time') value = `${kind} ${cell.text}`;
    else if (kind !== undefined) value = cell.attributes['office:value'];
    if (value !== undefined) values.set(`${row},${column}`, value);
    column += Number(attributes['table:number-columns-repeated'] ?? 1) - 1;
  });
  parser.write(flatXml).close();
  return values;
}

const isSame = (a, b) => {
  if (a === b || (a === undefined && b === '""')) return true;
  const [x, y] = [Number(a), Number(b)];
  return Math.abs(x - y) <= TOLERANCE * Math.max(1, Math.abs(x), Math.abs(y));
};

/** What it answers to functions that it does not have, and to calls of a LAMBDA. */
const NOT_KNOWN = /^(?:(?:#NAME\?|Err:509)[,;]?)+$/;

/** That program shows a text's truth value and a number where it has no type of its own: `TRUE` is its 1. */
const asNumber = (value) => (value === 'TRUE' ? '1' : value === 'FALSE' ? '0' : value);

function opinion({ answer }, i, values) {
  const shape = literalRows(answer);
  const got = shape.map((line, r) => line.map((_, c) => values.get(`${FIRST_ROW + i * STEP + r},${c + 1}`)));
  const agrees = shape.every((line, r) => line.every((value, c) => isSame(asNumber(got[r][c]), asNumber(value))));
  if (agrees) return 'agrees';
  const shown = got.map((line) => line.map((value) => value ?? '').join(',')).join(';');
  return NOT_KNOWN.test(shown) ? 'cannot say' : `differs: ${shown}`;
}

const [heading, ...lines] = readFileSync(ANSWERS, 'utf8').trimEnd().split('\n');
const rows = lines.map((line) => line.split('\t'));
const formulas = rows.map(([, formula, answer]) => ({ formula, answer }));
const folder = mkdtempSync(join(tmpdir(), 'second-opinion-'));
try {
  writeFileSync(join(folder, 'formulas.xlsx'), workbook(formulas));
  const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
  execFileSync('soffice', [
    profile,
    '--headless',
    '--convert-to',
    'fods',
    '--outdir',
    folder,
    join(folder, 'formulas.xlsx'),
  ]);
  const values = valuesOf(readFileSync(join(folder, 'formulas.fods'), 'utf8'));
  const written = rows.map(([area, formula, answer, , note = ''], i) =>
    [area, formula, answer, opinion(formulas[i], i, values), note].join('\t'),
  );
  writeFileSync(ANSWERS, `${[heading, ...written].join('\n')}\n`);
} finally {
  rmSync(folder, { recursive: true });
}
