import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Argument, CellError } from '../../src/functions/calling/cell.ts';
import { formulaText } from '../../src/functions/calling/formula-text.ts';
import { functions } from '../../src/functions/index.ts';
import { type Part, part, readFormula } from '../../src/taskpane/formula.ts';

describe('calls in a formula', () => {
  it.each([
    ['=JACKET.PLASTER(1,8)', ['PLASTER'], true],
    ['=jacket.plaster( 1 , 8 )', ['PLASTER'], true],
    ['=_xldudf_JACKET_SHELL_AREA(A1,B1,C1)', ['SHELL_AREA'], true],
    ['=ROUND(JACKET.PLASTER(1,8),1)', ['PLASTER'], false],
    ['=JACKET.PLASTER(1,8)+JACKET.WATER(1,8)', ['PLASTER', 'WATER'], false],
    ['=JACKET.PLASTER(JACKET.SHELL_AREA(1,2,3),8)', ['PLASTER'], true],
    ['=JACKET.VERSION()', ['VERSION'], true],
    ['="JACKET.PLASTER(1,8)"', [], false],
    ["='JACKET.PLASTER(1)'!A1", [], false],
    ['=Table[JACKET.PLASTER(]', [], false],
    ['=MYJACKET.PLASTER(1,8)', [], false],
    ['=JACKET.PLASTER(1,8', [], false],
    ['', [], false],
    ['=', [], false],
  ])('%s', (formula, ids, whole) => {
    const read = readFormula(formula);
    expect(read.calls.map(({ id }) => id)).toEqual(ids);
    expect(read.whole).toBe(whole);
  });

  it('keep their arguments apart', () => {
    const [call] = readFormula('=JACKET.CHECK("a,(b",,{1,2;3,4},\'My, sheet\'!A1:B2,SUM(1,2))').calls;
    expect(call!.arguments.map(({ kind, text }) => [kind, text])).toEqual([
      ['value', '"a,(b"'],
      ['nothing', ''],
      ['rows', '{1,2;3,4}'],
      ['reference', "'My, sheet'!A1:B2"],
      ['other', 'SUM(1,2)'],
    ]);
  });
});

describe('an argument', () => {
  it.each<[string, Partial<Part>]>([
    ['1.5', { kind: 'value', value: 1.5 }],
    ['-2', { kind: 'value', value: -2 }],
    ['1E-3', { kind: 'value', value: 0.001 }],
    ['10%', { kind: 'value', value: 0.1 }],
    ['"say ""us"""', { kind: 'value', value: 'say "us"' }],
    ['TRUE', { kind: 'value', value: true }],
    ['false', { kind: 'value', value: false }],
    ['#N/A', { kind: 'value', value: new CellError('#N/A', '') }],
    [
      '{"waste",0.2;"units","us"}',
      {
        kind: 'rows',
        rows: [
          ['waste', 0.2],
          ['units', 'us'],
        ],
      },
    ],
    ['{1,SUM(2)}', { kind: 'other' }],
    ['$B$2', { kind: 'reference' }],
    ['B2:C9', { kind: 'reference' }],
    ['B:B', { kind: 'reference' }],
    ['2:3', { kind: 'reference' }],
    ['F2#', { kind: 'reference' }],
    ['Shop', { kind: 'reference' }],
    ["'Shop''s settings'!A1:B9", { kind: 'reference' }],
    ['Werkstatt!größe', { kind: 'reference' }],
    ['A1*2', { kind: 'other' }],
    ['A1 B2', { kind: 'other' }],
    ['(A1)', { kind: 'other' }],
    ['JACKET.WATER(1,8)', { kind: 'call', id: 'WATER' }],
    ['JACKET.WATER(1,8)*2', { kind: 'other' }],
  ])('%s', (text, expected) => {
    expect(part(text)).toMatchObject(expected);
  });
});

const cell = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string(),
  fc.boolean(),
  fc.constant(null),
);

it('what is written out is read back', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...functions.map(({ id }) => id)),
      fc.array(cell, { minLength: 1, maxLength: 6 }),
      (id, args: Argument[]) => {
        const { calls, whole } = readFormula(formulaText(id, args));
        const back = calls[0]!.arguments.map((one) =>
          one.kind === 'value' ? one.value : one.kind === 'nothing' ? null : one,
        );
        // A single argument left out cannot be told from none at all.
        const expected = args.length === 1 && args[0] === null ? [] : args;
        return whole && calls[0]!.id === id && JSON.stringify(back) === JSON.stringify(expected);
      },
    ),
    { seed: 41, numRuns: 300 },
  );
});

it('no text upsets it', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'=JACKET.PLASTER("\'[]{},;)!A1#$ ') }), (text) => {
      readFormula(text);
      part(text);
    }),
    { seed: 42, numRuns: 500 },
  );
});
