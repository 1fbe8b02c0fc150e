import { AUTHORITIES, dustLimit, FRACTIONS, SUBSTANCES } from '../calculation/handling/dust-limit.ts';
import { optional, single, word } from './calling/arguments.ts';
import { define } from './define.ts';

const AUTHORITY_WORDS = ['osha', 'niosh'] as const;

export default define({
  id: 'DUST_LIMIT',
  topic: 'handling',
  question: 'How much dust is allowed in the air?',
  description: 'Published limit for plaster or silica dust, in mg/m³.',
  equation: 'table: plaster OSHA 15 total and 5 respirable, NIOSH 10 and 5; silica respirable 0.05',
  math: String.raw`\text{plaster, OSHA: } 15\ \text{total},\ 5\ \text{respirable}
\text{plaster, NIOSH: } 10\ \text{total},\ 5\ \text{respirable}
\text{silica: } 0.05\ \text{respirable}`,
  arguments: {
    substance: single(word(SUBSTANCES, 'plaster or silica')),
    fraction: optional(single(word(FRACTIONS, 'total or respirable'))),
    authority: optional(single(word(AUTHORITY_WORDS, 'OSHA or NIOSH'))),
  },
  settings: false,
  result: { kind: 'number', quantity: 'dust', what: 'limit' },
  examples: [
    { args: ['plaster'], value: 15 },
    { args: ['plaster', 'total', 'NIOSH'], value: 10 },
    { args: ['silica'], value: 0.05 },
  ],
  basis: 'published',
  source: '29 CFR 1910.1000 table Z-1 and 1910.1053; NIOSH recommended exposure limits; local limits come first',
  remarks: ['Left out, the fraction is total for plaster and respirable for silica, the authority OSHA.'],
  hurts: ['dust'],
  limits: [{ text: 'limits of the United States; follow those of your country where they are lower' }],
  related: ['EXPOSURE'],
  run: ({ substance, fraction, authority }) =>
    dustLimit(substance, fraction ?? null, AUTHORITIES.find((one) => one.toLowerCase() === authority) ?? null),
});
