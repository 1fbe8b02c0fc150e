import { plausibleRange } from '../calculation/plausible.ts';
import { amount } from '../calculation/result.ts';
import { SETTINGS, type SettingDefinition, type SettingKey, type Settings } from '../calculation/settings.ts';
import { settingNames } from './calling/read-settings.ts';
import { type TableCell, unitOf } from './calling/tables.ts';
import { define } from './define.ts';

const HEADER = ['setting', 'value', 'unit', 'in force', 'low', 'high', 'basis', 'source'];

/** One row of the table: what is set, what is in force, the plausible ends, and how the default is known. */
const row = (key: SettingKey, settings: Settings): TableCell[] => {
  const d: SettingDefinition = SETTINGS[key];
  if (d.kind === 'choice') return [d.name, settings[key], '', settings[key], '', '', d.basis, d.source];
  const shown = (value: number | null | undefined): TableCell =>
    typeof value === 'number' ? amount(value, d.quantity) : '';
  const own = settings.given[key] as number | undefined;
  const [low, high] = plausibleRange(key, settings) ?? [];
  return [
    d.name,
    shown(own ?? d.value),
    unitOf(d.quantity),
    shown(settings[key] as number | null),
    shown(low),
    shown(high),
    d.basis,
    d.follows ? `follows ${d.follows}; ${d.source}` : d.source,
  ];
};

export default define({
  id: 'SETTINGS',
  topic: 'about',
  question: 'Which defaults are in force, and where do they come from?',
  description: 'Table of all settings with value, unit, plausible ends, basis and source.',
  equation: 'none',
  arguments: {},
  settings: true,
  result: { kind: 'table', what: 'setting, value, unit, in force, low, high, basis, source', header: true },
  examples: [{ args: [], value: [HEADER] }],
  basis: 'derived',
  source: 'each row names its own',
  remarks: [
    'Paste the values, change what differs in your shop, name the range Shop and give it to any function as settings.',
    'The value is blank where a default follows another setting or the specimen, so that a pasted copy keeps following.',
  ],
  related: ['SOURCE', 'CHECK'],
  run: (_, settings, system) => [
    HEADER,
    [settingNames[0]!, system, '', system, '', '', '', 'metric or us; all values in this table are in that system'],
    ...(Object.keys(SETTINGS) as SettingKey[]).map((key) => row(key, settings)),
  ],
});
