/**
 * Reads the `settings` argument: `"metric"`, `"us"`, or rows of a name, a value and perhaps its unit.
 *
 * Rows with a blank name, a blank value or the name `setting` are skipped; columns after the third are ignored, so that the output of
 * SETTINGS can be pasted, edited and passed.
 */
import { isFault, type Result, wrong } from '../../calculation/result.ts';
import {
  DEFAULT_SETTINGS,
  type Given,
  resolveSettings,
  SETTINGS,
  type SettingDefinition,
  type SettingKey,
  type Settings,
} from '../../calculation/settings.ts';
import { type Argument, type Cell, isCellError, isRows, type Rows } from './cell.ts';
import { nearestName, plainName, quoted, shownPlain, unknownName } from './names.ts';
import { reasonOf } from './reasons.ts';
import { toSi, UNIT_SYSTEMS, type UnitSystem, unitName } from './units.ts';

export interface ReadSettings {
  readonly system: UnitSystem;
  readonly settings: Settings;
}

const UNITS_ROW = 'units';
const HEADER_ROW = 'setting';

const byName = new Map<string, SettingKey>(
  (Object.entries(SETTINGS) as [SettingKey, SettingDefinition][]).map(([key, d]) => [d.name, key]),
);

/** Names of all settings, `units` first. */
export const settingNames: readonly string[] = [UNITS_ROW, ...byName.keys()];

export const settingKey = (name: string): SettingKey | undefined => byName.get(plainName(name));

export const METRIC: ReadSettings = { system: 'metric', settings: DEFAULT_SETTINGS };
export const US: ReadSettings = { system: 'us', settings: DEFAULT_SETTINGS };

const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');

export const isUnitSystem = (text: string): text is UnitSystem => (UNIT_SYSTEMS as readonly string[]).includes(text);

const fault = (problem: string) => wrong('settings:', problem);

/** The settings argument as a record of settings in SI, or the fault that says which row to change. */
export const readSettings = (argument: Argument | undefined): Result<ReadSettings> => {
  const only = isRows(argument) && argument.length === 1 && argument[0]!.length === 1 ? argument[0]![0]! : argument;
  if (only === undefined || only === null || only === '') return METRIC;
  if (isRows(only)) return only[0]?.length ? readRows(only) : METRIC;
  if (isCellError(only)) return fault(`the cell holds the error ${only.code}; mend that cell first`);
  if (typeof only !== 'string')
    return fault(`expected "metric", "us" or rows of names and values, not ${shownPlain(only)}`);
  const word = plainName(only);
  if (isUnitSystem(word)) return word === 'us' ? US : METRIC;
  return fault(`expected "metric", "us" or rows of names and values, not ${quoted(only)}`);
};

interface Row {
  readonly name: string;
  readonly value: Exclude<Cell, null>;
  readonly unit: Cell;
}

const readRows = (rows: Rows): Result<ReadSettings> => {
  const read: Row[] = [];
  const seen = new Set<string>();
  for (const row of rows) {
    const [first = null, value = null, unit = null] = row;
    if (isCellError(first)) return fault(`a name is the error ${first.code}; mend that cell first`);
    if (isBlank(first) || first === 0) continue; // some hosts hand a blank over as 0
    const name = plainName(String(first));
    if (name === HEADER_ROW || isBlank(value)) continue;
    if (name !== UNITS_ROW && !byName.has(name)) return fault(unknownName(String(first), settingNames, 'a setting'));
    if (seen.has(name)) return fault(`${name} stands there twice; keep one row`);
    seen.add(name);
    read.push({ name, value: value as Exclude<Cell, null>, unit });
  }
  if (rows[0]!.length < 2) return fault('expected two columns, names and values, not one');
  if (!read.length) return fault('no row with a name and a value; give rows such as waste and 0.15');
  const unitsRow = read.find((row) => row.name === UNITS_ROW);
  let system: UnitSystem = 'metric';
  if (unitsRow) {
    const word = typeof unitsRow.value === 'string' ? plainName(unitsRow.value) : '';
    if (!isUnitSystem(word)) return fault(`units must be metric or us, not ${shown(unitsRow.value)}`);
    system = word;
  }
  const given: Partial<Record<SettingKey, number | string>> = {};
  for (const row of read) {
    if (row === unitsRow) continue;
    const key = byName.get(row.name)!;
    const value = readValue(SETTINGS[key], row, system);
    if (isFault(value)) return value;
    given[key] = value;
  }
  const settings = resolveSettings(given as Given);
  return isFault(settings) ? fault(reasonOf(settings, system)) : { system, settings };
};

const shown = (value: Cell): string =>
  typeof value === 'string' ? quoted(value) : isCellError(value) ? value.code : shownPlain(value);

const readValue = (d: SettingDefinition, { name, value, unit }: Row, system: UnitSystem): Result<number | string> => {
  if (isCellError(value)) return fault(`${name} is the error ${value.code}; mend that cell first`);
  if (d.kind === 'choice') {
    const word = typeof value === 'string' ? plainName(value) : '';
    if (d.words.includes(word)) return word;
    const near = typeof value === 'string' ? `; did you mean ${nearestName(value, d.words)}?` : '';
    return fault(`${name} must be ${d.words.join(', ').replace(/, ([^,]*)$/, ' or $1')}, not ${shown(value)}${near}`);
  }
  if (typeof value !== 'number' || !Number.isFinite(value))
    return fault(`${name} must be a number, not ${shown(value)}`);
  const expected = unitName(d.quantity, system);
  if (!isBlank(unit) && (typeof unit !== 'string' || plainName(unit) !== plainName(expected)))
    return fault(`${name} is in ${shown(unit)}, but ${system} units take it in ${expected}`);
  return toSi(value, d.quantity, system);
};
