/** From a formula in a sheet to the cautions about its numbers. */
import { describe, expect, it } from 'vitest';
import { isRows, type Rows } from '../../src/functions/calling/cell.ts';
import { accountOf } from '../../src/taskpane/account.ts';
import { readFormula } from '../../src/taskpane/formula.ts';
import { liveCautionsOf } from '../../src/taskpane/live-cautions.ts';
import type { ActiveCell, SheetHost } from '../../src/taskpane/sheet-host.ts';

const host = { read: () => Promise.resolve([[100]]) } as unknown as SheetHost;

const look = async (formula: string, spillRow = 0, value: ActiveCell['value'] = 0, spilled?: Rows) => {
  const cell: ActiveCell = { sheet: 'Rows', address: 'F9', formula, value, spillRow, spillColumn: 0 };
  const { calls, whole } = readFormula(formula);
  return liveCautionsOf(await accountOf(calls[0]!, host, cell, whole), cell, spilled);
};

const about = async (formula: string, spillRow = 0): Promise<string[]> =>
  (await look(formula, spillRow)).flatMap(({ cautions }) => cautions.map((one) => one.about));

const FEET = '{-25,-12;25,-12;0,18}';

describe('single calls', () => {
  it.each([
    ['=JACKET.WEIGHT(1,8,20)', ['dry weight']],
    ['=JACKET.WEIGHT(1,8)', []],
    ['=JACKET.WET_WEIGHT(1,8)', ['wet weight']],
    ['=JACKET.SPECIMEN_WEIGHT(38,"sandstone")', ['weight of the specimen']],
    ['=JACKET.CREW(20)', []],
    ['=JACKET.CREW(20,60)', ['load']],
    ['=JACKET.CREW(35)', ['load']],
    ['=JACKET.TURN_WEIGHT(50,40)', ['weight felt at the lifting edge']],
    [`=JACKET.MARGIN(${FEET},{0,-15})`, ['margin']],
    [`=JACKET.MARGIN(${FEET},{0,0})`, []],
    [`=JACKET.TIP_ANGLE(${FEET},{2,1},60)`, ['tip angle']],
    [`=JACKET.TIP_ANGLE(${FEET},{2,1},25)`, []],
    [`=JACKET.STABLE(${FEET},{2,1},60)`, ['tip angle']],
    ['=JACKET.SAFETY_FACTOR(120,40,30,50,8)', []],
    ['=JACKET.SAFETY_FACTOR(120,80,60,400,4)', ['safety factor']],
    ['=JACKET.STRENGTH(120,80,60,400,4)', ['safety factor']],
    ['=JACKET.MIX_TEMPERATURE(20)', ['mix temperature']],
    ['=JACKET.FOOT_PRESSURE(15,10,10)', ['foot pressure']],
    ['=JACKET.PADDING_PRESSURE(60,40,30)', []],
    ['=JACKET.PADDING_PRESSURE(20,20,40)', ['pressure on the padding']],
    ['=JACKET.LIFT_INDEX(20,40,70,50,30,1,1,"fair")', ['lifting index']],
    ['=JACKET.LIFT_INDEX(20,64,70,50,30,1,1,"fair")', ['lift']],
    ['=JACKET.LIFT_LIMIT(64,70,50,30,1,1,"fair")', ['lift']],
    ['=JACKET.EXPOSURE({10;2},{2;3})', ['exposure to dust']],
    ['=JACKET.SHELF_LOAD(60,40,50)', []],
    ['=JACKET.SHELF_LOAD(60,40,200)', ['shelf load']],
    ['=JACKET.AREA(60,40,30)', []],
    // A wrong input has no number to be careful with.
    ['=JACKET.WEIGHT("wide",8)', []],
  ])('%s', async (formula, expected) => {
    expect(await about(formula)).toEqual(expected);
  });

  it('speak the units of the sheet', async () => {
    const [one] = await look('=JACKET.WEIGHT(10,8,45,"us")');
    const { cautions } = one!;
    expect(cautions[0]!.figure).toBe('Dry weight about 90.7 lb: a hoist.');
    expect(cautions[0]!.limit).toContain('50.7 lb for one person');
  });

  it('hold what the sheet shows against the limits where the call cannot be followed', async () => {
    const [one] = await look('=JACKET.WEIGHT(B2*2,8)', 0, 60);
    expect(one!.cautions[0]!.figure).toBe('Dry weight about 60 kg: a hoist.');
  });

  it('keep the number of a call that knows no units as it stands in the cell', async () => {
    const [one] = await look(`=JACKET.MARGIN(${FEET},{0,-15})`);
    expect(one!.cautions[0]!.figure).toContain('Margin -3 (in the unit of the feet)');
  });

  it('say why no rib is enough', async () => {
    const [one] = await look('=JACKET.RIB_HEIGHT(400,30,15,900,4)');
    expect(one!.cautions.map((caution) => caution.about)).toEqual(['safety factor', 'strength']);
  });
});

const TABLE = '{"no","length","width","height","weight";"a",30,20,15,3;"b",150,100,80,600;"c",60,40,30,20}';

describe('plans', () => {
  it('look at every row of a plan wherever the cell lies in it', async () => {
    const expected = ['tip angle', 'wet weight', 'foot pressure', 'mix temperature'];
    const all = await about('=JACKET.PLAN(60,40,200,60)');
    for (const one of expected) expect(all).toContain(one);
    expect(await about('=JACKET.PLAN(60,40,200,60)', 7)).toEqual(all);
  });

  it('say the advice of the plan, and look at the specimen itself', async () => {
    const [one] = await look('=JACKET.PLAN(150,100,80,600)');
    expect(one!.advice).toContain('lift it with a hoist');
    expect(one!.cautions.map((caution) => caution.about)).toContain('weight of the specimen');
  });

  it('look at both paddings of a comparison', async () => {
    expect((await look('=JACKET.COMPARE(60,40,30,20)')).map(({ of }) => of)).toEqual(['felt', 'foam']);
  });

  it('look at the row of a collection in which the cell lies', async () => {
    expect(await about(`=JACKET.COLLECTION(${TABLE})`, 1)).toEqual([]);
    expect(await about(`=JACKET.COLLECTION(${TABLE})`, 2)).toContain('wet weight');
  });

  it('tell the worst of the whole collection at its header', async () => {
    const [one] = await look(`=JACKET.COLLECTION(${TABLE})`);
    const heavy = one!.cautions.find((caution) => caution.about === 'wet weight')!;
    const [two] = await look(`=JACKET.COLLECTION(${TABLE})`, 2);
    expect(heavy.figure).toContain(two!.cautions.find((caution) => caution.about === 'wet weight')!.figure);
    expect(heavy.figure).toContain('That is the worst of 2 rows: 2, 3.');
  });

  it('read the table of the sheet where the call cannot be followed', async () => {
    const cell = await accountOf(
      readFormula('=JACKET.PLAN(60,40,200,60)').calls[0]!,
      host,
      { sheet: 'Rows', address: 'F9', formula: '', value: 0, spillRow: 0, spillColumn: 0 },
      true,
    );
    const rows = cell.answered!.answer;
    if (!isRows(rows)) throw new Error('a plan is a table');
    const [one] = await look('=JACKET.PLAN(60*B1,40,200,60)', 0, 'item', rows);
    expect(one!.cautions.map((caution) => caution.about)).toEqual(await about('=JACKET.PLAN(60,40,200,60)'));
  });
});
