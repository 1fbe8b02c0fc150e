import { measure } from '../calculation/size/measure.ts';
import { text } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'MEASURE',
  topic: 'size',
  question: 'How do I use sizes that are written as text?',
  description: 'Reads a size written with its unit, such as 17 1/2 in or 44.5 cm.',
  equation: 'feet, inches and fractions, or a metric length, to the length unit in force',
  math: String.raw`\text{size} = 12\,\text{ft} + \text{in} + \frac{\text{numerator}}{\text{denominator}}, \quad 1\,\text{in} = 2.54\,\text{cm}`,
  arguments: { text: text('a size with its unit, such as 17 1/2 in') },
  settings: true,
  result: { kind: 'number', quantity: 'length', what: 'the size as a number' },
  examples: [
    { args: ['17 1/2 in'], value: 44.45 },
    { args: ['2 ft 3 in', 'us'], value: 27 },
    { args: ['445 mm'], value: 44.5 },
  ],
  basis: 'published',
  source: 'international inch and foot, agreement of 1959; NIST SP 811',
  remarks: [
    'Reads in, ft, mm, cm and m, the marks ′ and ″, fractions such as 1/2 or ½, and a decimal comma or point.',
    'A bare number is refused, since it does not tell its unit.',
  ],
  related: ['AREA'],
  run: ({ text }) => measure(text),
});
