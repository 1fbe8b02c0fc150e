/** Where the limits of validity lie: each holds just inside of its number and no more just outside. */
import { describe, expect, test } from 'vitest';
import { limits as feetLimits } from '../../src/calculation/feet/feet.ts';
import { limits as footLimits } from '../../src/calculation/feet/foot-pressure.ts';
import { limits as paddingLimits } from '../../src/calculation/feet/padding-pressure.ts';
import { resolveSettings, type Settings } from '../../src/calculation/settings.ts';
import { limits as bendingLimits } from '../../src/calculation/strength/bending.ts';
import { limits as strengthLimits } from '../../src/calculation/strength/strength.ts';

const plain = resolveSettings({}) as Settings;

/** A hundredth to either side: far above rounding, below the 3 % by which a constant might slip. */
const INSIDE = 0.99;
const OUTSIDE = 1.01;

interface Edge {
  readonly limit: { readonly text: string };
  /** Whether the limit holds where its quantity is this share of the number in its text. */
  readonly holds: (share: number) => boolean;
}

const named = <L extends { readonly text: string }>(list: readonly L[], words: string): L => {
  const found = list.find(({ text }) => text.includes(words));
  if (!found) throw new Error(`no limit says ${words}`);
  return found;
};

const slim = named(feetLimits, '20 times as long as wide');
const foot = named(footLimits, '4 times as long as wide');
const padding = named(paddingLimits, '7 kPa');
const quarters = named(bendingLimits, 'outer quarters');
const thin = named(strengthLimits, 'a tenth of half the width');
const curve = named(strengthLimits, 'half of the radius of the crown');

const EDGES: readonly Edge[] = [
  // Length 20 × width × share.
  { limit: slim, holds: (share) => slim.holds(20 * share, 1, 10, [0, 0], plain) },
  { limit: foot, holds: (share) => foot.holds(10, 0.4 * share, 0.1) },
  // 1 psi on 1 m²: 6894.757 Pa / 9.80665 m/s².
  { limit: padding, holds: (share) => padding.holds(1, 1, (6894.757 / 9.80665) * share, plain) },
  { limit: quarters, holds: (share) => quarters.holds(1, 10, 0.25 * share) },
  // The wall of 8 layers is 13 mm: half of the width and the padding must be ten times as much. The padding is 6.35 mm.
  {
    limit: thin,
    holds: (share) => thin.holds(4, 2 * (0.13 / share - 0.00635), 4, 10, 8, plain),
  },
  // The circle of a foot of 10 cm has a radius of 5.6419 cm; the crown's radius is length × width/(2 × height).
  {
    limit: curve,
    holds: (share) => curve.holds(0.6, 0.4, (0.24 / 2) * (share / (2 * 0.0564189584)), 10, 8, plain),
  },
];

describe.each(EDGES.map((edge) => [edge.limit.text, edge] as const))('%s', (_, edge) => {
  test('holds just inside', () => expect(edge.holds(INSIDE)).toBe(true));
  test('and no more just outside', () => expect(edge.holds(OUTSIDE)).toBe(false));
});
