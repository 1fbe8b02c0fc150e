import { describe, expect, test } from 'vitest';
import { conditionalFormats, validation } from '../../src/workbench/rules.ts';
import type { ConditionalRule, ValidationRule } from '../../src/workbook/rules.ts';

const rule: ValidationRule = { areas: ['B4:B9'], type: 'list', operator: 'between', allowBlank: true, showsList: true };
const format: ConditionalRule = {
  areas: ['A1:A9'],
  type: 'cellIs',
  priority: 1,
  stops: false,
  formulas: [],
  bottom: false,
  percent: false,
  aboveAverage: true,
  equalAverage: false,
  thresholds: [],
  colours: [],
};

describe('validations', () => {
  test('a typed list loses its quotation marks and has no operator, which the grid would trip over', () => {
    const made = validation({ ...rule, first: '"felt,foam"' }, 'a')!;
    expect(made).toMatchObject({ type: 'list', formula1: 'felt,foam', showDropDown: true });
    expect(made.operator).toBeUndefined();
    expect(made.ranges).toEqual([{ startRow: 3, startColumn: 1, endRow: 8, endColumn: 1 }]);
  });

  test('a list from cells is a formula', () => {
    expect(validation({ ...rule, first: '$D$1:$D$3' }, 'a')!.formula1).toBe('=$D$1:$D$3');
  });

  test('limits of a number, and what happens to others', () => {
    const made = validation(
      { ...rule, type: 'decimal', operator: 'greaterThan', first: '0', refusal: 'stop', message: 'Type a size' },
      'a',
    )!;
    expect(made).toMatchObject({
      type: 'decimal',
      operator: 'greaterThan',
      formula1: '0',
      errorStyle: 1,
      error: 'Type a size',
    });
  });

  test('a kind that is not known is left out', () => {
    expect(validation({ ...rule, type: 'none' }, 'a')).toBeUndefined();
  });
});

describe('conditional formats', () => {
  const overlays = [{ font: { bold: true, colour: '#7A5200' }, fill: '#FFF3D6' }];
  const one = (more: Partial<ConditionalRule>) =>
    conditionalFormats([{ ...format, overlay: 0, ...more }], overlays, 'x');

  test('a comparison with the look of the file', () => {
    const { drawn } = one({ operator: 'greaterThan', formulas: ['25'] });
    expect(drawn[0]!.rule).toMatchObject({
      subType: 'number',
      operator: 'greaterThan',
      value: 25,
      style: { bl: 1, cl: { rgb: '#7A5200' }, bg: { rgb: '#FFF3D6' } },
    });
  });

  test('a formula of ours in the form people type', () => {
    const { drawn } = one({ type: 'expression', formulas: ['_xldudf_JACKET_LAYERS(A1)>4'] });
    expect(drawn[0]!.rule).toMatchObject({ subType: 'formula', value: '=JACKET.LAYERS(A1)>4' });
  });

  test('a colour scale', () => {
    const { drawn } = one({
      type: 'colorScale',
      thresholds: [{ type: 'min' }, { type: 'max' }],
      colours: ['#FFFFFF', '#8A4B2F'],
    });
    expect(drawn[0]!.rule).toMatchObject({ type: 'colorScale', config: [{ color: '#FFFFFF' }, { color: '#8A4B2F' }] });
  });

  test('what is not drawn is counted', () => {
    expect(one({ type: 'iconSet' })).toEqual({ drawn: [], notDrawn: 1 });
    expect(one({ operator: 'equal', formulas: ['Shop'] }).notDrawn).toBe(1);
  });

  test('the strongest comes first', () => {
    const { drawn } = conditionalFormats(
      [
        { ...format, priority: 2, operator: 'equal', formulas: ['2'] },
        { ...format, priority: 1, operator: 'equal', formulas: ['1'] },
      ],
      [],
      'x',
    );
    expect(drawn.map((drawnRule) => 'value' in drawnRule.rule && drawnRule.rule.value)).toEqual([1, 2]);
  });
});
