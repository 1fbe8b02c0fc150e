import type { Guide } from '../pieces.ts';
import { call } from '../pieces.ts';

const ESTIMATED = [3.5, 4.1, 16.5, 8.2, 12];
const USED = [3.9, 4.4, 19.5, 8.8, 13.5];

export const calibrate: Guide = {
  file: 'guide-calibrate.html',
  title: 'Calibrating',
  question: 'Why do my numbers differ, and how do I calibrate?',
  summary: 'Where habits and estimates part, and how five jackets of your own mend it.',
  pieces: {
    jobs: {
      kind: 'sheet',
      caption: 'Plaster estimated and used, in kg (invented jobs)',
      cells: [['estimated', 'used'], ...ESTIMATED.map((one, i) => [one, USED[i]!])],
    },
    factors: {
      kind: 'sheet',
      caption: 'Three numbers: the factor, its low end, its high end',
      cells: [
        [
          { formula: '=INDEX(JACKET.CALIBRATE(jobs!A2:A6,jobs!B2:B6),1,1)', shows: '1.13' },
          { formula: '=INDEX(JACKET.CALIBRATE(jobs!A2:A6,jobs!B2:B6),1,2)', shows: '1.06' },
          { formula: '=INDEX(JACKET.CALIBRATE(jobs!A2:A6,jobs!B2:B6),1,3)', shows: '1.20' },
        ],
      ],
    },
    plaster: {
      kind: 'table',
      caption: 'plaster of one plan, after calibrating',
      formula: '=JACKET.PLAN(24,18,16,7.8,,{"calibration",1.13;"calibration low",1.06;"calibration high",1.2})',
      answer: call('PLAN', 24, 18, 16, 7.8, null, [
        ['calibration', 1.13],
        ['calibration low', 1.06],
        ['calibration high', 1.2],
      ]),
      rows: ['plaster', 'water', 'weight'],
    },
  },
  body: `<p class="lead-text">An estimate is not a verdict on your work. It rests on defaults, and yours may be others. A few weighed jackets settle it.</p>
<h2>1. Why do they differ?</h2>
<ul>
<li>Layers are thicker or thinner than {{setting layer thickness}}. This is the largest reason by far.</li>
<li>The finish coat, the flange or the laps are wider than the defaults.</li>
<li>The specimen is not the smooth body of three sizes. For a skull set {{setting relief factor}}; for a slab set {{setting shape}} to box.</li>
<li>A habit counts what an estimate does not: buckets thrown away, feet, ribs.</li>
<li>Plaster that has been open for months takes water from the air and weighs more.</li>
</ul>
<h2>2. What do I write down?</h2>
<p>For each jacket two numbers: the plaster that was estimated before the work, with calibration 1, and the plaster that went out of the bag.</p>
{{piece jobs}}
<h2>3. How do I get the factor?</h2>
<p>{{f CALIBRATE}} gives three numbers side by side: the factor, and the ends between which it lies in 95 of 100 cases. Typed into one cell it fills three.</p>
<p>To get them one by one, on a sheet beside the one named <code>jobs</code>:</p>
{{piece factors}}
<h2>4. How do I use it?</h2>
<p>Put the three into your settings as {{setting calibration}}, {{setting calibration low}} and {{setting calibration high}}. The plan then takes your factor, and its ends are as wide as your own jackets say.</p>
{{piece plaster}}
<h2>5. How many jackets does it take?</h2>
<p>Two give an answer, five give a useful one. Use the factor for jackets like those that it rests on: small felt-padded ones say little about a large one on foam. The low end may be 0 where two jobs disagree; that is honest, not a mistake.</p>`,
};
