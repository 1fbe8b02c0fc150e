import { exposure } from '../calculation/handling/exposure.ts';
import { wrong } from '../calculation/result.ts';
import { numbers } from './calling/arguments.ts';
import { define } from './define.ts';

/** Rows in which both cells are blank are left out. */
const filled = (levels: readonly (number | null)[], hours: readonly (number | null)[]) => {
  const kept = Math.max(levels.length, hours.length);
  return Array.from({ length: kept }, (_, i) => i).filter(
    (i) => (levels[i] ?? null) !== null || (hours[i] ?? null) !== null,
  );
};

export default define({
  id: 'EXPOSURE',
  topic: 'handling',
  question: 'How much dust is that over the day?',
  description: 'Average exposure over 8 hours from levels and their hours.',
  equation: 'Σ level × hours / 8',
  math: String.raw`\text{average} = \frac{\sum C_i\,T_i}{8\,\text{h}}
C_i = \text{levels}, \quad T_i = \text{hours}`,
  arguments: {
    levels: numbers('dust', 'the level in each part of the day', { zero: true }),
    hours: numbers('hours', 'how long each part lasts', { zero: true }),
  },
  settings: false,
  result: { kind: 'number', quantity: 'dust', what: '8-hour average, in the unit of the levels' },
  examples: [
    {
      args: [
        [[10], [2]],
        [[2], [3]],
      ],
      value: 3.25,
    },
  ],
  basis: 'published',
  source: '29 CFR 1915.1000, computation formula',
  hurts: ['dust'],
  limits: [{ text: 'an estimate for planning: only a measurement tells an exposure' }],
  related: ['DUST_LIMIT'],
  run: ({ levels, hours }) => {
    const rows = filled(levels, hours);
    if (levels.length === hours.length)
      for (const i of rows) {
        if (levels[i] === null)
          return wrong('levels:', `cell ${i + 1} is blank, but hours has a number there; fill in both`);
        if (hours[i] === null)
          return wrong('hours:', `cell ${i + 1} is blank, but levels has a number there; fill in both`);
      }
    else return wrong('hours', `has ${hours.length} cells, levels has ${levels.length}; give ranges of one size`);
    return exposure(
      rows.map((i) => levels[i]!),
      rows.map((i) => hours[i]!),
    );
  },
});
