import type { Guide } from '../pieces.ts';
import { call } from '../pieces.ts';
import { MUSEUM, VERTEBRA } from './specimens.ts';

const [length, width, height] = VERTEBRA.size;

export const firstJacket: Guide = {
  file: 'guide-first-jacket.html',
  title: 'First jacket',
  question: 'How do I plan my first jacket in five minutes?',
  summary: 'Three sizes, a weight, and nine formulas; then the whole plan in one.',
  pieces: {
    sheet: {
      kind: 'sheet',
      caption: `${VERTEBRA.number}, ${VERTEBRA.element}, ${MUSEUM}`,
      cells: [
        ['length', length, 'cm'],
        ['width', width, 'cm'],
        ['height', height, 'cm'],
        ['weight', VERTEBRA.weight, 'kg'],
        ['shell area', { formula: '=JACKET.SHELL_AREA(B1,B2,B3)', shows: '0.219' }, 'm²'],
        ['layers', { formula: '=JACKET.LAYERS(B4)', shows: '5' }, ''],
        ['plaster', { formula: '=JACKET.PLASTER(B5,B6)', shows: '2.62' }, 'kg'],
        ['water', { formula: '=JACKET.WATER(B7)', shows: '0.996' }, 'kg'],
        ['cloth', { formula: '=JACKET.CLOTH(B5,B6)', shows: '1.22' }, 'm'],
        ['weight when dry', { formula: '=JACKET.WEIGHT(B5,B6,B4)', shows: '11.1' }, 'kg'],
        ['people', { formula: '=JACKET.CREW(B10,B2)', shows: '1' }, ''],
      ],
    },
    plan: {
      kind: 'table',
      caption: 'some of the rows that PLAN gives',
      formula: `=JACKET.PLAN(${length},${width},${height},${VERTEBRA.weight})`,
      answer: call('PLAN', length, width, height, VERTEBRA.weight),
      rows: [
        'shell area',
        'mean layers',
        'plaster',
        'water',
        'cloth',
        'weight',
        'wet weight',
        'drying time',
        'tip angle',
        'crew',
      ],
    },
  },
  body: `<p class="lead-text">You need a tape, a scale and an empty sheet. Sizes go in as centimetres, weights as kilograms; for inches and pounds see <a href="guide-units.html">units</a>.</p>
<h2>1. What do I measure?</h2>
<p>The longest size, the size across, and the height as it lies in the jacket. Then weigh it. Where it is too heavy for your scale, {{f SPECIMEN_WEIGHT}} estimates the weight from its volume and its rock; a scale is always better.</p>
<h2>2. What do I type?</h2>
<p>Type the four numbers into B1 to B4 and the formulas below them. Your spreadsheet completes a name once you have typed <code>=JACKET.</code></p>
{{piece sheet}}
<h2>3. What if my numbers stand in rows?</h2>
<p>Put one specimen in each row and fill the formulas down. Rows that are still blank stay blank. For a whole list at once there is {{f COLLECTION}}; see <a href="guide-season.html">a season’s budget</a>.</p>
<h2>4. Is there one formula for all of it?</h2>
<p>{{f PLAN}} takes the same four numbers and gives the whole plan, with a low and a high end for each estimate. It asks for more plaster and cloth than the sheet above, since it adds what the sheet left out: a cover layer, strips along the edges, and patches on six feet. Order by the plan.</p>
{{piece plan}}
<h2>5. What comes before the first mix?</h2>
<ol>
<li>Read the <a href="guide-cautions.html">cautions</a>. They take three minutes.</li>
<li>Weigh the specimen, and agree who lifts and who calls the moves.</li>
<li>Look at the low and the high end, and have enough for the high end at hand.</li>
<li>Write down what you really use. After a few jackets, <a href="guide-calibrate.html">calibrate</a>.</li>
</ol>`,
};
