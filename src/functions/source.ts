import { wrong } from '../calculation/result.ts';
import { SETTINGS, type SettingDefinition } from '../calculation/settings.ts';
import { MATERIALS } from '../calculation/size/density.ts';
import { single, text } from './calling/arguments.ts';
import { plainName, unknownName } from './calling/names.ts';
import { settingKey, settingNames } from './calling/read-settings.ts';
import { spoken } from './calling/units.ts';
import { define, type WorksheetFunction } from './define.ts';
// The registry imports this file too; the list is only read when a call runs.
import { functions } from './index.ts';

const ofSetting = (name: string): string | undefined => {
  const key = settingKey(name);
  if (!key) return undefined;
  const d: SettingDefinition = SETTINGS[key];
  const value =
    d.kind === 'choice'
      ? d.value
      : d.value === null
        ? d.follows
          ? `follows ${d.follows}`
          : 'blank'
        : spoken(d.value, d.quantity, 'metric');
  return `setting ${d.name}: ${value}; ${d.basis}; ${d.source}`;
};

const ofMaterial = (name: string): string | undefined => {
  const m = Object.entries(MATERIALS).find(([known]) => known === name);
  if (!m) return undefined;
  const [known, { density, low, high, basis, source }] = m;
  return `material ${known}: ${spoken(density, 'density', 'metric')}, ${spoken(low, 'density', 'metric')} to ${spoken(high, 'density', 'metric')}; ${basis}; ${source}`;
};

const idOf = (name: string): string => name.replace(/^jacket\./, '').toUpperCase();

const ofFunction = (f: WorksheetFunction | undefined): string | undefined =>
  f && `function ${f.id}: ${f.equation}; ${f.basis}; ${f.source}`;

export default define({
  id: 'SOURCE',
  topic: 'about',
  question: 'Where does a number come from?',
  description: 'Where a default, a material or the formula of a function comes from.',
  equation: 'none',
  arguments: { name: single(text('the name of a setting, a material or a function')) },
  settings: false,
  result: { kind: 'text', what: 'value, basis and source, one line for each kind of name' },
  examples: [
    {
      args: ['bolt spacing'],
      value: 'setting bolt spacing: 20 cm; assumption; no published spacing was found',
    },
  ],
  basis: 'derived',
  source: 'the registry itself',
  related: ['SETTINGS', 'CHECK'],
  run: ({ name }) => {
    const plain = plainName(name);
    const lines = [ofSetting(plain), ofMaterial(plain), ofFunction(functions.find((f) => f.id === idOf(plain)))];
    const known = lines.filter((line) => line !== undefined);
    if (known.length) return known.join('\n');
    const all = [...settingNames, ...Object.keys(MATERIALS), ...functions.map((f) => f.id)];
    return wrong('name', `is ${unknownName(name, all, 'a setting, a material or a function')}`);
  },
});
