/** Validations and conditional formats of a file as the grid takes them. */

import {
  DataValidationErrorStyle,
  type DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type IRange,
  type ISheetDataValidationRule,
  type IStyleBase,
} from '@univerjs/core';
import {
  CFNumberOperator,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  CFValueType,
  type IConditionalFormattingRuleConfig,
  type IConditionFormattingRule,
  type IValueConfig,
} from '@univerjs/preset-sheets-conditional-formatting';
import { areaOf, FUNCTION_NAMES } from '../engine/workbook-book.ts';
import { toEngine } from '../workbook/index.ts';
import type { ConditionalRule, Threshold, ValidationRule } from '../workbook/rules.ts';
import type { OverlayLook } from '../workbook/styles.ts';
import { fontStyle } from './cell-style.ts';

const rangesOf = (areas: readonly string[]): IRange[] =>
  areas.flatMap((text) => {
    const area = areaOf(text);
    if (area === undefined) return [];
    const { firstRow, firstColumn, lastRow, lastColumn } = area;
    return [{ startRow: firstRow - 1, startColumn: firstColumn - 1, endRow: lastRow - 1, endColumn: lastColumn - 1 }];
  });

const TYPES: ReadonlyMap<string, DataValidationType> = new Map([
  ['list', DataValidationType.LIST],
  ['whole', DataValidationType.WHOLE],
  ['decimal', DataValidationType.DECIMAL],
  ['date', DataValidationType.DATE],
  ['time', DataValidationType.TIME],
  ['textLength', DataValidationType.TEXT_LENGTH],
  ['custom', DataValidationType.CUSTOM],
]);

const REFUSALS = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
} as const;

/** A limit of a rule: a number as it is, a typed list without its quotation marks, anything else is a formula. */
function limit(text: string | undefined, type: string): string | undefined {
  if (text === undefined) return undefined;
  const typed = /^"((?:[^"]|"")*)"$/.exec(text);
  if (type === 'list' && typed) return typed[1]!.replaceAll('""', '"');
  if (type !== 'list' && type !== 'custom' && /^-?[\d.]+(?:E[-+]?\d+)?$/i.test(text)) return text;
  return `=${toEngine(text, FUNCTION_NAMES)}`;
}

/** One validation, or nothing for a kind that the grid does not know. */
export function validation(rule: ValidationRule, uid: string): ISheetDataValidationRule | undefined {
  const type = TYPES.get(rule.type);
  const ranges = rangesOf(rule.areas);
  if (type === undefined || ranges.length === 0) return undefined;
  const first = limit(rule.first, rule.type);
  const second = limit(rule.second, rule.type);
  return {
    uid,
    type,
    ranges,
    // Lists and formulas have none, and with one the grid refuses every value.
    ...(rule.type === 'list' || rule.type === 'custom' ? {} : { operator: rule.operator as DataValidationOperator }),
    allowBlank: rule.allowBlank,
    ...(first === undefined ? {} : { formula1: first }),
    ...(second === undefined ? {} : { formula2: second }),
    showErrorMessage: rule.refusal !== undefined,
    errorStyle: rule.refusal === undefined ? DataValidationErrorStyle.INFO : REFUSALS[rule.refusal],
    ...(rule.message === undefined ? {} : { error: rule.message }),
    ...(rule.type === 'list'
      ? {
          showDropDown: rule.showsList,
          renderMode: rule.showsList ? DataValidationRenderMode.ARROW : DataValidationRenderMode.TEXT,
        }
      : {}),
  };
}

const NUMBER_OPERATORS: ReadonlyMap<string, CFNumberOperator> = new Map(
  Object.values(CFNumberOperator).map((operator) => [operator, operator]),
);

const TEXT_RULES: ReadonlyMap<string, CFTextOperator> = new Map([
  ['containsText', CFTextOperator.containsText],
  ['notContainsText', CFTextOperator.notContainsText],
  ['beginsWith', CFTextOperator.beginsWith],
  ['endsWith', CFTextOperator.endsWith],
  ['containsBlanks', CFTextOperator.containsBlanks],
  ['notContainsBlanks', CFTextOperator.notContainsBlanks],
  ['containsErrors', CFTextOperator.containsErrors],
  ['notContainsErrors', CFTextOperator.notContainsErrors],
]);

const THRESHOLDS: ReadonlyMap<string, CFValueType> = new Map(Object.values(CFValueType).map((type) => [type, type]));

function threshold({ type, value }: Threshold): IValueConfig {
  const known = THRESHOLDS.get(type) ?? CFValueType.num;
  if (value === undefined || known === CFValueType.min || known === CFValueType.max) return { type: known };
  if (known === CFValueType.formula) return { type: known, value: `=${toEngine(value, FUNCTION_NAMES)}` };
  return { type: known, value: Number(value) };
}

function highlight(rule: ConditionalRule, style: IStyleBase): IConditionalFormattingRuleConfig | undefined {
  const type = CFRuleType.highlightCell;
  const [first, second] = rule.formulas;
  const text = TEXT_RULES.get(rule.type);
  if (text !== undefined)
    return { type, style, subType: CFSubRuleType.text, operator: text, ...(rule.text ? { value: rule.text } : {}) };
  if (rule.type === 'cellIs' && first !== undefined) {
    const operator = NUMBER_OPERATORS.get(rule.operator ?? '');
    const numbers = [first, second].map((formula) => Number(formula));
    if (operator === CFNumberOperator.between || operator === CFNumberOperator.notBetween) {
      if (numbers.some(Number.isNaN)) return undefined;
      return { type, style, subType: CFSubRuleType.number, operator, value: [numbers[0]!, numbers[1]!] };
    }
    if (operator === undefined || Number.isNaN(numbers[0])) return undefined;
    return { type, style, subType: CFSubRuleType.number, operator, value: numbers[0]! };
  }
  if (rule.type === 'expression' && first !== undefined)
    return { type, style, subType: CFSubRuleType.formula, value: `=${toEngine(first, FUNCTION_NAMES)}` };
  if (rule.type === 'duplicateValues') return { type, style, subType: CFSubRuleType.duplicateValues };
  if (rule.type === 'uniqueValues') return { type, style, subType: CFSubRuleType.uniqueValues };
  if (rule.type === 'top10') {
    const { bottom: isBottom, percent: isPercent, rank: value = 10 } = rule;
    return { type, style, subType: CFSubRuleType.rank, isBottom, isPercent, value };
  }
  if (rule.type === 'aboveAverage') {
    const operator = rule.aboveAverage
      ? rule.equalAverage
        ? CFNumberOperator.greaterThanOrEqual
        : CFNumberOperator.greaterThan
      : rule.equalAverage
        ? CFNumberOperator.lessThanOrEqual
        : CFNumberOperator.lessThan;
    return { type, style, subType: CFSubRuleType.average, operator };
  }
  return undefined;
}

function ruleConfig(
  rule: ConditionalRule,
  overlay: OverlayLook | undefined,
): IConditionalFormattingRuleConfig | undefined {
  if (rule.type === 'colorScale' && rule.colours.length >= 2)
    return {
      type: CFRuleType.colorScale,
      config: rule.colours.map((color, index) => ({
        index,
        color,
        value: threshold(rule.thresholds[index] ?? { type: 'max' }),
      })),
    };
  if (rule.type === 'dataBar' && rule.colours[0] !== undefined)
    return {
      type: CFRuleType.dataBar,
      isShowValue: true,
      config: {
        min: threshold(rule.thresholds[0] ?? { type: 'min' }),
        max: threshold(rule.thresholds[1] ?? { type: 'max' }),
        isGradient: false,
        positiveColor: rule.colours[0],
        nativeColor: rule.colours[0],
      },
    };
  const style: IStyleBase = {
    ...fontStyle(overlay?.font ?? {}),
    ...(overlay?.fill === undefined ? {} : { bg: { rgb: overlay.fill } }),
  };
  return highlight(rule, style);
}

/** The conditional formats of a sheet that the grid draws, the strongest first, and how many it does not. */
export function conditionalFormats(
  rules: readonly ConditionalRule[],
  overlays: readonly OverlayLook[],
  id: string,
): { readonly drawn: IConditionFormattingRule[]; readonly notDrawn: number } {
  const drawn = [...rules]
    .sort((a, b) => a.priority - b.priority)
    .flatMap((rule, index) => {
      const config = ruleConfig(rule, rule.overlay === undefined ? undefined : overlays[rule.overlay]);
      const ranges = rangesOf(rule.areas);
      return config === undefined || ranges.length === 0
        ? []
        : [{ cfId: `${id}-${index}`, ranges, stopIfTrue: rule.stops, rule: config }];
    });
  return { drawn, notDrawn: rules.length - drawn.length };
}
