import { isRows, type Rows } from '../../../functions/calling/cell.ts';
import type { Guide } from '../pieces.ts';
import { call } from '../pieces.ts';
import { MUSEUM, SEASON } from './specimens.ts';

const PRICES = [
  ['plaster price', 40],
  ['cloth price', 180],
  ['felt price', 25],
  ['foam price', 30],
  ['sealer price', 60],
  ['bolt price', 20],
];

const collection = call('COLLECTION', SEASON);
if (!isRows(collection)) throw new Error('the season’s list gives no table');

export const season: Guide = {
  file: 'guide-season.html',
  title: 'A season’s budget',
  question: 'What will a season of jackets cost?',
  summary: 'From a list of specimens to packs, left-overs and cost.',
  pieces: {
    list: { kind: 'sheet', caption: `Specimens of the ${MUSEUM}`, cells: SEASON },
    prices: { kind: 'sheet', caption: 'Prices for one pack, in your own money (invented)', cells: PRICES },
    collection: {
      kind: 'table',
      caption: 'some of the columns that COLLECTION gives',
      formula: '=JACKET.COLLECTION(A1:E4)',
      answer: collection,
      columns: ['number', 'padding', 'layers', 'plaster', 'cloth', 'weight', 'crew'],
    },
    budget: {
      kind: 'table',
      caption: 'what to order',
      formula: '=JACKET.BUDGET(JACKET.COLLECTION(A1:E4),Prices)',
      answer: call('BUDGET', collection as Rows, PRICES),
    },
  },
  names: { Prices: 'prices!A1:B6' },
  body: `<p class="lead-text">One row a specimen, two formulas, and you know what to order and what it costs.</p>
<h2>1. How does the list look?</h2>
<p>The first row names the columns; their order does not matter. Further columns are left alone: padding, relief, fragile and others are used where you have them.</p>
{{piece list}}
<h2>2. What does each jacket need?</h2>
<p>{{f COLLECTION}} reads the list and gives one row for each specimen. Where a row cannot be calculated, its note says why, and the other rows are not touched by it.</p>
{{piece collection}}
<h2>3. What do I have to order?</h2>
<p>Put your prices into two columns and name that range <code>Prices</code>. {{f BUDGET}} adds up the columns, rounds up to whole packs and says what is left over.</p>
{{piece prices}}
{{piece budget}}
<h2>4. What is not in it?</h2>
<p>Tools, gloves, respirators, freight, and the jacket that goes wrong. Without a price the cost stays blank, and so does the total: a sum without it would be too low. Pack sizes are assumptions until you set your own: {{setting plaster pack}}, {{setting cloth pack}}, {{setting felt pack}}, {{setting foam pack}}, {{setting sealer pack}}, {{setting bolt pack}}.</p>
<h2>5. And the hours?</h2>
<p>{{f SCHEDULE}} lays the steps of one jacket in a row, from preparing to sealing. Most of the time is drying, and several jackets can dry at once.</p>`,
};
