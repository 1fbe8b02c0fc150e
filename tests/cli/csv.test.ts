import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CsvError, CsvReader, csvText, isNumberText, LONGEST_RECORD } from '../../src/cli/csv.ts';

const read = (...pieces: string[]): string[][] => {
  const reader = new CsvReader();
  return [...pieces.flatMap((piece) => reader.push(piece)), ...reader.end()];
};

describe('records', () => {
  test.each<[string, string, string[][]]>([
    [
      'plain',
      'a,b\r\n1,2\r\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'no line end at the end',
      'a,b\n1,2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['CR alone', 'a\rb\r', [['a'], ['b']]],
    [
      'empty fields',
      ',\n,,\n',
      [
        ['', ''],
        ['', '', ''],
      ],
    ],
    ['a comma at the very end', 'a,', [['a', '']]],
    ['an empty line', 'a\n\nb\n', [['a'], [''], ['b']]],
    ['quoted commas, line ends and quotation marks', '"a,b","c\r\nd","e ""f"""\n', [['a,b', 'c\r\nd', 'e "f"']]],
    ['an empty quoted field', '"",x\n', [['', 'x']]],
    ['a quotation mark inside of a field', 'a "b" c,d\n', [['a "b" c', 'd']]],
    ['what stands behind a closed quotation mark', '"a"b,c\n', [['ab', 'c']]],
    ['nothing', '', []],
  ])('%s', (_, text, records) => {
    expect(read(text)).toEqual(records);
  });

  test('wherever the text is cut into pieces', () => {
    const text = 'no,"a, b"\r\n"x ""y""\r\nz",2\r\r\n"",""\n,';
    const whole = read(text);
    expect(whole).toEqual([['no', 'a, b'], ['x "y"\r\nz', '2'], [''], ['', ''], ['', '']]);
    for (let i = 1; i < text.length; i++)
      for (let j = i; j < text.length; j++)
        expect(read(text.slice(0, i), text.slice(i, j), text.slice(j)), `${i} ${j}`).toEqual(whole);
  });
});

test('what is written is read again, for any texts', () => {
  // What begins like a formula gets an apostrophe, and is another text then.
  const field = fc
    .string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r', ' ', '1', 'é') })
    .filter((text) => !/^[\t\r\n]/.test(text));
  fc.assert(
    fc.property(fc.array(fc.array(field, { minLength: 1, maxLength: 4 }), { maxLength: 5 }), (records) => {
      const text = records.map((fields) => `${fields.map(csvText).join(',')}\r\n`).join('');
      expect(read(text)).toEqual(records);
    }),
    { seed: 20060401 },
  );
});

describe('a quotation mark that is not closed', () => {
  test('names the line on which its record begins', () => {
    expect(() => read('a\n"b\nc"\n"d,e\n')).toThrow(
      new CsvError('line 4: a quotation mark is not closed; close it, or double it where it is part of the text'),
    );
  });
  test('does not fill the memory', () => {
    const reader = new CsvReader();
    reader.push('"');
    expect(() => reader.push('x'.repeat(LONGEST_RECORD + 1))).toThrow(CsvError);
  });
});

describe('text that a spreadsheet would take for a formula', () => {
  test.each(['=1+1', '+cmd', '-x', '@SUM(A1)', '\tx', '\rx', '=HYPERLINK("a","b")'])(
    '%j gets an apostrophe',
    (text) => {
      expect(read(csvText(text))[0]![0]).toBe(`'${text}`);
    },
  );
  test.each(['-5', '+3.2e4', 'a=b', "'=1", '#VALUE!', '5-3'])('%j stays', (text) => {
    expect(csvText(text)).toBe(text);
  });
});

test('numbers are written with a decimal point and without marks between thousands', () => {
  for (const text of ['1', '-1.5', '+.5', '5.', '1e3', '1.5E-7']) expect(isNumberText(text), text).toBe(true);
  for (const text of ['', '.', '1,5', '1 000', '0x10', 'Infinity', '1e', '12 cm'])
    expect(isNumberText(text), text).toBe(false);
});
