/** Steps to a root, and when it is good enough [1, relative]. */
const ROOT_STEPS = 60;
const ROOT_ACCURACY = 1e-11;

/**
 * Root of a function that is at least 0 at `low` and below 0 at `high`: the Illinois method.
 *
 * @returns a place at which the function is at least 0, next to the root
 */
export const root = (f: (x: number) => number, low: number, high: number): number => {
  let atLow = f(low);
  if (!(atLow > 0)) return low;
  let atHigh = f(high);
  if (!(atHigh < 0)) return high;
  let from = low;
  let to = high;
  let side = 0;
  const enough = ROOT_ACCURACY * atLow;
  for (let step = 0; step < ROOT_STEPS && to - from > ROOT_ACCURACY * high && atLow > enough; step++) {
    // No weight on an end without a finite value: halve instead.
    const share = atHigh > -Infinity ? atLow / (atLow - atHigh) : 0.5;
    const x = from + share * (to - from);
    const y = f(x);
    if (y >= 0) {
      from = x;
      atLow = y;
      if (side === 1) atHigh /= 2;
      side = 1;
    } else {
      to = x;
      atHigh = y;
      if (side === -1) atLow /= 2;
      side = -1;
    }
  }
  return from;
};
