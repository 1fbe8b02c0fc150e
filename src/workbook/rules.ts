/** Rules that lie over cells of a sheet: what may be typed (validations), and what makes a cell stand out (conditional formats). */

import { colourOf, type ThemeColours } from './colours.ts';
import { eachChild, isTrue, numberOf } from './elements.ts';
import { decodeEscapes } from './text-escapes.ts';
import type { XmlReader } from './xml.ts';

export interface ValidationRule {
  /** Areas such as `B4:B9`. */
  readonly areas: readonly string[];
  /** Name in the file: `list`, `whole`, `decimal`, `date`, `time`, `textLength`, `custom`. */
  readonly type: string;
  readonly operator: string;
  /** Stored form, without `=`. */
  readonly first?: string;
  readonly second?: string;
  readonly allowBlank: boolean;
  /** What happens to a value that breaks the rule: refused, doubted, or only remarked. Left out: it is let through. */
  readonly refusal?: 'stop' | 'warning' | 'information';
  readonly message?: string;
  readonly prompt?: string;
  /** Whether a list shows its choices. */
  readonly showsList: boolean;
}

/** One threshold of a colour scale or a bar. */
export interface Threshold {
  /** `min`, `max`, `num`, `percent`, `percentile` or `formula`. */
  readonly type: string;
  readonly value?: string;
}

export interface ConditionalRule {
  readonly areas: readonly string[];
  /** Name in the file, such as `cellIs`, `expression`, `containsText`, `colorScale`. */
  readonly type: string;
  readonly priority: number;
  readonly stops: boolean;
  /** Index into the overlays of the styles. */
  readonly overlay?: number;
  readonly operator?: string;
  readonly formulas: readonly string[];
  readonly text?: string;
  readonly rank?: number;
  readonly bottom: boolean;
  readonly percent: boolean;
  readonly aboveAverage: boolean;
  readonly equalAverage: boolean;
  readonly thresholds: readonly Threshold[];
  readonly colours: readonly string[];
}

const areasOf = (reader: XmlReader): string[] => (reader.attribute('sqref') ?? '').split(/\s+/).filter(Boolean);

const REFUSALS: ReadonlyMap<string, NonNullable<ValidationRule['refusal']>> = new Map([
  ['stop', 'stop'],
  ['warning', 'warning'],
  ['information', 'information'],
]);

/** Reads the `dataValidation` element that has just opened. */
export function readValidation(reader: XmlReader): ValidationRule {
  const text = (name: string): string | undefined => {
    const value = reader.attribute(name);
    return value === undefined || value === '' ? undefined : decodeEscapes(value);
  };
  const shows = isTrue(reader.attribute('showErrorMessage'));
  const refusal = shows ? REFUSALS.get(reader.attribute('errorStyle') ?? 'stop') : undefined;
  const message = text('error');
  const prompt = isTrue(reader.attribute('showInputMessage')) ? text('prompt') : undefined;
  const rule = {
    areas: areasOf(reader),
    type: reader.attribute('type') ?? 'none',
    operator: reader.attribute('operator') ?? 'between',
    allowBlank: isTrue(reader.attribute('allowBlank')),
    // The file says it the other way round.
    showsList: !isTrue(reader.attribute('showDropDown')),
    ...(refusal === undefined ? {} : { refusal }),
    ...(message === undefined ? {} : { message }),
    ...(prompt === undefined ? {} : { prompt }),
  };
  let first: string | undefined;
  let second: string | undefined;
  eachChild(reader, (name) => {
    if (name === 'formula1') first = reader.textInside();
    else if (name === 'formula2') second = reader.textInside();
  });
  return { ...rule, ...(first === undefined ? {} : { first }), ...(second === undefined ? {} : { second }) };
}

/** Reads the `conditionalFormatting` element that has just opened: one area, one or more rules. */
export function readConditionalRules(reader: XmlReader, theme: ThemeColours): ConditionalRule[] {
  const areas = areasOf(reader);
  const rules: ConditionalRule[] = [];
  eachChild(reader, (name) => {
    if (name === 'cfRule') rules.push(readConditionalRule(reader, theme, areas));
  });
  return rules;
}

function readConditionalRule(reader: XmlReader, theme: ThemeColours, areas: readonly string[]): ConditionalRule {
  const overlay = numberOf(reader.attribute('dxfId'));
  const operator = reader.attribute('operator');
  const text = reader.attribute('text');
  const rank = numberOf(reader.attribute('rank'));
  const head = {
    areas,
    type: reader.attribute('type') ?? '',
    priority: Number(reader.attribute('priority') ?? 0),
    stops: isTrue(reader.attribute('stopIfTrue')),
    bottom: isTrue(reader.attribute('bottom')),
    percent: isTrue(reader.attribute('percent')),
    aboveAverage: isTrue(reader.attribute('aboveAverage') ?? '1'),
    equalAverage: isTrue(reader.attribute('equalAverage')),
    ...(overlay === undefined ? {} : { overlay }),
    ...(operator === undefined ? {} : { operator }),
    ...(text === undefined ? {} : { text }),
    ...(rank === undefined ? {} : { rank }),
  };
  const formulas: string[] = [];
  const thresholds: Threshold[] = [];
  const colours: string[] = [];
  eachChild(reader, (name) => {
    if (name === 'formula') formulas.push(reader.textInside());
    else if (name === 'colorScale' || name === 'dataBar' || name === 'iconSet')
      eachChild(reader, (part) => {
        if (part === 'cfvo') {
          const value = reader.attribute('val');
          thresholds.push({ type: reader.attribute('type') ?? 'num', ...(value === undefined ? {} : { value }) });
        } else if (part === 'color') colours.push(colourOf(reader, theme) ?? '#000000');
      });
  });
  return { ...head, formulas, thresholds, colours };
}
