import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Fault, isFault } from '../../../src/calculation/result.ts';
import { measure } from '../../../src/calculation/size/measure.ts';
import { expectFault, expectNear, SEED } from '../kit.ts';

/** One multiplication or division away from a literal, relative. */
const ONE_STEP = 4e-16;

describe('measure', () => {
  it.each([
    ['17 1/2 in', 0.4445],
    ['17-1/2 in', 0.4445],
    ['17½ in', 0.4445],
    ['17 ½"', 0.4445],
    ['17.5"', 0.4445],
    ['17,5 in', 0.4445],
    ['17 1⁄2 in.', 0.4445],
    ['17.5 Inches', 0.4445],
    ['17.5″', 0.4445],
    ['17.5”', 0.4445],
    ["17.5''", 0.4445],
    ['17.5′′', 0.4445],
    ['1\' 5 1/2"', 0.4445],
    ['1’ 5½”', 0.4445],
    ['1′5.5″', 0.4445],
    ["1' 5,5''", 0.4445],
    ['1 ft 5 1/2 in', 0.4445],
    ['1ft5.5in', 0.4445],
    ['1 ft. 5½ in.', 0.4445],
    ['1 foot 5 1/2 inches', 0.4445],
    ['1\'-5 1/2"', 0.4445],
    ['2 ft 3 in', 0.6858],
    ['2 feet', 0.6096],
    ["2'", 0.6096],
    ['1 1/2 ft', 0.4572],
    ['0 ft 6 in', 0.1524],
    ['.5 in', 0.0127],
    [',5 in', 0.0127],
    ['1/2 in', 0.0127],
    ['½ in', 0.0127],
    ['¼ in', 0.00635],
    ['¾in', 0.01905],
    ['2⅛ in', 0.053975],
    ['⅜"', 0.009525],
    ['⅝"', 0.015875],
    ['⅞"', 0.022225],
    ['⅓ ft', 0.1016],
    ['⅔ ft', 0.2032],
    ['1 inch', 0.0254],
    ['5/2 in', 0.0635],
    ['44.5 cm', 0.445],
    ['44,5 cm', 0.445],
    ['44.5cm', 0.445],
    ['  44.5\u00a0cm ', 0.445],
    ['44.5 CM', 0.445],
    ['44.5 centimetres', 0.445],
    ['44.5 centimeters', 0.445],
    ['445 mm', 0.445],
    ['445 millimetres', 0.445],
    ['1.2 m', 1.2],
    ['1,2 metres', 1.2],
    ['1 meter', 1],
    ['1,234 mm', 0.001234],
    ['000044.50 cm', 0.445],
  ])('%s is %d m', (text, metres) => {
    expectNear(measure(text), metres, ONE_STEP);
  });

  it.each([
    ['17.5', 'has a number without a unit; add one, such as 17.5 in or 44.5 cm'],
    ['17 1/2', 'has a number without a unit; add one, such as 17.5 in or 44.5 cm'],
    ["1' 5", 'has a number without a unit; add one, such as 17.5 in or 44.5 cm'],
    ['5 furlongs', 'has a unit that is not known; use in, ft, mm, cm or m'],
    ['5 constructor', 'has a unit that is not known; use in, ft, mm, cm or m'],
    ['2 ft 5 lots', 'has a unit that is not known; use in, ft, mm, cm or m'],
    ['0 in', 'must be above 0'],
    ['0 ft 0 in', 'must be above 0'],
    ['0/4 in', 'must be above 0'],
    ['1 ft 12 in', 'has 12 inches or more after the feet; carry them over'],
    ['1\' 14"', 'has 12 inches or more after the feet; carry them over'],
  ])('%s: %s', (text, problem) => {
    const fault = measure(text);
    expectFault(fault, 'value', 'text');
    expect((fault as Fault).problem).toBe(problem);
  });

  it.each([
    '',
    '   ',
    'in',
    'long',
    '-5 cm',
    '+5 cm',
    '5 cm 3',
    '5 cm 3 mm',
    '1 m 20 cm',
    '1.5 ft 3 in',
    '1 1/2 ft 3 in',
    '1 ft 2 ft',
    '3 in 1 ft',
    '1 ft 3 in 2 in',
    '1 1 in',
    '17 5/2 in',
    '1.5 1/2 in',
    '1/0 in',
    '1/2/3 in',
    '1/ in',
    '5. in',
    '1,234.5 mm',
    '1.234,5 mm',
    '1 234 mm',
    '1e3 mm',
    '5 × 3 cm',
    '44.5 cm?',
    '５ cm',
    'NaN cm',
    'Infinity m',
  ])('refuses «%s»', (text) => {
    expectFault(measure(text), 'value', 'text');
  });

  it('says when a size is too large', () => {
    expectFault(measure(`1${'0'.repeat(400)} m`), 'overflow');
  });

  it('reads what it is told of whole feet, inches and sixteenths', () => {
    fc.assert(
      fc.property(fc.nat(50), fc.nat(11), fc.integer({ min: 1, max: 15 }), (feet, inches, sixteenths) => {
        const metres = (feet * 12 + inches + sixteenths / 16) * 0.0254;
        expectNear(measure(`${feet}' ${inches} ${sixteenths}/16"`), metres, ONE_STEP);
        expectNear(measure(`${feet * 12 + inches} ${sixteenths}/16 in`), metres, ONE_STEP);
      }),
      { seed: SEED },
    );
  });

  it('never throws, and answers a finite number above 0 or a fault', () => {
    const parts = fc.constantFrom(
      '1',
      '12',
      '0',
      '.5',
      '/',
      '-',
      ' ',
      "'",
      '"',
      'ft',
      'in',
      'cm',
      'm',
      '½',
      ',',
      '.',
      '’',
      'x',
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(parts, { maxLength: 12 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const length = measure(text);
        if (isFault(length)) expect(length).toBeInstanceOf(Fault);
        else expect(length > 0 && length < Infinity).toBe(true);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it('takes time in proportion to the length of a text', () => {
    const n = 200000;
    for (const text of [
      '1'.repeat(n),
      '1 '.repeat(n),
      ' '.repeat(n),
      "'".repeat(n),
      '1/'.repeat(n),
      `${'.'.repeat(n)}5 in`,
      '½'.repeat(n),
      `1${' '.repeat(n)}x`,
    ]) {
      const start = performance.now();
      expect(isFault(measure(text))).toBe(true);
      // Squared time would be minutes; one pass over 200 000 characters is milliseconds.
      expect(performance.now() - start).toBeLessThan(1000);
    }
  });
});
