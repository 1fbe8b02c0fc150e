// Three feet on a thousand different specimens, and against the brute force of the tests; the other searches of the calculation beside it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformSync } from '@swc/core';
import { perCall } from './table.mjs';

const SPECIMENS = 1000;
/** Outlines that the brute force looks at, some 10 ms each. */
const OUTLINES = 60;
/** Too light to count as heavy [kg]. */
const LIGHT = 1;
const ROUNDS = 5;

/** Numbers from 0 to 1, the same in every run. */
const random = (seed) => () => {
  seed = (Math.imul(seed, 1664525) + 1013904223) | 0;
  return (seed >>> 0) / 2 ** 32;
};

/** Specimens from 10 cm to 1.5 m, up to four times as long as wide, with a balance point in the middle half. */
const specimens = () => {
  const next = random(20060401);
  return Array.from({ length: SPECIMENS }, () => {
    const length = 0.1 + 1.4 * next();
    const width = length / (1 + 3 * next() ** 2);
    return {
      length,
      width,
      height: 0.7 * width,
      balance: [((next() - 0.5) * length) / 2, ((next() - 0.5) * width) / 2],
    };
  });
};

/** The second way of the tests, which takes nothing from the calculation. */
const secondWay = () => {
  const source = readFileSync(join(import.meta.dirname, '../calculation/feet/brute-force.ts'), 'utf8');
  const { code } = transformSync(source, { jsc: { parser: { syntax: 'typescript' }, target: 'es2022' } });
  return import(`data:text/javascript,${encodeURIComponent(code)}`);
};

export const feet = async (compiled) => {
  const { feet: place } = await compiled('calculation/feet/feet.js');
  const { footSize } = await compiled('calculation/feet/foot.js');
  const { margin } = await compiled('calculation/feet/margin.js');
  const { ribHeight } = await compiled('calculation/strength/rib-height.js');
  const { layersNeeded } = await compiled('calculation/shell/layers-needed.js');
  const { DEFAULT_SETTINGS: s } = await compiled('calculation/settings.js');
  const { bruteForce } = await secondWay();
  const all = specimens();

  const mean = (call) => perCall((i) => call(all[i % SPECIMENS]), { calls: SPECIMENS, rounds: 9 }) / 1000;
  const milliseconds = (call) => {
    const begin = performance.now();
    call();
    return performance.now() - begin;
  };
  const best = (call) => Math.min(...Array.from({ length: ROUNDS }, () => milliseconds(call)));
  const sum = (values) => values.reduce((a, b) => a + b, 0);

  const balanced = mean(({ length, width }) => place(length, width, LIGHT, [0, 0], s));
  const off = mean(({ length, width, balance }) => place(length, width, LIGHT, balance, s));
  const slowest = Math.max(
    ...all.map(({ length, width, balance }) => best(() => place(length, width, LIGHT, balance, s))),
  );
  const against = all.slice(0, OUTLINES).map(({ length, width, balance }) => {
    const apart = footSize(s, length, width);
    const one = { length, width, box: false, offset: s.paddingThickness - apart / 2, apart, balance };
    const found = place(length, width, LIGHT, balance, s);
    let reached;
    return {
      byForce: milliseconds(() => {
        reached = bruteForce(one);
      }),
      byUs: best(() => place(length, width, LIGHT, balance, s)),
      share: margin(found, balance) / reached,
    };
  });
  const byForce = sum(against.map((one) => one.byForce));
  const rib = mean(({ length, width, height }) => ribHeight(length, width, height, 400 * length * width, 5, s));
  const needed = mean(({ length, width, height }) => layersNeeded(length, width, height, 600 * length * width, s));
  return [
    [`FEET, ${SPECIMENS} specimens, balanced`, balanced.toFixed(1), 'µs', 'aim 50 µs'],
    [`FEET, ${SPECIMENS} specimens, balance point in the middle half`, off.toFixed(1), 'µs', 'aim 100 µs'],
    ['FEET, the slowest of them', slowest.toFixed(2), 'ms', `best of ${ROUNDS}, aim 1 ms`],
    [
      `brute force, ${OUTLINES} of them`,
      (byForce / OUTLINES).toFixed(1),
      'ms',
      `${(byForce / sum(against.map((one) => one.byUs))).toFixed(0)} × FEET`,
    ],
    ['FEET, least margin', Math.min(...against.map((one) => one.share)).toFixed(5), '', 'of brute force, aim 0.999'],
    ['RIB_HEIGHT', rib.toFixed(2), 'µs', 'aim 200 µs'],
    ['LAYERS_NEEDED', needed.toFixed(2), 'µs', 'aim 200 µs'],
  ];
};
