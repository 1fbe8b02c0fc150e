import { isFault } from '../calculation/result.ts';
import { table } from './calling/arguments.ts';
import { collectionTable } from './calling/collection-table.ts';
import { define } from './define.ts';

const NAMES = ['no', 'length', 'width', 'height', 'weight'];

export default define({
  id: 'COLLECTION',
  topic: 'jobs',
  question: 'What do the jackets of a whole collection need?',
  description: 'Table with one row for each specimen: materials, weights, feet, strength and crew.',
  equation: 'for each row the same as PLAN, with the padding of that row',
  math: String.raw`\text{row}_i = \text{PLAN}\left(\text{length}_i,\ \text{width}_i,\ \text{height}_i,\ \text{weight}_i,\ \text{padding}_i\right)`,
  arguments: { table: table('rows of length, width, height and weight, best under a row of names') },
  settings: true,
  result: {
    kind: 'table',
    what: 'columns left of length repeated, padding, layers, shell area, plaster, water, mixes, cloth, felt sheets, foam sheets, sealer, bolts, weight, wet weight, margin, tip angle, safety factor, rib height, crew, note',
    header: true,
  },
  examples: [
    {
      args: [[NAMES, [1, 60, 40, 30, 20], [2, 120, 40, 30, 50]]],
      value: [
        ['no', 'padding', 'layers', 'shell area', 'plaster', 'water', 'mixes', 'cloth'],
        [1, 'felt', 6, 0.7923952088],
        [2, 'foam'],
      ],
    },
  ],
  basis: 'derived',
  source: 'the single functions, as in PLAN; each names its own source',
  remarks: [
    'Columns are found by name in any order: length, width, height, weight; and where you have them padding, shape, surface area, relief factor, fragile, relief, or volume and material in place of the weight.',
    'Without a row of names the order is length, width, height, weight, padding.',
    'A blank padding is chosen as PADDING_CHOICE does. A surface area of your own replaces the estimate.',
    'A row that cannot be calculated says why in its note; the others are not touched by it.',
  ],
  hurts: ['dust', 'heat', 'lifting', 'solvent', 'stability', 'strength'],
  limits: [{ text: 'estimates for planning: weigh each jacket before you lift it' }],
  related: ['PLAN', 'BUDGET', 'PADDING_CHOICE'],
  run: ({ table: rows }, settings, system) => {
    const collection = collectionTable(rows[0] ?? [], settings, system);
    if (isFault(collection)) return collection;
    const specimens = collection.named ? rows.slice(1) : rows;
    return [[...collection.header], ...specimens.map(collection.row)];
  },
});
