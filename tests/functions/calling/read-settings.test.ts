import { describe, expect, test } from 'vitest';
import { isFault } from '../../../src/calculation/result.ts';
import { SETTINGS, type SettingDefinition } from '../../../src/calculation/settings.ts';
import { type Argument, CellError } from '../../../src/functions/calling/cell.ts';
import { readSettings } from '../../../src/functions/calling/read-settings.ts';
import { reasonOf } from '../../../src/functions/calling/reasons.ts';
import { fromSi } from '../../../src/functions/calling/units.ts';

const read = (argument: Argument | undefined) => {
  const answer = readSettings(argument);
  if (isFault(answer)) throw new Error(reasonOf(answer, 'metric'));
  return answer;
};
const why = (argument: Argument): string => {
  const answer = readSettings(argument);
  return isFault(answer) ? reasonOf(answer, 'metric') : 'no fault';
};

describe('what is accepted', () => {
  test.each([undefined, null, '', 'metric', ' Metric ', [['metric']], [], [[]]] as (Argument | undefined)[])(
    '%j is metric',
    (a) => {
      expect(read(a).system).toBe('metric');
    },
  );

  test.each(['us', 'US ', [['us']], [['units', 'us']]] as Argument[])('%j is us', (a) => {
    expect(read(a).system).toBe('us');
  });

  test('values are in the system of the units row, wherever it stands', () => {
    expect(
      read([
        ['flange', 2],
        ['units', 'us'],
      ]).settings.flange,
    ).toBe(2 * 0.0254);
    expect(read([['flange', 2]]).settings.flange).toBe(0.02);
  });

  test('names ignore case and spaces; header, blank and valueless rows are skipped', () => {
    const { settings } = read([
      ['Setting', 'value', 'unit'],
      ['  WASTE ', 0.2, 'fraction'],
      [null, 5, null],
      [0, 0, 0],
      ['lap', null, 'cm'],
      ['flange', '', 'cm'],
    ]);
    expect(settings.waste).toBe(0.2);
    expect(settings.given).toEqual({ waste: 0.2 });
  });

  test('defaults that follow are worked out after all rows are read', () => {
    expect(read([['padding', 'foam']]).settings.paddingDensity).toBe(35.2406);
    expect(read([['plaster', 'Casting plaster']]).settings.waterRatio).toBe(0.7);
    expect(read([['plaster', 'casting plaster']]).settings.flexuralStrength).toBeLessThan(8.27e6);
    expect(read([['plaster', 'dental stone']]).settings.flexuralStrength).toBe(8273708.752);
  });

  test.each(['laying rate', 'calibration low', 'plaster price'])('0 counts as blank for %s', (name) => {
    expect(read([[name, 0]]).settings.given).toEqual({});
  });
});

describe('what is refused, and how', () => {
  test.each<[string, Argument, string]>([
    ['an unknown word', 'imperial', 'settings: expected "metric", "us" or rows of names and values, not "imperial"'],
    ['a number', 5, 'settings: expected "metric", "us" or rows of names and values, not 5'],
    ['an unknown name', [['flnge', 5]], 'settings: "flnge" is not a setting; did you mean flange?'],
    [
      'a repeated name',
      [
        ['waste', 0.1],
        ['Waste', 0.2],
      ],
      'settings: waste stands there twice; keep one row',
    ],
    ['a value out of range', [['waste', 1.5]], 'settings: waste must be 0 or more and at most 1, not 1.5'],
    ['text for a number', [['waste', 'much']], 'settings: waste must be a number, not "much"'],
    ['TRUE for a number', [['waste', true]], 'settings: waste must be a number, not TRUE'],
    [
      'an unknown choice',
      [['padding', 'foem']],
      'settings: padding must be felt or foam, not "foem"; did you mean foam?',
    ],
    ['an unknown system', [['units', 'imperial']], 'settings: units must be metric or us, not "imperial"'],
    ['one column', [['waste'], ['lap']], 'settings: expected two columns, names and values, not one'],
    [
      'no named row',
      [
        [null, 1],
        ['', 2],
      ],
      'settings: no row with a name and a value; give rows such as waste and 0.15',
    ],
    ['an error', [['waste', new CellError('#N/A', '')]], 'settings: waste is the error #N/A; mend that cell first'],
    ['part of a layer', [['cover layers', 1.5]], 'settings: cover layers must be a whole number, not 1.5'],
    ['a lap as large as the piece', [['lap', 42]], 'settings: lap must be below the piece size of 42 cm, not 42 cm'],
    ['least above most', [['least layers', 20]], 'settings: least layers must be at most the most layers, 16, not 20'],
    ['another unit', [['flange', 2, 'in']], 'settings: flange is in "in", but metric units take it in cm'],
    [
      'a layer thinner than its cloth',
      [
        ['layer thickness', 0.3],
        ['cloth weight', 900],
      ],
      "settings: layer thickness must be above the cloth's own 0.3543 mm, not 0.3 mm",
    ],
  ])('%s', (_, argument, text) => {
    expect(why(argument)).toBe(text);
  });

  test('limits are told in the units in force', () => {
    const answer = readSettings([
      ['units', 'us'],
      ['layer thickness', 1],
    ]);
    expect(isFault(answer) && reasonOf(answer, 'us')).toBe(
      'settings: layer thickness must be at least 0.01181 in and at most 0.3937 in, not 1 in',
    );
  });
});

describe('every default lies inside its own range, in both systems', () => {
  for (const d of Object.values(SETTINGS) as SettingDefinition[])
    for (const system of ['metric', 'us'] as const)
      test(`${d.name}, ${system}`, () => {
        const value = d.kind === 'choice' ? d.value : d.value === null ? null : fromSi(d.value, d.quantity, system);
        const rows: Argument = [
          ['units', system],
          [d.name, value],
        ];
        expect(why(rows)).toBe('no fault');
      });
});
