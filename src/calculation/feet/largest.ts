/** Ratio of the golden section [1]. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function with one hill is largest: golden section.
 *
 * @param f the function
 * @param middle middle of the interval
 * @param reach how far it goes to both sides
 * @param cuts each leaves 0.618 of the interval
 */
export const largest = (f: (x: number) => number, middle: number, reach: number, cuts: number): number => {
  let from = middle - reach;
  let to = middle + reach;
  let low = to - GOLDEN * (to - from);
  let high = from + GOLDEN * (to - from);
  let atLow = f(low);
  let atHigh = f(high);
  for (let i = 0; i < cuts; i++) {
    if (atLow > atHigh) {
      to = high;
      high = low;
      atHigh = atLow;
      low = to - GOLDEN * (to - from);
      atLow = f(low);
    } else {
      from = low;
      low = high;
      atLow = atHigh;
      high = from + GOLDEN * (to - from);
      atHigh = f(high);
    }
  }
  return atLow > atHigh ? low : high;
};
