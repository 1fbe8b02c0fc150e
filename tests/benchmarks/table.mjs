// Measuring and printing: every table stands beside a yardstick of the same run, so that runs of other machines can be compared.

/** Nanoseconds of one step of a loop of additions and roots: what this machine does right now. */
export const yardstick = () => {
  const steps = 2e7;
  let sum = 0;
  const begin = performance.now();
  for (let i = 1; i <= steps; i++) sum += Math.sqrt(i);
  const ns = ((performance.now() - begin) * 1e6) / steps;
  if (!(sum > 0)) throw new Error('the yardstick was optimised away');
  return ns;
};

export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Nanoseconds of one call: median of rounds, each of many calls on changing input, after a warm-up. */
export const perCall = (call, { calls = 20_000, rounds = 15 } = {}) => {
  let kept = 0;
  const round = () => {
    const begin = performance.now();
    for (let i = 0; i < calls; i++) kept += call(i) ? 1 : 0;
    return ((performance.now() - begin) * 1e6) / calls;
  };
  for (let i = 0; i < 5; i++) round();
  const result = median(Array.from({ length: rounds }, round));
  if (kept < 0) throw new Error('the calls were optimised away');
  return result;
};

/** Prints rows of what, measured, unit, beside (ratio or aim) as one table. */
export const print = (title, rows) => {
  console.log(`\n${title}`);
  const table = [['what', 'measured', 'unit', 'beside'], ...rows.map((row) => row.map(String))];
  const widths = [0, 1, 2, 3].map((c) => Math.max(...table.map((row) => (row[c] ?? '').length)));
  for (const row of table)
    console.log(
      widths
        .map((w, c) => (row[c] ?? '').padEnd(w))
        .join('  ')
        .trimEnd(),
    );
};
