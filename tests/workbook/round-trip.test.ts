/** Random edits on random sheets: everything else stays, and what was written is what is read, here and by a published parser. */

import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { addressOf } from '../../src/workbook/address.ts';
import { compareWorkbooks } from '../../src/workbook/compare.ts';
import { escapeText } from '../../src/workbook/text-escapes.ts';
import type { BookValue, CellUpdate } from '../../src/workbook/types.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { bookParts, MAIN, zipParts } from './make-book.ts';

const SHEET = 'xl/worksheets/sheet1.xml';
const ROWS = 8;
const COLUMNS = 6;

const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc.constantFrom('', ' a ', 'a\nb', '_x0041_', '<&>', 'x\ry'),
);
const value: fc.Arbitrary<BookValue> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => (x === 0 ? 0 : x)),
  fc.integer({ min: -5, max: 5 }).map((x) => (x === 0 ? 0 : x)),
  text,
  fc.boolean(),
  fc.constant(null),
  fc.constantFrom('#N/A', '#VALUE!', '#NUM!', '#DIV/0!').map((error) => ({ error })),
);

/** One cell as somebody else may have written it: its attributes and what is inside, with `P` for the prefix. */
const written = fc.oneof(
  fc.constantFrom(
    ['', ''],
    [' s="1"', ''],
    [' t="s"', '<Pv>0</Pv>'],
    [' s="2" t="s"', '<Pv>1</Pv>'],
    [' t="b"', '<Pv>1</Pv>'],
    [' t="e" vm="1"', '<Pf>NA()</Pf><Pv>#N/A</Pv>'],
    [' t="str"', '<Pf>"a"&amp;"b"</Pf>\n<Pv>ab</Pv>'],
    [' cm="1"', '<Pf t="array" ref="A1">PLAN(1)</Pf><Pv>1</Pv>'],
    [' t="inlineStr"', '<Pis><Pt xml:space="preserve"> typed </Pt></Pis>'],
    [' s="3"', '<Pf ca="1">NOW()</Pf><Pv>45000.25</Pv><!-- note -->'],
  ),
  fc.integer({ min: -100, max: 100 }).map((x) => ['', `<Pv>${x}.0</Pv>`]),
);

const sheet = fc
  .record({
    prefix: fc.constantFrom('', 'x:'),
    gap: fc.constantFrom('', '\n  '),
    rows: fc.uniqueArray(fc.integer({ min: 1, max: ROWS }), { maxLength: ROWS }).chain((numbers) =>
      fc.tuple(
        ...numbers
          .sort((a, b) => a - b)
          .map((number) =>
            fc.record({
              number: fc.constant(number),
              attributes: fc.constantFrom('', ' spans="1:6"', ' ht="20" customHeight="1"'),
              cells: fc.dictionary(fc.constantFrom('1', '2', '3', '4', '5', '6'), written),
            }),
          ),
      ),
    ),
  })
  .map(({ prefix: p, gap, rows }) => {
    const name = p.replace(':', '');
    const inRows = rows.map(({ number, attributes, cells }) => {
      const columns = Object.keys(cells)
        .map(Number)
        .sort((a, b) => a - b);
      const inside = columns.map((column) => {
        const [more, content] = cells[String(column)]!;
        const tag = `<${p}c r="${addressOf(number, column)}"${more}`;
        const inner = content!.replace(/<(\/?)P/g, `<$1${p}`);
        return inner === '' ? `${tag}/>` : `${tag}>${inner}</${p}c>`;
      });
      const tag = `<${p}row r="${number}"${attributes}`;
      return inside.length === 0 ? `${tag}/>` : `${tag}>${gap}${inside.join(gap)}${gap}</${p}row>`;
    });
    const data = inRows.length === 0 ? `<${p}sheetData/>` : `<${p}sheetData>${gap}${inRows.join(gap)}</${p}sheetData>`;
    return `<${p}worksheet xmlns${name && `:${name}`}="${MAIN}">${data}<${p}pageMargins left="0.7"/></${p}worksheet>`;
  });

const address = fc
  .tuple(fc.integer({ min: 1, max: ROWS + 1 }), fc.integer({ min: 1, max: COLUMNS + 1 }))
  .map(([row, column]) => addressOf(row, column));
const update: fc.Arbitrary<CellUpdate> = fc.oneof(
  value.map((x) => ({ value: x })),
  value.map((x) => ({ value: x, formula: null })),
  fc.tuple(value, fc.constantFrom('A1+1', 'IF(A1<2,"&","x")')).map(([x, formula]) => ({ value: x, formula })),
);
const updates = fc.uniqueArray(fc.tuple(address, update), { maxLength: 12, selector: ([place]) => place });

/** Type, value text and formula text of every cell, read by a published parser. */
function secondOpinion(xml: string): Map<string, { type: string; style?: string; value: string; formula?: string }> {
  const cells = new Map<string, { type: string; style?: string; value: string; formula?: string }>();
  let cell: { type: string; style?: string; value: string; formula?: string } | undefined;
  let inside = '';
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ local, attributes: a }) => {
    inside = local;
    if (local === 'c') {
      cell = { type: a.t?.value ?? 'n', style: a.s?.value, value: '' };
      cells.set(a.r!.value, cell);
    } else if (local === 'f' && cell) cell.formula = '';
  });
  parser.on('text', (part) => {
    if (!cell) return;
    if (inside === 'v' || inside === 't') cell.value += part;
    else if (inside === 'f') cell.formula += part;
  });
  parser.on('closetag', ({ local }) => {
    inside = '';
    if (local === 'c') cell = undefined;
  });
  parser.write(xml).close();
  return cells;
}

/** What the parser should find for a value. */
function asWritten(x: BookValue, isFormula: boolean): { type: string; value: string } {
  if (x === null) return { type: 'n', value: '' };
  if (typeof x === 'number') return { type: 'n', value: String(x) };
  if (typeof x === 'boolean') return { type: 'b', value: x ? '1' : '0' };
  if (typeof x === 'object') return { type: 'e', value: x.error };
  const inFile = escapeText(x).replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
  return { type: isFormula ? 'str' : 'inlineStr', value: inFile };
}

const contents = (workbook: Workbook) => new Map([...workbook.sheets[0]!.cells()].map((cell) => [cell.address, cell]));

test('random edits leave everything else as it was and are read as they were written', () => {
  fc.assert(
    fc.property(sheet, updates, (xml, list) => {
      const bytes = zipParts({ ...bookParts(''), [SHEET]: xml });
      const before = contents(Workbook.read(bytes));
      const workbook = Workbook.read(bytes);
      const changed = workbook.patch('Sheet', new Map(list));
      const after = workbook.bytes();
      const now = contents(Workbook.read(after));
      const inFile = secondOpinion(strFromU8(unzipSync(after)[SHEET]!));

      for (const [place, { value: wanted, formula }] of list) {
        const found = now.get(place);
        expect(found?.value ?? null).toEqual(wanted);
        if (formula !== undefined) expect(found?.formula?.text ?? null).toBe(formula);
        if (formula === undefined) expect(found?.formula).toEqual(before.get(place)?.formula);
        expect(found?.style ?? 0).toBe(before.get(place)?.style ?? 0);
        if (!changed.includes(place)) continue;
        expect(inFile.get(place)).toMatchObject(asWritten(wanted, found?.formula !== undefined));
        expect(inFile.get(place)?.formula).toBe(found?.formula?.text);
      }
      const edited = new Set(list.map(([place]) => place));
      for (const [place, cell] of before) if (!edited.has(place)) expect(now.get(place)).toEqual(cell);
      for (const place of now.keys()) expect(before.has(place) || edited.has(place)).toBe(true);

      const { differences, cells } = compareWorkbooks(bytes, after);
      expect([...(cells.Sheet ?? [])].sort()).toEqual([...changed].sort());
      const formulasChanged = changed.some(
        (place) => before.get(place)?.formula?.text !== now.get(place)?.formula?.text,
      );
      const withoutChain = [
        'xl/calcChain.xml: lost',
        '[Content_Types].xml: changed',
        'xl/_rels/workbook.xml.rels: changed',
      ];
      expect(differences).toEqual(formulasChanged ? withoutChain : []);

      expect(Workbook.read(after).patch('Sheet', new Map(list))).toEqual([]);
    }),
    { seed: 20261125, numRuns: 400 },
  );
});
