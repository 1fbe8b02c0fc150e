// Whole jobs: a plan, a collection of many specimens, a cut list, in Node.
import { median, perCall } from './table.mjs';

const HEADER = ['no', 'length', 'width', 'height', 'weight'];

/** Specimens from a tooth to a pelvis, none twice the same. */
const specimens = (count) => [
  HEADER,
  ...Array.from({ length: count }, (_, i) => {
    const [length, width, height] = [10 + ((i * 7) % 120), 5 + ((i * 3) % 40), 3 + ((i * 5) % 25)].map(
      (x) => x + (i % 13) / 13,
    );
    return [i + 1, length, width, height, (length * width * height) / 1000];
  }),
];

export const jobs = async (compiled) => {
  const { functions } = await compiled('functions/index.js');
  const named = (id) => functions.find((f) => f.id === id);
  const seconds = (rows, times) => {
    const table = specimens(rows);
    const runs = Array.from({ length: times }, () => {
      const begin = performance.now();
      if (named('COLLECTION').call([table]).length !== rows + 1) throw new Error('a collection of another length');
      return (performance.now() - begin) / 1000;
    });
    return median(runs).toFixed(2);
  };
  const plan = perCall((i) => named('PLAN').call([60 + (i % 50), 30, 20, 15]).length > 0, { calls: 50, rounds: 7 });
  const cuts = perCall((i) => named('CUT_LIST').call([60 + (i % 50), 40, 30, 8]).length > 0, { calls: 20, rounds: 5 });
  return [
    ['COLLECTION, 10,000 specimens', seconds(10_000, 5), 's', 'aim 1 s'],
    ['COLLECTION, 50,000 specimens', seconds(50_000, 3), 's', 'aim 4 s'],
    ['PLAN with low and high', (plan / 1e6).toFixed(2), 'ms', ''],
    ['CUT_LIST of a medium jacket', (cuts / 1e6).toFixed(2), 'ms', 'aim 5 ms for 200 pieces'],
  ];
};
