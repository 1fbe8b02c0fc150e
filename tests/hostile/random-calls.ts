/** Random calls of one function: its examples bent a little, plausible values by kind, and anything that a cell can hold. */
import fc from 'fast-check';
import { SETTINGS, type SettingDefinition } from '../../src/calculation/settings.ts';
import { type Argument, type Cell, CellError, isCellError, isRows } from '../../src/functions/calling/cell.ts';
import { settingNames } from '../../src/functions/calling/read-settings.ts';
import { fromSi, type UnitSystem, unitName } from '../../src/functions/calling/units.ts';
import type { NamedArgument, WorksheetFunction } from '../../src/functions/define.ts';
import { functions } from '../../src/functions/index.ts';
import { CODE_WORDS } from './judge.ts';

const definitions: readonly SettingDefinition[] = Object.values(SETTINGS);

/** Texts that a careless look-up, formatter or parser trips over. None of them may come back outside of quotation marks. */
const TEXTS = [
  'us',
  'metric',
  ' US ',
  'felt',
  'foam',
  'high',
  'low',
  'good',
  'total',
  'osha',
  'plaster',
  'gypsum cement',
  'sandstone',
  'Mudstone',
  'bolt spacing',
  'length',
  'weight',
  'ellipsoid',
  'box',
  'TRUE',
  '12',
  '12 in',
  '2 ft 3 1/2 in',
  '3/0 in',
  '1e999 cm',
  '-5 mm',
  '١٢ cm',
  '１２',
  '½ in',
  '=1+1',
  '{x}',
  '$&',
  '%s',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'null',
  'undefined',
  'NaN',
  'Infinity',
  '[object Object]',
  '\u0000',
  '\u202Eabc',
  '\uD800',
  '👩‍🔬'.repeat(30),
  'ß',
  'İ',
  'e\u0301'.repeat(60),
  ' \t\n\u00A0',
  '"a" and "b"',
  'long '.repeat(2000),
  'x'.repeat(32_767),
];

const NUMBERS = [
  0,
  -0,
  1,
  -1,
  0.5,
  3,
  1e-9,
  1e9,
  1e15,
  1e16,
  1e21,
  1e100,
  1e154,
  1e155,
  1e300,
  -1e300,
  5e-324,
  2.2250738585072014e-308,
  1e-200,
  1.7976931348623157e308,
  2 ** 53,
  0.1 + 0.2,
];

const ERRORS = ['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#REF!', '#NAME?', '#NULL!', '#SPILL!', '#CALC!'] as const;

const anyError: fc.Arbitrary<Cell> = fc
  .tuple(fc.constantFrom(...ERRORS), fc.constantFrom('', 'mended by hand'))
  .map(([code, reason]) => new CellError(code, reason));

const anyText: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...TEXTS) },
  {
    weight: 1,
    arbitrary: fc
      .string({ unit: 'binary', maxLength: 12 })
      .filter((text) => !CODE_WORDS.test(text) && text.split('"').length % 2 === 1),
  },
);

/** Some hosts hand over what our types rule out: numbers that are none, and nothing at all. */
const OUTLANDISH = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, undefined] as unknown as Cell[];

const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 5, arbitrary: fc.double({ min: 0.01, max: 500, noNaN: true }) },
  { weight: 3, arbitrary: fc.constantFrom(...NUMBERS) },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  { weight: 2, arbitrary: fc.constantFrom<Cell>(null, '', true, false) },
  { weight: 3, arbitrary: anyText },
  { weight: 1, arbitrary: anyError },
  { weight: 1, arbitrary: fc.constantFrom(...OUTLANDISH) },
);

const rowsOf = (cell: fc.Arbitrary<Cell>, mostRows = 5, mostColumns = 4): fc.Arbitrary<Cell[][]> =>
  fc
    .tuple(fc.integer({ min: 1, max: mostRows }), fc.integer({ min: 1, max: mostColumns }))
    .chain(([r, c]) => fc.array(fc.array(cell, { minLength: c, maxLength: c }), { minLength: r, maxLength: r }));

const ragged: fc.Arbitrary<Cell[][]> = fc.array(fc.array(anyCell, { maxLength: 3 }), { maxLength: 4 });

/** A number inside the range of a setting, in the units of a system. */
const settingValue = (d: SettingDefinition, system: UnitSystem): fc.Arbitrary<Cell> => {
  if (d.kind === 'choice') return fc.constantFrom<Cell>(...d.words, ...d.words.map((word) => ` ${word.toUpperCase()}`));
  const low = d.range.from ?? d.range.above ?? 0;
  const around = d.value || 1;
  const high = Math.min(d.range.to ?? d.range.below ?? Number.POSITIVE_INFINITY, Math.max(around * 3, low + around));
  return fc
    .double({ min: 0.001, max: 0.999, noNaN: true })
    .map((share) => fromSi(low + share * (high - low), d.quantity, system));
};

const goodRow = (system: UnitSystem): fc.Arbitrary<Cell[]> =>
  fc
    .constantFrom(...definitions)
    .chain((d) =>
      fc
        .tuple(settingValue(d, system), fc.constantFrom('name', 'capitals'), fc.boolean())
        .map(([value, spelling, withUnit]) => [
          spelling === 'name' ? d.name : ` ${d.name.toUpperCase()} `,
          value,
          withUnit && d.kind === 'number' ? unitName(d.quantity, system) : null,
        ]),
    );

/** Rows of settings that are all right. */
export const goodSettings = (system: UnitSystem): fc.Arbitrary<Cell[][]> =>
  fc
    .uniqueArray(goodRow(system), {
      minLength: 1,
      maxLength: 4,
      selector: (row) => String(row[0]).trim().toLowerCase(),
    })
    .map((rows) => [...rows, ['units', system, null]]);

const anyRow: fc.Arbitrary<Cell[]> = fc.oneof(
  fc.tuple(fc.constantFrom<Cell>(...settingNames, 'setting', 'wast', 'units '), anyCell, anyCell),
  fc.tuple(anyCell, anyCell, anyCell),
);

const anySettings: fc.Arbitrary<Argument> = fc.oneof(
  fc.constantFrom<Argument>('us', 'metric', ' Metric', 'US', null, '', 'imperial', 0, true),
  fc.constantFrom<UnitSystem>('us', 'metric').chain(goodSettings),
  fc
    .tuple(goodSettings('metric'), fc.array(anyRow, { minLength: 1, maxLength: 3 }), fc.boolean())
    .map(([good, bad, first]) => (first ? [...bad, ...good] : [...good, ...bad])),
  anyCell,
);

const anyArgument: fc.Arbitrary<Argument> = fc.oneof(
  { weight: 6, arbitrary: anyCell },
  { weight: 3, arbitrary: rowsOf(anyCell) },
  { weight: 1, arbitrary: ragged },
  { weight: 1, arbitrary: fc.constantFrom<Argument>([], [[]], [[null]], [[''], ['']]) },
  { weight: 1, arbitrary: anySettings },
);

/** The arguments of an example without its settings; numbers near those of the example, in proportion. */
const bentExample = (f: WorksheetFunction): fc.Arbitrary<Argument[]> => {
  const count = f.arguments.length - (f.takesSettings ? 1 : 0);
  return fc
    .constantFrom(...f.examples)
    .chain(({ args }) =>
      fc.tuple(
        ...args
          .slice(0, f.arguments.at(-1)?.repeating ? args.length : count)
          .map((one) =>
            fc.oneof(
              { weight: 1, arbitrary: fc.constant(one) },
              { weight: 4, arbitrary: fc.double({ min: 0.2, max: 5, noNaN: true }).map((by) => scaled(one, by)) },
              { weight: 1, arbitrary: fc.double({ min: 0.001, max: 1000, noNaN: true }).map((by) => scaled(one, by)) },
            ),
          ),
      ),
    );
};

export const scaled = (one: Argument, by: number): Argument => {
  if (isRows(one)) return one.map((row) => row.map((cell) => scaled(cell, by) as Cell));
  return typeof one === 'number' ? one * by : one;
};

/** What fits the kind of an argument. */
const fitting = (argument: NamedArgument): fc.Arbitrary<Cell> => {
  const words = argument.words?.length ? [fc.constantFrom<Cell>(...argument.words, true, false)] : [];
  const size = fc.double({ min: 0.05, max: 300, noNaN: true });
  return fc.oneof(size, ...words);
};

/** Columns of one length where an argument takes cells. */
const columns = (f: WorksheetFunction): fc.Arbitrary<Argument[]> =>
  fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 2 })).chain(([r, c]) =>
    fc.tuple(
      ...f.arguments.map((argument): fc.Arbitrary<Argument> => {
        if (argument.name === 'settings') return anySettings;
        const cell = fc.oneof({ weight: 5, arbitrary: fitting(argument) }, { weight: 1, arbitrary: anyCell });
        const block = fc.array(fc.array(cell, { minLength: c, maxLength: c }), { minLength: r, maxLength: r });
        return argument.takes === 'cells' ? fc.oneof({ weight: 3, arbitrary: block }, cell) : cell;
      }),
    ),
  );

/** One argument of a good call put out of joint. */
const broken = (f: WorksheetFunction): fc.Arbitrary<Argument[]> =>
  fc
    .tuple(bentExample(f), fc.nat(), anyArgument, anySettings)
    .map(([args, at, bad, settings]) => withSettings(f, args.with(at % args.length || 0, bad), settings));

/** Arguments with the settings in their place, blanks between. */
export const withSettings = (f: WorksheetFunction, args: readonly Argument[], settings: Argument): Argument[] => {
  if (!f.takesSettings) return [...args];
  const blanks = Array.from({ length: Math.max(0, f.arguments.length - 1 - args.length) }, () => null);
  return [...args, ...blanks, settings];
};

const ids = functions.map(({ id }) => id);

/** CHECK takes the name and the arguments of another function. */
const checkCall: fc.Arbitrary<Argument[]> = fc
  .constantFrom(...functions.filter(({ id }) => id !== 'CHECK'))
  .chain((f) => fc.oneof(goodCall(f), columns(f)).map((args) => [`JACKET.${f.id}`, ...args]));

/** A call that should come to something. */
export function goodCall(f: WorksheetFunction): fc.Arbitrary<Argument[]> {
  if (f.examples.every(({ args }) => args.length === 0)) return fc.constant(withSettings(f, [], 'metric'));
  const settings = fc.oneof(fc.constantFrom<Argument>('metric', null), goodSettings('metric'));
  return fc.tuple(bentExample(f), settings).map(([args, given]) => withSettings(f, args, given));
}

/** Any call at all. */
export const anyCall = (f: WorksheetFunction): fc.Arbitrary<Argument[]> => {
  const anything = fc.array(anyArgument, { maxLength: f.arguments.length + 2 });
  const named = fc.tuple(fc.constantFrom<Cell>(...ids, ...ids.map((id) => ` jacket.${id.toLowerCase()}`)), anyArgument);
  const more: fc.Arbitrary<Argument[]>[] = f.examples.some(({ args }) => args.length > 0)
    ? [broken(f), columns(f)]
    : [];
  if (f.id === 'CHECK') more.push(checkCall, named);
  return fc.oneof(anything, ...more);
};

/** A value as it stands in a report of a failure. */
export const shown = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(shown);
  if (isCellError(value)) return `${value.code} «${value.reason}»`;
  return value;
};
