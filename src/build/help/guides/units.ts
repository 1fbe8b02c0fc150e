import type { Quantity } from '../../../calculation/result.ts';
import { UNITS } from '../../../functions/calling/units.ts';
import { escaped } from '../../html.ts';
import { scrolled } from '../elements.ts';
import type { Guide } from '../pieces.ts';

const WORDS: Partial<Record<Quantity, string>> = {
  length: 'length, width, height, girth, seam, foot position',
  thickness: 'thickness',
  area: 'area of a specimen or a shell',
  clayArea: 'area of a clay pocket',
  mass: 'weight, plaster, water',
  bodyVolume: 'volume of a body',
  liquidVolume: 'slurry, bucket, sealer',
  clothLength: 'cloth on the roll',
  clothWeight: 'weight of cloth',
  bulkDensity: 'density of padding',
  density: 'density of a specimen or clay',
  bearing: 'pressure on feet and padding',
  strength: 'strength',
  shelfLoad: 'load on a shelf',
  moment: 'moment',
  temperature: 'temperature',
  layingRate: 'laying rate',
  coverage: 'sealer coverage',
  airSpeed: 'air speed',
  angle: 'angle',
  hours: 'time',
  dust: 'dust in the air',
};

const rows = Object.entries(WORDS)
  .map(([quantity, words]) => {
    const { metric, us } = UNITS[quantity as Quantity];
    return `<tr><th scope="row">${escaped(words)}</th><td>${escaped(metric.name)}</td><td>${escaped(us.name)}</td></tr>`;
  })
  .join('');

export const units: Guide = {
  file: 'guide-units.html',
  title: 'Units and separators',
  question: 'Which units do the numbers have?',
  summary: 'Metric or US units, feet and inches as text, commas or semicolons.',
  body: `<p class="lead-text">Metric, unless you ask for US units in the last argument. A workbook may use both; each formula says for itself.</p>
<h2>1. How do I ask for inches and pounds?</h2>
<p>Write "us" as the last argument, or put a row <code>units</code>, <code>us</code> into your settings. All values in those settings are then in US units.</p>
{{=JACKET.AREA(60,40,30) → 0.578 m²}}
{{=JACKET.AREA(23.62,15.75,11.81,"us") → 6.22 ft²}}
<h2>2. Which unit belongs to what?</h2>
${scrolled(
  'Units of each quantity',
  `<table><thead><tr><th scope="col">quantity</th><th scope="col">metric</th><th scope="col">US units</th></tr></thead><tbody>${rows}</tbody></table>`,
)}
<p>Both systems give the same physics: the one is the other converted by exact factors. Only {{f LIFT_LIMIT}} and {{f LIFT_INDEX}} differ a little, since their source publishes a set of constants for each.</p>
<h2>3. My sizes are in feet and inches. Do I have to convert?</h2>
<p>No. {{f MEASURE}} reads them as text, fractions too, and gives the length in the unit in force.</p>
{{=JACKET.MEASURE("17 1/2 in") → 44.45 cm}}
{{=JACKET.MEASURE("2 ft 3 in","us") → 27 in}}
<h2>4. Comma or semicolon?</h2>
<p>Files hold commas; your spreadsheet shows what your country uses. With a decimal comma, arguments are separated by semicolons, and cells of an array in braces by a backslash. Each example here shows both forms where they differ.</p>
{{=JACKET.PLASTER(1,8.5,{"waste",0.2;"lap",6}) → 21.1 kg}}
<p>Settings in a range need neither, and are easier to read.</p>
<h2>5. What if I leave an argument out in the middle?</h2>
<p>Keep its comma, so that what follows stays in its place.</p>
{{=JACKET.WEIGHT(1,8,,"metric") → 22.3 kg}}`,
};
