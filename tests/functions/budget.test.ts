import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Argument, CellError, type OutCell, type Rows } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from './compare.ts';

const call = (id: string, ...args: Argument[]) => functions.find((f) => f.id === id)!.call(args);
const table = (rows: Rows, settings: Argument = null) => call('BUDGET', rows, settings) as OutCell[][];
const named = (rows: Rows, settings: Argument = null) =>
  new Map(table(rows, settings).map((row) => [row[0] as string, row]));
const ITEMS = ['plaster', 'cloth', 'felt sheets', 'foam sheets', 'sealer', 'bolts'];
const PRICES: [string, number][] = [
  ['plaster price', 40],
  ['cloth price', 120],
  ['felt price', 30],
  ['foam price', 25],
  ['sealer price', 18],
  ['bolt price', 9],
];
const SPECIMENS: Rows = [
  ['no', 'length', 'width', 'height', 'weight'],
  [1, 60, 40, 30, 20],
  [2, 120, 40, 30, 50],
];
const collection = (rows: Rows = SPECIMENS, settings: Argument = null) =>
  call('COLLECTION', rows, settings) as OutCell[][];

test('example: two jackets of a collection', () => {
  const plaster = named(collection()).get('plaster')!;
  expect(difference([plaster], [['plaster', 50.15661122, 'kg', 3, 17.88224428, '']])).toBeUndefined();
});

test('rows in the order of the contract, six cells each', () => {
  const rows = table(collection());
  expect(rows.map(([item]) => item)).toEqual(['item', ...ITEMS, 'total', 'rows counted', 'rows blank']);
  expect(rows[0]).toEqual(['item', 'needed', 'unit', 'packs', 'left over', 'cost']);
  for (const row of rows) expect(row).toHaveLength(6);
});

describe('identities', () => {
  const cell = fc.oneof(fc.double({ min: 1e-6, max: 1e4, noNaN: true }), fc.constantFrom<OutCell>('', 0));
  const rows = fc.array(fc.tuple(cell, cell, cell, cell, cell, cell), { minLength: 1, maxLength: 12 });
  test.each(['metric', 'us'])('in %s units: sums, whole packs, costs and counts', (system) => {
    const packs = new Map((call('SETTINGS', system) as OutCell[][]).map((row) => [row[0], row[3] as number]));
    const packOf = ['plaster pack', 'cloth pack', 'felt pack', 'foam pack', 'sealer pack', 'bolt pack'].map(
      (name) => packs.get(name)!,
    );
    fc.assert(
      fc.property(rows, (body) => {
        const made = named([ITEMS, ...body], [['units', system], ...PRICES]);
        let total = 0;
        for (const [i, item] of ITEMS.entries()) {
          const sum = body.reduce((all, row) => all + ((row[i] as number) || 0), 0);
          const [, needed, , count, left, cost] = made.get(item) as [string, number, string, number, number, number];
          expect(needed).toBe(sum);
          expect(cost).toBe(count * PRICES[i]![1]);
          total += cost;
          // One part in 10⁹ is taken off before packs are rounded up.
          expect(count).toBe(Math.ceil((sum / packOf[i]!) * (1 - 1e-9)));
          expect(left).toBeCloseTo(Math.max(0, count * packOf[i]! - sum), 5);
        }
        expect(made.get('total')![5]).toBe(total);
        const blank = body.filter((row) => row.every((one) => one === '' || one === 0)).length;
        expect(made.get('rows blank')![1]).toBe(blank);
        expect(made.get('rows counted')![1]).toBe(body.length - blank);
      }),
      { seed: 20060401, numRuns: 100 },
    );
  });
  test('two collections together need what each of them needs', () => {
    const [one, two] = [SPECIMENS.slice(0, 2), [SPECIMENS[0]!, SPECIMENS[2]!]].map((rows) => named(collection(rows)));
    for (const item of ITEMS)
      expect(named(collection()).get(item)![1]).toBeCloseTo(
        (one!.get(item)![1] as number) + (two!.get(item)![1] as number),
        12,
      );
  });
});

describe('costs', () => {
  test('are blank without a price, and so is the total, never 0', () => {
    const made = named(collection());
    expect([...ITEMS, 'total'].map((item) => made.get(item)![5])).toEqual(['', '', '', '', '', '', '']);
  });
  test('one price missing leaves the total unknown', () => {
    const made = named(collection(), PRICES.slice(0, 5));
    expect([made.get('plaster')![5], made.get('bolts')![5], made.get('total')![5]]).toEqual([120, '', '']);
  });
  test('what is not needed costs 0, also without a price', () => {
    const feltOnly = named(
      collection(SPECIMENS.slice(0, 2)),
      PRICES.filter(([name]) => name !== 'foam price'),
    );
    expect(feltOnly.get('foam sheets')).toEqual(['foam sheets', 0, 'count', 0, 0, 0]);
    expect(feltOnly.get('total')![5]).toBe(40 + 120 + 30 + 18 + 9);
  });
});

describe('columns', () => {
  test('a column that is not there has no row', () => {
    expect(
      table([
        ['Bolts ', 'other'],
        [5, 'x'],
      ]).map(([item]) => item),
    ).toEqual(['item', 'bolts', 'total', 'rows counted', 'rows blank']);
  });
  test.each<[string, Rows, string]>([
    [
      'none that counts',
      [
        ['a', 'b'],
        [1, 2],
      ],
      'table has no column named plaster, cloth, felt sheets, foam sheets, sealer or bolts; put names in its first row',
    ],
    [
      'one twice',
      [
        ['plaster', 'plaster'],
        [1, 2],
      ],
      'table has two columns named "plaster"; keep one',
    ],
  ])('%s', (_, rows, reason) => {
    expect(call('BUDGET', rows)).toEqual(new CellError('#VALUE!', reason));
  });
});

describe('cells that are no amount', () => {
  const plaster = (cell: OutCell) =>
    named(
      [
        ['plaster', 'bolts'],
        [1, 1],
        [cell, 2],
      ],
      PRICES,
    );
  test.each<[string, OutCell, string]>([
    [
      'an error',
      new CellError('#DIV/0!', ''),
      '#DIV/0! plaster in row 2 below the names is the error #DIV/0!; mend that row first',
    ],
    ['an error with its reason', new CellError('#N/A', 'no room'), '#N/A plaster in row 2 below the names: no room'],
    ['text', '12 kg', '#VALUE! plaster in row 2 below the names is text; type a number'],
    ['TRUE', true, '#VALUE! plaster in row 2 below the names is TRUE; type a number, 0 or more'],
    ['below 0', -3, '#VALUE! plaster in row 2 below the names is -3; type a number, 0 or more'],
  ])('%s', (_, cell, expected) => {
    const made = plaster(cell);
    const [, needed, unit, packs, left, cost] = made.get('plaster')!;
    for (const one of [needed, packs, left, cost, made.get('total')![5]]) {
      const { code, reason } = one as CellError;
      expect(`${code} ${reason}`).toBe(expected);
    }
    expect(unit).toBe('kg');
    expect(made.get('bolts')!.slice(1, 4)).toEqual([3, 'count', 1]);
  });
  test('a bad row of a collection says which and why', () => {
    const bad = collection([...SPECIMENS, [3, 'long', 40, 30, 20]]);
    const { reason } = named(bad).get('plaster')![1] as CellError;
    expect(reason).toBe('plaster in row 3 below the names: length is text; type a number, or use JACKET.MEASURE');
  });
  test('blank rows of a collection are counted as such', () => {
    const made = named(collection([...SPECIMENS, [null, null, null, null, null]]));
    expect([made.get('rows counted')![1], made.get('rows blank')![1]]).toEqual([2, 1]);
  });
});
