/** Thirty invented specimens from a tooth to a pelvis, and the plan of each as a line of a table that people can read through. */
import { paddingChoice } from '../../../src/calculation/cloth/padding-choice.ts';
import { PLAN_ROWS } from '../../../src/calculation/plans/plan-rows.ts';
import { wholePlan } from '../../../src/calculation/plans/whole-plan.ts';
import { isFault, type Quantity, type Result } from '../../../src/calculation/result.ts';
import type { Shape } from '../../../src/calculation/settings.ts';
import { known, settings } from '../kit.ts';

export interface Invented {
  readonly element: string;
  /** Length, width, height [cm]. */
  readonly size: readonly [number, number, number];
  /** [kg] */
  readonly weight: number;
  readonly shape: Shape;
  readonly relief: number;
  readonly fragile: boolean;
}

const one = (
  element: string,
  length: number,
  width: number,
  height: number,
  weight: number,
  { shape = 'ellipsoid' as Shape, relief = 1, fragile = false } = {},
): Invented => ({ element, size: [length, width, height], weight, shape, relief, fragile });

export const INVENTED: readonly Invented[] = [
  one('tooth', 4, 2, 1.5, 0.02),
  one('tooth, large', 16, 6, 5, 0.5),
  one('claw', 12, 5, 3, 0.2),
  one('phalanx', 9, 6, 5, 0.5),
  one('skull, tiny', 8, 5, 4, 0.15, { fragile: true, relief: 1.3 }),
  one('vertebra, tail', 10, 9, 8, 1.1),
  one('vertebra, neck', 28, 20, 18, 9, { relief: 1.3 }),
  one('vertebra, back', 38, 34, 26, 32, { relief: 1.3 }),
  one('rib, thin', 60, 4, 2.5, 1.1, { shape: 'cylinder' }),
  one('rib', 95, 9, 5, 6, { shape: 'cylinder' }),
  one('rib, long', 160, 11, 6, 16, { shape: 'cylinder' }),
  one('rib, very long', 230, 14, 8, 40, { shape: 'cylinder' }),
  one('humerus', 62, 21, 14, 18),
  one('tibia', 85, 22, 16, 31),
  one('femur', 110, 28, 20, 68),
  one('femur, giant', 185, 52, 34, 390),
  one('scapula', 92, 30, 7, 19, { fragile: true }),
  one('jaw', 72, 17, 10, 13),
  one('foot in matrix', 52, 34, 16, 46),
  one('egg clutch', 55, 50, 26, 90),
  one('turtle shell', 50, 44, 22, 52),
  one('fish slab', 90, 60, 5, 62, { shape: 'box' }),
  one('leaf slab', 40, 32, 4, 12, { shape: 'box', fragile: true }),
  one('trackway slab', 140, 95, 9, 270, { shape: 'box' }),
  one('thin slab', 120, 70, 2.5, 48, { shape: 'box', fragile: true }),
  one('skull', 48, 26, 22, 26, { relief: 1.4 }),
  one('skull, crushed flat', 66, 46, 11, 42, { relief: 1.2, fragile: true }),
  one('skull, large', 120, 70, 60, 480, { relief: 1.4 }),
  one('pelvis', 125, 85, 48, 520, { relief: 1.3 }),
  one('block with skeleton', 180, 110, 45, 1350, { shape: 'box' }),
];

/** Units for reading: cm, mm, kg, L and so on. */
const PER_SI: Partial<Record<Quantity, number>> = {
  length: 100,
  thickness: 1000,
  bodyVolume: 1000,
  liquidVolume: 1000,
  bearing: 1e-3,
  shelfLoad: 1e-3,
};

const DIGITS = 4;

const shown = (value: Result<number | string | boolean>, quantity: Quantity | null): string => {
  if (isFault(value)) return `none: ${value.problem}`;
  if (typeof value !== 'number') return String(value);
  return String(Number((value * ((quantity && PER_SI[quantity]) ?? 1)).toPrecision(DIGITS)));
};

/** The table as text: one line a specimen; plaster, weight and safety factor with low and high. */
export const thirtySpecimens = (): string => {
  const header = ['element', 'length', 'width', 'height', 'weighs', 'shape', 'relief factor', 'fragile'];
  const spread = new Set(['plaster', 'weight', 'safetyFactor', 'tipAngle']);
  const columns = PLAN_ROWS.flatMap(({ of, label }) =>
    spread.has(of) ? [label, `${label} low`, `${label} high`] : [label],
  );
  const lines = INVENTED.map(({ element, size, weight, shape, relief, fragile }) => {
    const shop = settings({ shape, reliefFactor: relief });
    const [length, width, height] = size.map((cm) => cm / 100) as [number, number, number];
    const padding = known(paddingChoice(weight, fragile, relief > 1, shop));
    const whole = known(wholePlan({ length, width, height, weight }, padding, shop));
    const cells = PLAN_ROWS.flatMap(({ of, quantity }) => {
      const value = shown(whole.plan[of], quantity);
      const ends = whole.ends[of];
      return spread.has(of) && ends ? [value, shown(ends.low, quantity), shown(ends.high, quantity)] : [value];
    });
    return [element, ...size, weight, shape, relief, fragile, ...cells, whole.advice].join('\t');
  });
  return `${[...header, ...columns, 'advice'].join('\t')}\n${lines.join('\n')}\n`;
};
