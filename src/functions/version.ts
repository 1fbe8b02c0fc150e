import { VERSION } from '../calculation/version.ts';
import { define } from './define.ts';

export default define({
  id: 'VERSION',
  topic: 'about',
  question: 'Which version calculated this?',
  description: 'Version of the calculation.',
  equation: 'none',
  arguments: {},
  settings: false,
  result: { kind: 'text', what: 'version of the calculation' },
  examples: [{ args: [], value: VERSION }],
  basis: 'derived',
  source: 'the change log says what changed from one version to the next, and who must recalculate',
  related: ['SOURCE'],
  run: () => VERSION,
});
