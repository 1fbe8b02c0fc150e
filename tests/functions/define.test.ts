import { describe, expect, test } from 'vitest';
import { type Answer, type Argument, CellError, isCellError } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from './compare.ts';

const named = (id: string) => functions.find((f) => f.id === id)!;
const call = (id: string, args: readonly Argument[], fromCells?: readonly boolean[]): Answer =>
  named(id).call(args, fromCells && { fromCells });
const reason = (answer: Answer): string =>
  isCellError(answer) ? `${answer.code} ${answer.reason}` : `no error: ${answer}`;

describe('one value or a column', () => {
  test('a column gives one result a cell, in the same shape', () => {
    const answer = call('THICKNESS', [
      [
        [4, 6],
        [8, 10],
      ],
    ]);
    expect(
      difference(answer, [
        [7, 10],
        [13, 16],
      ]),
    ).toBeUndefined();
  });

  test('a single value is repeated along a column', () => {
    const column = call('PLASTER', [[[1], [2]], 8]) as number[][];
    expect(column).toEqual([[call('PLASTER', [1, 8])], [call('PLASTER', [2, 8])]]);
  });

  test('a range of one cell is a single value', () => {
    expect(call('THICKNESS', [[[8]]])).toBe(call('THICKNESS', [8]));
  });

  test('ranges of unlike shape are refused with both sizes', () => {
    expect(
      reason(
        call('SEAM', [
          [[1], [2], [3]],
          [[1], [2]],
        ]),
      ),
    ).toBe('#VALUE! length has 3 rows, width has 2 rows; give ranges of one size');
    expect(reason(call('SEAM', [[[1, 2, 3]], [[1], [2], [3]]]))).toContain('length has 1 row and 3 columns');
  });

  test('a bad cell spoils its own result only', () => {
    const answer = call('THICKNESS', [[[8], ['x'], [-1], [6]]]) as Answer[][];
    expect([answer[0]![0], answer[3]![0]]).toEqual([call('THICKNESS', [8]), call('THICKNESS', [6])]);
    expect(reason(answer[1]![0]!)).toBe('#VALUE! layers is text; type a number');
    expect(reason(answer[2]![0]!)).toBe('#VALUE! layers is -1; type a number above 0');
  });

  test('where one value is wanted, a range is refused', () => {
    expect(reason(call('DENSITY', [[['sand'], ['clay']]]))).toBe(
      '#VALUE! material takes one value, not 2 rows of 1 cell; point at one cell',
    );
  });
});

describe('blank rows stay blank', () => {
  test.each([null, '', 0])('in a single call with %j in every cell', (blank) => {
    expect(call('PLASTER', [blank, blank])).toBe('');
  });

  test('in a column, whatever is repeated along it', () => {
    expect(call('PLASTER', [[[1], [null], [''], [0]], 8])).toEqual([[call('PLASTER', [1, 8])], [''], [''], ['']]);
  });

  test('in a single call a number typed into the formula does not count, a cell does', () => {
    expect(call('PLASTER', [null, 8], [true, false])).toBe('');
    expect(reason(call('PLASTER', [null, 8], [true, true]))).toBe(
      '#VALUE! shell_area is blank; type the area of both halves in m²',
    );
    expect(reason(call('PLASTER', [null, 8], [false, false]))).toContain('shell_area is blank');
  });

  test('a partly blank row names the argument that is missing, in the unit in force', () => {
    expect(reason(call('SHELL_AREA', [60, null, 30]))).toBe('#VALUE! width is blank; type the size across in cm');
    expect(reason(call('SHELL_AREA', [24, null, 12, 'us']))).toBe('#VALUE! width is blank; type the size across in in');
  });

  test('a 0 where 0 is not allowed is no blank beside a number', () => {
    expect(reason(call('PLASTER', [1, 0]))).toBe('#VALUE! layers is 0; type a number above 0');
  });

  test('a temperature of 0 is a value, and without one the mix starts at room temperature', () => {
    expect(call('MIX_TEMPERATURE', [0], [true])).toBeCloseTo(56.357, 3);
    expect(call('MIX_TEMPERATURE', [])).toBe(call('MIX_TEMPERATURE', [20]));
    expect(call('MIX_TEMPERATURE', [null], [true])).toBe(call('MIX_TEMPERATURE', [20]));
  });

  test('a blank cell of an optional argument counts as left out, and its 0 is a weight of 0', () => {
    expect(call('WEIGHT', [1, 8, null])).toBe(call('WEIGHT', [1, 8]));
    expect(call('WEIGHT', [1, 8, 0])).toBe(call('WEIGHT', [1, 8]));
    expect(
      call('WEIGHT', [
        [[1], [null]],
        [[8], [null]],
        [[20], [0]],
      ]),
    ).toEqual([[call('WEIGHT', [1, 8, 20])], ['']]);
  });
});

describe('strict input', () => {
  test('text in the place of a size points at MEASURE', () => {
    expect(reason(call('AREA', ['60 cm', 40, 30]))).toBe(
      '#VALUE! length is text; type a number, or use JACKET.MEASURE',
    );
  });

  test('TRUE is no number', () => {
    expect(reason(call('THICKNESS', [true]))).toBe('#VALUE! layers is TRUE; type a number');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is no number', (x) => {
    expect(reason(call('THICKNESS', [x]))).toContain('type a finite number');
  });

  test('an error in a cell comes back as the same error, with its reason', () => {
    const known = new CellError('#N/A', 'no such specimen');
    expect(call('PLASTER', [known, 8])).toEqual(known);
    expect(call('PLASTER', [new CellError('#REF!', ''), 8])).toEqual(
      new CellError('#REF!', 'shell_area is the error #REF!; mend that cell first'),
    );
    expect(call('PLASTER', [[[1], [known]], 8])).toEqual([[call('PLASTER', [1, 8])], [known]]);
  });

  test('"us" in the place of another optional argument asks for one more comma', () => {
    expect(reason(call('WEIGHT', [10, 8, 'us']))).toBe(
      '#VALUE! specimen is "us"; put one more comma before it, so that it stands in the place of settings',
    );
  });

  test('an unknown word is answered with the nearest known one', () => {
    expect(reason(call('WATER_RATIO', ['gypsum cemnt']))).toBe(
      '#VALUE! plaster_kind is "gypsum cemnt"; type casting plaster, gypsum cement or dental stone; did you mean gypsum cement?',
    );
    expect(reason(call('DENSITY', ['limstone']))).toContain('did you mean limestone?');
    expect(call('DENSITY', ['  Limestone '])).toBe(2.55);
    expect(reason(call('DENSITY', ['bone']))).toMatch(/fossil bone.*fresh bone/);
  });

  test('a result that is no number is #NUM!', () => {
    expect(reason(call('SHELL_AREA', [1e200, 1e200, 1e200]))).toContain('#NUM!');
  });
});

describe('CHECK', () => {
  test('says ok, the reason, or what is doubtful', () => {
    expect(call('CHECK', ['plaster', 1, 8])).toBe('ok');
    expect(call('CHECK', ['JACKET.PLASTER', 'x', 8])).toBe('shell_area is text; type a number');
    expect(call('CHECK', ['LAYERS', 800])).toMatch(/^doubtful: this holds for a specimen up to the most layers weight/);
    expect(reason(call('CHECK', ['PLASTR', 1]))).toContain('did you mean PLASTER?');
  });

  test('gives one text a cell on ranges, blank for blank rows', () => {
    expect(call('CHECK', ['THICKNESS', [[8], ['x'], [null]]])).toEqual([
      ['ok'],
      ['layers is text; type a number'],
      [''],
    ]);
  });

  test('passes on what the host tells of cells', () => {
    expect(call('CHECK', ['PLASTER', null, 8], [false, true, false])).toBe('');
    expect(call('CHECK', ['PLASTER', null, 8], [false, false, false])).toContain('shell_area is blank');
  });
});

describe('explain', () => {
  test('tells the settings that a calculation read', () => {
    const told = named('PLASTER').explain([1, 8, [['waste', 0.2]]])!;
    expect(told.used).toEqual(expect.arrayContaining(['layerThickness', 'waste', 'calibration', 'waterRatio']));
    expect(told.used).not.toContain('flange');
    expect(told.values).toEqual({ shell_area: 1, layers: 8 });
    expect(told.settings.waste).toBe(0.2);
  });

  test('has nothing to tell of columns and of calls that fail', () => {
    expect(named('PLASTER').explain([[[1], [2]], 8])).toBeUndefined();
    expect(named('PLASTER').explain(['x', 8])).toBeUndefined();
  });
});

describe('tables', () => {
  test('SETTINGS leaves a value blank where a default follows, so that a copy keeps following', () => {
    const rows = call('SETTINGS', []) as Answer[][];
    const row = (name: string, of = rows) => of.find(([first]) => first === name)!;
    expect(rows[0]).toEqual(['setting', 'value', 'unit', 'in force', 'low', 'high', 'basis', 'source']);
    expect(row('water ratio').slice(0, 4)).toEqual(['water ratio', '', 'ratio', 0.38]);
    expect(row('foot size').slice(0, 4)).toEqual(['foot size', '', 'cm', '']);
    expect(row('layer thickness').slice(0, 6)).toEqual(['layer thickness', 1.5, 'mm', 1.5, 1.2, 2]);
    const copy = rows.map((r) => r.map((cell) => (cell === 'gypsum cement' ? 'casting plaster' : cell))) as Argument;
    expect(row('water ratio', call('SETTINGS', [copy]) as Answer[][])[3]).toBe(0.7);
  });

  test('SETTINGS reads its own output in both systems', () => {
    for (const system of ['metric', 'us']) {
      const rows = call('SETTINGS', [system]) as Answer[][];
      const again = call('SETTINGS', [rows as Argument]) as Answer[][];
      for (const [i, row] of rows.entries())
        for (const [j, cell] of row.entries())
          if (typeof cell === 'number') expect(again[i]![j], `${row[0]}`).toBeCloseTo(cell, 9);
          else expect(again[i]![j]).toBe(cell);
    }
  });

  test('a value set by hand narrows its range to five percent', () => {
    const rows = call('SETTINGS', [[['waste', 0.15]]]) as number[][];
    const waste = rows.find(([name]) => (name as unknown) === 'waste')!;
    expect(waste[4]).toBeCloseTo(0.1425, 12);
    expect(waste[5]).toBeCloseTo(0.1575, 12);
  });

  test('SOURCE answers for every kind of name, one a line', () => {
    expect(call('SOURCE', ['padding'])).toMatch(/^setting padding: felt;.*\nfunction PADDING: /);
    expect(call('SOURCE', ['sandstone'])).toMatch(
      /^material sandstone: 2.35 kg\/L, 1.61 kg\/L to 2.76 kg\/L; published;/,
    );
    expect(reason(call('SOURCE', ['flnge']))).toContain('did you mean flange?');
  });
});
