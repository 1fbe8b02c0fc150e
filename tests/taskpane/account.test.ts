import { describe, expect, it } from 'vitest';
import { type Cell, CellError, type Rows } from '../../src/functions/calling/cell.ts';
import { accountOf } from '../../src/taskpane/account.ts';
import { readFormula } from '../../src/taskpane/formula.ts';
import { type ActiveCell, type SheetHost, SheetProblem } from '../../src/taskpane/sheet-host.ts';

const hostWith = (cells: Readonly<Record<string, Rows>>): SheetHost => ({
  can: () => true,
  selection: async () => undefined,
  onChange: async () => () => undefined,
  read: async (reference) => {
    const rows = cells[reference];
    if (!rows) throw new SheetProblem(`${reference} is not a range of this workbook.`);
    return rows;
  },
  insertFormula: async () => undefined,
  putPicture: async () => undefined,
  recalculate: async () => undefined,
});

const account = (
  formula: string,
  cells: Readonly<Record<string, Rows>> = {},
  value: Cell = 1,
  at: Partial<ActiveCell> = {},
) => {
  const { calls, whole } = readFormula(formula);
  const cell: ActiveCell = { sheet: 'Rows', address: 'D2', formula, value, spillRow: 0, spillColumn: 0, ...at };
  return accountOf(calls[0]!, hostWith(cells), cell, whole);
};

describe('a call that goes well', () => {
  it('tells result, inputs, settings and how defaults are known', async () => {
    const told = await account('=JACKET.PLASTER(B2,8,Shop)', { B2: [[1]], Shop: [['waste', 0.2]] });
    expect(told.result).toBe('about 20 kg');
    expect(told.reason).toBeUndefined();
    expect(told.inputs).toEqual([
      { name: 'shell_area', value: '1 m²', known: true, from: 'B2' },
      { name: 'layers', value: '8', known: true, from: '' },
      { name: 'settings', value: '1 row of 2 cells', known: true, from: 'Shop' },
    ]);
    expect(told.settings.find(({ name }) => name === 'waste')).toEqual({
      name: 'waste',
      value: '20 %',
      own: true,
      basis: '',
    });
    expect(told.settings.find(({ name }) => name === 'finish coat')).toEqual({
      name: 'finish coat',
      value: '1 mm',
      own: false,
      basis: 'assumption: smooth coat of plaster outside',
    });
  });

  it('speaks the units of its settings', async () => {
    expect((await account('=JACKET.PLASTER(10,8,"us")')).result).toMatch(/^about \S+ lb$/);
  });

  it('tells of a table, of text and of a blank row', async () => {
    expect((await account('=JACKET.SETTINGS()')).result).toMatch(/^a table, \d+ rows of 8 cells$/);
    expect((await account('=JACKET.CHECK("PLASTER",1,8)')).result).toBe('ok');
    expect((await account('=JACKET.PLASTER(B2,8)', { B2: [[null]] })).result).toBe('blank, since its row is blank');
  });

  it('tells what is doubtful', async () => {
    expect((await account('=JACKET.LAYERS(600)')).doubts.join()).toContain(
      'above it a jacket wants a pallet or a frame',
    );
    expect((await account('=JACKET.LAYERS(60)')).doubts).toEqual([]);
  });
});

describe('a call that fails', () => {
  it('tells why', async () => {
    const told = await account('=JACKET.PLASTER("wide",8)', {}, new CellError('#VALUE!', ''));
    expect(told.reason).toBe('shell_area is text; type a number');
    expect(told.result).toBeUndefined();
    expect(told.checkFormula).toBe('=JACKET.CHECK("PLASTER","wide",8)');
  });

  it('names a function that is not there', async () => {
    expect((await account('=JACKET.PLASTR(1,8)')).reason).toContain('there is no function PLASTR');
  });
});

describe('a column', () => {
  const cells = { 'B2:B3': [[1], ['wide']] };
  it('is told of row by row', async () => {
    expect((await account('=JACKET.PLASTER(B2:B3,8)', cells)).inputs[0]!.value).toBe('1 m²');
    const second = await account('=JACKET.PLASTER(B2:B3,8)', cells, 1, { spillRow: 1 });
    expect(second.reason).toContain('shell_area is text');
  });
});

describe('a call that cannot be followed', () => {
  it('says what is not known, and shows what the sheet shows', async () => {
    const told = await account('=JACKET.PLASTER(B2*1.1,C2)', { C2: [[8]] }, 20.125);
    expect(told.result).toBe('about 20.1 kg');
    expect(told.notFollowed).toContain('worked out by the sheet');
    expect(told.inputs[0]).toEqual({
      name: 'shell_area',
      value: 'worked out by the sheet, not shown here',
      known: false,
      from: 'B2*1.1',
    });
    expect(told.inputs[1]!.value).toBe('8');
    expect(told.settings).toEqual([]);
  });

  it('shows no number whose unit is not known, and none that is only part of the formula', async () => {
    expect((await account('=JACKET.PLASTER(1,8,IF(A1,"us"))', {}, 40)).result).toBeUndefined();
    expect((await account('=2*JACKET.PLASTER(B2*1.1,8)', {}, 40)).result).toBeUndefined();
  });

  it('says what the sheet says of a reference that leads nowhere', async () => {
    expect((await account('=JACKET.PLASTER(Nobody,8)')).inputs[0]).toMatchObject({
      value: 'Nobody is not a range of this workbook.',
      known: false,
    });
  });

  it('lets a bug of the sheet through', async () => {
    const host = { ...hostWith({}), read: () => Promise.reject(new TypeError('bug')) };
    const [call] = readFormula('=JACKET.PLASTER(A1,8)').calls;
    const cell = { sheet: 'Rows', address: 'D2', formula: '', value: 1, spillRow: 0, spillColumn: 0 };
    await expect(accountOf(call!, host, cell, true)).rejects.toThrow(TypeError);
  });
});

it('a call inside of a call is followed', async () => {
  const told = await account('=JACKET.PLASTER(JACKET.SHELL_AREA(60,40,30),8)');
  expect(told.result).toMatch(/^about \S+ kg$/);
  expect(told.inputs[0]!.from).toBe('JACKET.SHELL_AREA(60,40,30)');
});
