/** Sheets that several samples share: the first sheet in plain words, and the shop's settings. */

import { SETTINGS, type SettingDefinition, type SettingKey } from '../../calculation/settings.ts';
import { fromSi, type UnitSystem, unitName } from '../../functions/calling/units.ts';
import { CAUTIONS, FOLLOW, PLANNING } from '../../texts/cautions.ts';
import { type CellPlan, put, type SheetPlan } from './book.ts';
import { MUSEUM } from './museum.ts';

/** The first sheet: what the workbook shows, the cautions, and that everything in it is invented. */
export const readMe = (title: string, paragraphs: readonly string[]): SheetPlan => {
  const rows: (CellPlan | null)[][] = [
    [put(title, 'title')],
    [put(`${MUSEUM}: the museum and all specimens in this workbook are invented.`, 'faint')],
    [],
    ...paragraphs.map((text) => [put(text, 'text')]),
    [],
    [put('Before you begin', 'label')],
    ...CAUTIONS.map((c) => [put(`${c.title}. ${c.text}`, 'caution')]),
    [put(`${FOLLOW} ${PLANNING}`, 'caution')],
  ];
  // About 95 characters stand on a line of this width.
  const heights = new Map(
    rows.flatMap((row, i): [number, number][] => {
      const text = row[0]?.value;
      return i > 1 && typeof text === 'string' ? [[i, 14 * Math.ceil(text.length / 92) + 4]] : [];
    }),
  );
  return { name: 'Read me', widths: [96], rows, heights, printTo: `A${rows.length}` };
};

/** Settings that a shop changes first. */
const SHOP: readonly SettingKey[] = [
  'padding',
  'paddingThickness',
  'plaster',
  'layerThickness',
  'finishCoat',
  'flange',
  'waste',
  'bucket',
  'rollWidth',
  'leastLayers',
  'mostLayers',
];

const settingRow = (key: SettingKey, system: UnitSystem): CellPlan[] => {
  const d: SettingDefinition = SETTINGS[key];
  if (d.kind === 'choice')
    return [put(d.name, 'label'), put(d.value, 'input'), put('', 'faint'), put(d.source, 'faint')];
  const shown = d.value === null ? null : Number(fromSi(d.value, d.quantity, system).toPrecision(12));
  return [
    put(d.name, 'label'),
    put(shown, 'input'),
    put(unitName(d.quantity, system), 'faint'),
    put(d.source, 'faint'),
  ];
};

/** First row of names and values on the settings sheet, counted from 1. */
const FIRST = 4;

/** A sheet of settings, and the range to name. `own` holds what this shop has changed or adds, as a value or as the formula of a cell. */
export const shopSettings = (
  name: string,
  system: UnitSystem,
  own: Readonly<Partial<Record<SettingKey, string | number | CellPlan>>> = {},
): { readonly sheet: SheetPlan; readonly range: string } => {
  const keys = [...new Set([...SHOP, ...(Object.keys(own) as SettingKey[])])];
  const rows: (CellPlan | null)[][] = [
    [put('Shop settings', 'title')],
    [
      put(
        'Change a value and every formula that is given this range follows. Delete a row and its default comes back.',
        'faint',
      ),
    ],
    [
      put('setting', 'heading'),
      put('value', 'heading'),
      put('unit', 'heading'),
      put('where the default comes from', 'heading'),
    ],
    [
      put('units', 'label'),
      put(system, 'input'),
      put('', 'faint'),
      put('metric or us: all values here are in that system', 'faint'),
    ],
    ...keys.map((key) => {
      const row = settingRow(key, system);
      const value = own[key];
      if (value !== undefined) row[1] = typeof value === 'object' ? value : put(value, 'input');
      return row;
    }),
  ];
  const last = rows.length;
  return {
    sheet: {
      name,
      widths: [24, 16, 10, 78],
      rows,
      frozen: { rows: 3, columns: 0 },
      printTo: `D${last}`,
      landscape: true,
      headingRow: 3,
      validations: [
        { type: 'list', values: ['metric', 'us'], range: `B${FIRST}` },
        ...keys.flatMap((key, i) => {
          const d: SettingDefinition = SETTINGS[key];
          return d.kind === 'choice'
            ? [{ type: 'list' as const, values: [...d.words], range: `B${FIRST + 1 + i}` }]
            : [];
        }),
      ],
    },
    range: `'${name}'!$A$${FIRST}:$C$${last}`,
  };
};
