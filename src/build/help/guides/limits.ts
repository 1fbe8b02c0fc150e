import { plausibleRange } from '../../../calculation/plausible.ts';
import {
  type Basis,
  DEFAULT_SETTINGS,
  SETTINGS,
  type SettingDefinition,
  type SettingKey,
} from '../../../calculation/settings.ts';
import { fromSi } from '../../../functions/calling/units.ts';
import { functions } from '../../../functions/index.ts';
import { escaped } from '../../html.ts';
import { functionLink, scrolled } from '../elements.ts';
import { settingAddress } from '../names.ts';
import { plain, unitAfter } from '../numbers.ts';
import type { Guide } from '../pieces.ts';

const MEANS: Readonly<Record<Basis, string>> = {
  published: 'stands in a standard, a paper, a handbook or a table, which is named',
  derived: 'follows from published facts by arithmetic or statics',
  'common practice': 'how people do it; no source was found',
  assumption: 'our choice, so that something can be calculated; yours is better',
  memory: 'known to us, but not read again in its source',
};

const BASES = Object.keys(MEANS) as Basis[];
const keys = Object.keys(SETTINGS) as SettingKey[];

const settingNames = (basis: Basis): string =>
  keys
    .filter((key) => SETTINGS[key].basis === basis)
    .map((key) => `<a href="${settingAddress(key)}">${escaped(SETTINGS[key].name)}</a>`)
    .join(', ') || 'none';

const functionNames = (basis: Basis): string =>
  functions
    .filter((f) => f.basis === basis && f.equation !== 'none')
    .map(({ id }) => functionLink(id))
    .join(', ') || 'none';

const basisSections = BASES.map(
  (basis) => `<h3 id="${basis.replaceAll(' ', '-')}">${basis.charAt(0).toUpperCase()}${basis.slice(1)}</h3>
<p>${escaped(MEANS[basis].charAt(0).toUpperCase() + MEANS[basis].slice(1))}.</p>
<p class="names"><span class="faint">settings</span> ${settingNames(basis)}</p>
<p class="names"><span class="faint">functions</span> ${functionNames(basis)}</p>`,
).join('\n');

const rangeRows = keys
  .flatMap((key) => {
    const d: SettingDefinition = SETTINGS[key];
    const ends = plausibleRange(key, DEFAULT_SETTINGS);
    if (d.kind !== 'number' || !ends) return [];
    const [low, high] = ends.map((end) => plain(fromSi(end, d.quantity, 'metric'), 4));
    const unit = unitAfter(d.quantity, 'metric');
    const value = DEFAULT_SETTINGS[key];
    const shown = typeof value === 'number' ? `${plain(fromSi(value, d.quantity, 'metric'), 4)}${unit}` : 'blank';
    return [
      `<tr><th scope="row"><a href="${settingAddress(key)}">${escaped(d.name)}</a></th><td class="number">${low}${unit}</td><td class="number">${shown}</td><td class="number">${high}${unit}</td><td>${escaped(d.plausible?.basis ?? '')}</td></tr>`,
    ];
  })
  .join('');

export const limits: Guide = {
  file: 'guide-limits.html',
  title: 'Limits and honesty',
  question: 'How far can I trust a number?',
  summary: 'What is published, what is assumed, and how wide an estimate is.',
  body: `<p class="lead-text">These are estimates for planning. They tell what to order, how many people to call and where to look twice. They do not replace a scale, a data sheet or somebody who is licensed to say that a lift is safe.</p>
<h2>What is published, and what is assumption?</h2>
<p>Every default and every function says how it is known, with one of five words.</p>
${basisSections}
<h2>How wide is an estimate?</h2>
<p>{{f PLAN}} and {{f COMPARE}} move each uncertain input to the ends below, one at a time, and add the deviations in quadrature. A value of your own narrows its range to 5 % each way. The surface from three sizes may be off by the {{setting shape uncertainty}}, the weight of the specimen by a tenth, and drying may take twice as long as calculated.</p>
${scrolled(
  'Plausible ends of the defaults',
  `<table><thead><tr><th scope="col">setting</th><th scope="col" class="number">low</th><th scope="col" class="number">default</th><th scope="col" class="number">high</th><th scope="col">basis</th></tr></thead><tbody>${rangeRows}</tbody></table>`,
)}
<h2>Where is it on the safe side?</h2>
<ul>
<li>Tipping is reckoned to the centres of the feet, not to their edges.</li>
<li>Strength takes the published least yield, and does not count foot patches.</li>
<li>Lifting and turning take the wet weight.</li>
</ul>
<h2>Where is it not?</h2>
<ul>
<li>No knock, no drop, no vibration and no creep over years is counted.</li>
<li>Layers are taken as even and well soaked. Dry cloth carries nothing.</li>
<li>Three sizes make a smooth body; a skull with its openings has more surface.</li>
<li>Nothing is known of cracks, glue and old repairs inside the specimen.</li>
</ul>
<h2>Where do I find the limits of one function?</h2>
<p>On its page. Where a call is outside of them, {{f CHECK}} says «doubtful».</p>`,
};
