import { schedule } from '../calculation/plans/schedule.ts';
import { amount, isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { LAYERS, SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

const HEADER = ['step', 'starts (h)', 'lasts (h)'];

export default define({
  id: 'SCHEDULE',
  topic: 'jobs',
  question: 'When is each step done?',
  description: 'Table of the steps from preparing to sealing: when each starts and how long it lasts.',
  equation:
    'each step starts when the one before ends; lay-up = mixes of a half × working time, with foam one setting time between its mixes; dry = DRY_TIME; turn and clean = preparation time; seal = trim time',
  math: String.raw`\text{start}_{i+1} = \text{start}_i + \text{lasts}_i
\text{lay-up} = \text{mixes of the half} \times \text{working time} + \text{setting times between, with foam}`,
  arguments: { shell_area: single(SHELL_AREA), layers: single(LAYERS) },
  settings: true,
  result: { kind: 'table', what: 'step, starts and lasts (hours)', header: true },
  examples: [
    {
      args: [1, 8],
      value: [
        HEADER,
        ['prepare', 0, 1],
        ['lay up the first half', 1, 2 / 3],
        ['set', 5 / 3, 1],
        ['turn and clean', 8 / 3, 1],
        ['lay up the second half', 11 / 3, 2 / 3],
        ['set', 13 / 3, 1],
        ['trim', 16 / 3, 1],
        ['dry', 19 / 3, 57.31283256],
        ['seal', 63.6461659, 1],
      ],
    },
  ],
  basis: 'common practice',
  source:
    'common practice, no source: about 40 minutes to work a mix, about an hour covered while it sets, at least 24 hours of drying before sealing; preparation and trim time: assumptions; drying: see DRY_TIME',
  remarks: [
    'Hours of work and waiting one after the other, without nights and breaks; drying goes on by itself.',
    'Keep each half covered while it sets, for about an hour (common practice, no source).',
    'With foam the second mix follows within about an hour, on the wetted first (common practice, no source).',
    'The maker’s data sheet comes first for working and setting time.',
  ],
  hurts: ['heat', 'lifting', 'solvent'],
  limits: [{ text: 'times for planning; drying may take twice as long: dry is when two weighings a day apart agree' }],
  related: ['MIX_TABLE', 'MIXES', 'DRY_TIME'],
  run: ({ shell_area, layers }, settings) => {
    const steps = schedule(shell_area, layers, settings);
    if (isFault(steps)) return steps;
    return [HEADER, ...steps.map(({ step, starts, lasts }) => [step, amount(starts, 'hours'), amount(lasts, 'hours')])];
  },
});
