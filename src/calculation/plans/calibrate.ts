import { amount, finite, isAtLeastZero, isFault, mustNotBeNegative, noAnswer, type Result, wrong } from '../result.ts';
import { studentT } from './student-t.ts';

/** Share of the intervals that hold the true ratio [1]. Convention. */
export const CONFIDENCE = 0.95;

/** Fewest jobs that an interval can rest on [1]. One job says nothing of the spread. */
export const LEAST_JOBS = 2;

/** What was used over what was estimated, with its interval and the number of jobs it rests on. */
export interface Calibration {
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  readonly jobs: number;
}

type Cells = readonly (number | null)[];

/** Pairs of which both numbers are there and above 0; a host may hand a blank over as 0. */
export const jobsOf = (estimated: Cells, used: Cells): readonly (readonly [estimated: number, used: number])[] =>
  estimated.flatMap((x, i) => {
    const y = used[i] ?? null;
    return x !== null && y !== null && x !== 0 && y !== 0 ? [[x, y] as const] : [];
  });

/**
 * Calibration of an estimate by jobs that were done: the ratio estimator and its 95 % interval.
 *
 * R = Σused/Σestimated; R ± t·√(Σ(used − R·estimated)²/(n − 1)/n)/mean estimated, Student's t of n − 1 degrees of freedom.
 *
 * @param estimated what was estimated for each job; null or 0 is a blank [any unit]
 * @param used what was really used, in the same order [the same unit]
 * @returns ratio, ends of its interval (the low one at least 0), number of jobs [1]
 * Limits: two jobs or more, as like as the jobs to come; the interval is wide for few, and a little too narrow for jobs of very unlike sizes.
 * Source: W. G. Cochran, Sampling Techniques, 3rd edition, chapter 6.
 * Example: 10, 20, 30 estimated, 11, 24, 33 used: 1.1333, 0.9841 to 1.2826.
 */
export const calibrate = (estimated: Cells, used: Cells): Result<Calibration> => {
  if (estimated.length !== used.length)
    return wrong('used', 'has {used} cells, estimated has {estimated}; give ranges of one size', {
      used: amount(used.length, 'count'),
      estimated: amount(estimated.length, 'count'),
    });
  if (!estimated.every((x) => x === null || isAtLeastZero(x))) return mustNotBeNegative('estimated');
  if (!used.every((y) => y === null || isAtLeastZero(y))) return mustNotBeNegative('used');
  const pairs = jobsOf(estimated, used);
  const jobs = pairs.length;
  if (jobs < LEAST_JOBS)
    return noAnswer(
      'jackets with both numbers: {jobs}, and it needs {least} or more; note what the next jacket really takes',
      { jobs: amount(jobs, 'count'), least: amount(LEAST_JOBS, 'count') },
    );
  // In shares of the largest, so that no sum or square of extreme numbers overflows.
  const largestX = pairs.reduce((most, [x]) => Math.max(most, x), 0);
  const largestY = pairs.reduce((most, [, y]) => Math.max(most, y), 0);
  let sumX = 0;
  let sumY = 0;
  for (const [x, y] of pairs) {
    sumX += x / largestX;
    sumY += y / largestY;
  }
  const ratio = sumY / sumX;
  let squares = 0;
  for (const [x, y] of pairs) squares += (y / largestY - ratio * (x / largestX)) ** 2;
  const error = Math.sqrt(squares / (jobs - 1) / jobs) / (sumX / jobs);
  const spread = error === 0 ? 0 : studentT(CONFIDENCE, jobs - 1) * error;
  const scaled = (share: number): Result<number> => finite((share * largestY) / largestX);
  const [middle, low, high] = [scaled(ratio), scaled(Math.max(0, ratio - spread)), scaled(ratio + spread)];
  for (const end of [middle, low, high]) if (isFault(end)) return end;
  return { ratio: middle as number, low: low as number, high: high as number, jobs };
};
