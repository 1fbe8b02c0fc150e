/** The same example in both unit systems. */
import type { Quantity } from '../../calculation/result.ts';
import { SETTINGS, type SettingDefinition } from '../../calculation/settings.ts';
import { type Argument, type Cell, isRows, type Rows } from '../../functions/calling/cell.ts';
import { settingKey } from '../../functions/calling/read-settings.ts';
import { fromSi, toSi } from '../../functions/calling/units.ts';
import type { WorksheetFunction } from '../../functions/define.ts';

/** Significant digits of a converted size: enough that an example at a turning point, such as three times as long as wide, stays there. */
const DIGITS = 5;

/** Quantities of columns that tables are read by. */
const COLUMNS: Readonly<Record<string, Quantity>> = {
  length: 'length',
  width: 'length',
  height: 'length',
  weight: 'mass',
  plaster: 'mass',
  cloth: 'clothLength',
  sealer: 'liquidVolume',
};

const converted = (value: number, quantity: Quantity): number =>
  Number(fromSi(toSi(value, quantity, 'metric'), quantity, 'us').toPrecision(DIGITS));

const cellOf = (cell: Cell, quantity: Quantity | undefined): Cell =>
  typeof cell === 'number' && quantity ? converted(cell, quantity) : cell;

const tableOf = (rows: Rows): Rows => {
  const [head = []] = rows;
  return rows.map((row, r) => (r === 0 ? row : row.map((cell, c) => cellOf(cell, COLUMNS[String(head[c])]))));
};

const settingsOf = (given: Argument | undefined): Argument => {
  if (!isRows(given)) return 'us';
  const rows = given.map(([name, value = null, ...rest]): Cell[] => {
    const key = settingKey(String(name));
    const d: SettingDefinition | undefined = key && SETTINGS[key];
    return [name!, cellOf(value, d?.kind === 'number' ? d.quantity : undefined), ...rest];
  });
  return [['units', 'us'], ...rows];
};

/** Where the settings stand among the arguments of a function, −1 where it takes none. */
const settingsPlace = (f: WorksheetFunction): number => (f.takesSettings ? f.arguments.length - 1 : -1);

/** Whether these arguments already ask for US units. */
export const asksForUs = (f: WorksheetFunction, args: readonly Argument[]): boolean => {
  const given = args[settingsPlace(f)];
  return given === 'us' || (isRows(given) && given.some(([name, value]) => name === 'units' && value === 'us'));
};

/** A metric example in US units, rounded as people measure. Undefined where no unit is asked for. */
export const inUs = (f: WorksheetFunction, args: readonly Argument[]): Argument[] | undefined => {
  const place = settingsPlace(f);
  if (place < 0 || asksForUs(f, args)) return undefined;
  const given = f.arguments.slice(0, place).map((argument, i): Argument => {
    const one = args[i] ?? null;
    if (isRows(one))
      return argument.quantity ? one.map((row) => row.map((c) => cellOf(c, argument.quantity))) : tableOf(one);
    return cellOf(one as Cell, argument.quantity);
  });
  return [...given, settingsOf(args[place])];
};
