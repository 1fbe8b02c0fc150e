/** Pages that list what the calculation rests on: settings, sources, cautions. */
import { plausibleRange } from '../../calculation/plausible.ts';
import {
  DEFAULT_SETTINGS,
  type NumberSetting,
  type Range,
  SETTINGS,
  type SettingDefinition,
  type SettingKey,
} from '../../calculation/settings.ts';
import { MATERIALS } from '../../calculation/size/density.ts';
import { sign } from '../../drawing/signs.ts';
import { listed } from '../../functions/calling/arguments.ts';
import { fromSi, spoken, UNIT_SYSTEMS, type UnitSystem, unitName } from '../../functions/calling/units.ts';
import { functions } from '../../functions/index.ts';
import { CAUTIONS, FOLLOW } from '../../texts/cautions.ts';
import { escaped } from '../html.ts';
import { functionLink, list, scrolled, sentence } from './elements.ts';
import type { Page } from './frame.ts';
import { CAUTIONS_FILE, fragment, SETTINGS_FILE, SOURCES_FILE, settingAddress } from './names.ts';
import { plain, unitAfter } from './numbers.ts';

const keys = Object.keys(SETTINGS) as SettingKey[];

const shown = (value: number, { quantity }: NumberSetting, system: UnitSystem): string =>
  `${plain(fromSi(value, quantity, system))}${unitAfter(quantity, system)}`;

/** Values a setting may have, in words: «0 to 1», «above 0». */
const rangeText = ({ from, above, to, below }: Range, d: NumberSetting, system: UnitSystem): string => {
  const least =
    from !== undefined
      ? `${shown(from, d, system)} or more`
      : above !== undefined
        ? `above ${shown(above, d, system)}`
        : '';
  const most =
    to !== undefined ? `up to ${shown(to, d, system)}` : below !== undefined ? `below ${shown(below, d, system)}` : '';
  return [least, most].filter(Boolean).join(', ') || 'any number';
};

const sameInBoth = (d: NumberSetting): boolean => unitName(d.quantity, 'metric') === unitName(d.quantity, 'us');

/** One fact in both systems, or once where they agree. */
const both = (d: NumberSetting, text: (system: UnitSystem) => string): string => {
  const [metric, us] = UNIT_SYSTEMS.map(text);
  return sameInBoth(d) || metric === us
    ? escaped(metric!)
    : `${escaped(metric!)} <span class="us">${escaped(us!)}</span>`;
};

const fact = (name: string, html: string): string => `<div><dt>${name}</dt><dd>${html}</dd></div>`;

const settingFacts = (key: SettingKey): string => {
  const d: SettingDefinition = SETTINGS[key];
  const known = fact('known by', `${escaped(d.basis)}: ${escaped(d.source)}`);
  if (d.kind === 'choice') return fact('default', escaped(d.value)) + fact('may be', escaped(listed(d.words))) + known;
  const value = DEFAULT_SETTINGS[key];
  const inForce = typeof value === 'number' ? both(d, (system) => shown(value, d, system)) : 'blank';
  const ends = plausibleRange(key, DEFAULT_SETTINGS);
  return [
    fact(
      'default',
      d.follows ? `follows ${escaped(d.follows)}${typeof value === 'number' ? `, now ${inForce}` : ''}` : inForce,
    ),
    fact(
      'may be',
      both(d, (system) => rangeText(d.range, d, system)),
    ),
    ends
      ? fact(
          'plausibly',
          both(d, (system) => `${shown(ends[0], d, system)} to ${shown(ends[1], d, system)}`),
        )
      : '',
    known,
  ].join('');
};

export const settingsPage = (): Page => ({
  file: SETTINGS_FILE,
  title: 'All settings',
  heading: 'Which defaults are there, and may I change them?',
  kind: 'list',
  words: 'defaults settings values ranges basis source',
  body: `<p class="lead-text">All ${keys.length} of them, in metric and US units. Change any by giving its name and your value as <a href="guide-shop.html">settings</a>. Beside them stands <code>units</code>: metric or us.</p>
${keys
  .map(
    (key) =>
      `<section class="setting" id="${fragment(SETTINGS[key].name)}"><h2>${escaped(SETTINGS[key].name)}</h2><dl class="table">${settingFacts(key)}</dl></section>`,
  )
  .join('\n')}`,
});

const sourceRows = (rows: readonly (readonly string[])[]): string =>
  rows
    .map(
      ([name, ...cells]) => `<tr><th scope="row">${name}</th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`,
    )
    .join('');

const sourceTable = (label: string, head: readonly string[], rows: readonly (readonly string[])[]): string =>
  scrolled(
    label,
    `<table><thead><tr>${head.map((one) => `<th scope="col">${one}</th>`).join('')}</tr></thead><tbody>${sourceRows(rows)}</tbody></table>`,
  );

export const sourcesPage = (): Page => ({
  file: SOURCES_FILE,
  title: 'All sources',
  heading: 'Where do the numbers come from?',
  kind: 'list',
  words: 'sources literature standards published basis materials density',
  body: `<p class="lead-text">Functions, materials and settings with the word that says how each is known. What the words mean stands under <a href="guide-limits.html">limits and honesty</a>.</p>
<h2>Functions</h2>
${sourceTable(
  'Sources of the functions',
  ['function', 'known by', 'source'],
  functions.map((f) => [functionLink(f.id), escaped(f.basis), escaped(sentence(f.source))]),
)}
<h2>Materials</h2>
${sourceTable(
  'Densities of materials',
  ['material', 'density', 'range', 'known by', 'source'],
  Object.entries(MATERIALS).map(([name, m]) => [
    escaped(name),
    spoken(m.density, 'density', 'metric'),
    `${spoken(m.low, 'density', 'metric')} to ${spoken(m.high, 'density', 'metric')}`,
    escaped(m.basis),
    escaped(sentence(m.source)),
  ]),
)}
<h2>Settings</h2>
${sourceTable(
  'Sources of the settings',
  ['setting', 'known by', 'source'],
  keys.map((key) => [
    `<a href="${settingAddress(key)}">${escaped(SETTINGS[key].name)}</a>`,
    escaped(SETTINGS[key].basis),
    escaped(sentence(SETTINGS[key].source)),
  ]),
)}`,
});

export const cautionsPage = (): Page => ({
  file: CAUTIONS_FILE,
  title: 'Cautions',
  heading: 'What can hurt me at this work?',
  kind: 'guide',
  words: CAUTIONS.map(({ title, text }) => `${title} ${text}`).join(' '),
  body: `<p class="lead-text">Six things, each with what to do first and why after. ${escaped(FOLLOW)} What needs a licence is for those who hold one.</p>
${CAUTIONS.map(
  ({ id, title, text, why, sources, sign: name }) => `<section class="caution-full" id="${id}">
<h2>${sign(name, 48)}<span>${escaped(title)}</span></h2>
<p class="do">${escaped(text)}</p>
<p>${escaped(why)}</p>
<ul class="sources">${sources.map((s) => `<li>${escaped(s.text)} <span class="faint">(${escaped(s.basis)})</span></li>`).join('')}</ul>
</section>`,
).join('\n')}
<h2>Where do these stand?</h2>
<p>Beside every number that can hurt somebody who trusts it too far: about lifting, strength, standing, dust, heat or solvents.</p>
<div class="columns">${list(
    functions
      .filter((f) => f.hurts?.length)
      .map((f) => `${functionLink(f.id)} <span class="faint">${f.hurts!.join(', ')}</span>`),
  )}</div>`,
});
