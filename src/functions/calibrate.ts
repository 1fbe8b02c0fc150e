import { calibrate, jobsOf } from '../calculation/plans/calibrate.ts';
import { isFault } from '../calculation/result.ts';
import { numbers } from './calling/arguments.ts';
import { define } from './define.ts';

/** Numbers of jackets that are told as few. Our own choice: from five on, t is within half as much again of its least. */
const FEW = [2, 3, 4];

export default define({
  id: 'CALIBRATE',
  topic: 'jobs',
  question: 'How far off are the estimates in your shop?',
  description: 'What was used over what was estimated, and its 95 % interval: the three calibration settings.',
  equation:
    'R = Σused/Σestimated; R ± t·√(Σ(used − R·estimated)²/(n − 1)/n)/mean estimated, Student’s t of n − 1 degrees of freedom; low end at least 0',
  math: String.raw`R = \frac{\sum u_i}{\sum e_i}
R \pm \frac{t_{n-1}}{\bar{e}}\sqrt{\frac{\sum\left(u_i - R\,e_i\right)^2}{n\left(n - 1\right)}}
u_i = \text{used}, \quad e_i = \text{estimated}, \quad n = \text{jobs}`,
  arguments: {
    estimated: numbers('mass', 'the plaster estimated for each jacket, or any one material', { zero: true }),
    used: numbers('mass', 'what each jacket really took, in the same unit', { zero: true }),
  },
  settings: false,
  result: { kind: 'table', what: 'ratio, low and high end of its interval, side by side', header: false },
  examples: [
    {
      args: [
        [[10], [20], [30]],
        [[11], [24], [33]],
      ],
      value: [[1.133333333, 0.9840552351, 1.282611432]],
    },
  ],
  basis: 'published',
  source: 'ratio estimator, Cochran, Sampling Techniques, 3rd edition, chapter 6',
  remarks: [
    'It rests on the jackets that have both numbers; rows in which one is blank or 0 are left out.',
    'Compare estimates made with calibration 1, and put the three numbers into calibration, calibration low and calibration high.',
    'Use it for jackets like those that it rests on.',
  ],
  limits: [
    ...FEW.map((few) => ({
      text: `five jackets or more: it rests on ${few}, so its interval is wide and narrows with each one you add`,
      holds: ({ estimated, used }: { estimated: (number | null)[]; used: (number | null)[] }) =>
        jobsOf(estimated, used).length !== few,
    })),
    { text: 'two jackets or more; the interval is a little too narrow for jackets of very unlike sizes' },
  ],
  related: ['PLASTER', 'SETTINGS'],
  run: ({ estimated, used }) => {
    const found = calibrate(estimated, used);
    return isFault(found) ? found : [[found.ratio, found.low, found.high]];
  },
});
