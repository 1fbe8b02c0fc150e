import { describe, expect, test } from 'vitest';
import { cellStyle } from '../../src/workbench/cell-style.ts';
import type { CellLook } from '../../src/workbook/styles.ts';

const plain: CellLook = { font: {}, borders: {}, alignment: {}, numberFormat: 'General' };

describe('looks of the file as styles of the grid', () => {
  test('nothing set: text stands at the bottom and runs over', () => {
    expect(cellStyle(plain)).toEqual({ vt: 3, tb: 1 });
  });

  test('a font', () => {
    expect(
      cellStyle({
        ...plain,
        font: { name: 'Arial', size: 12, bold: true, italic: true, underline: true, strike: true, colour: '#8A4B2F' },
      }),
    ).toMatchObject({ ff: 'Arial', fs: 12, bl: 1, it: 1, ul: { s: 1 }, st: { s: 1 }, cl: { rgb: '#8A4B2F' } });
  });

  test('fill, number format and borders', () => {
    expect(
      cellStyle({
        ...plain,
        fill: '#FAF8F4',
        numberFormat: '0.0" kg"',
        borders: { top: { style: 'thin', colour: '#D8D2C7' }, bottom: { style: 'double' } },
      }),
    ).toMatchObject({
      bg: { rgb: '#FAF8F4' },
      n: { pattern: '0.0" kg"' },
      bd: { t: { s: 1, cl: { rgb: '#D8D2C7' } }, b: { s: 7 } },
    });
  });

  test('alignment, turned text counted the other way round', () => {
    expect(
      cellStyle({
        ...plain,
        alignment: { horizontal: 'right', vertical: 'center', wrap: true, indent: 2, rotation: 45 },
      }),
    ).toMatchObject({ ht: 3, vt: 2, tb: 3, pd: { r: 18 }, tr: { a: -45 } });
    expect(cellStyle({ ...plain, alignment: { rotation: 255 } })).toMatchObject({ tr: { a: 0, v: 1 } });
  });
});
