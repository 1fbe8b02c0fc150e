/** The drawing of three feet for the active cell: of a plan with its jacket, or of the feet alone where a call knows no jacket. */

import { footSize } from '../calculation/feet/foot.ts';
import { footLoads } from '../calculation/feet/foot-loads.ts';
import { margin } from '../calculation/feet/margin.ts';
import { type Feet, MIDDLE, type Point } from '../calculation/feet/points.ts';
import { materials } from '../calculation/plans/materials.ts';
import { plan } from '../calculation/plans/plan.ts';
import { standing } from '../calculation/plans/standing.ts';
import { withChanges } from '../calculation/plans/with-changes.ts';
import { isFault, type Result } from '../calculation/result.ts';
import type { Padding, Settings } from '../calculation/settings.ts';
import { layers } from '../calculation/shell/layers.ts';
import { thickness } from '../calculation/shell/thickness.ts';
import { longerFirst } from '../calculation/size/longer-first.ts';
import { type PlanInput, planDrawing } from '../drawing/plan.ts';
import type { Drawing } from '../drawing/svg.ts';
import { fromSi, type UnitSystem, unitName } from '../functions/calling/units.ts';
import type { Explanation } from '../functions/define.ts';
import type { Account } from './account.ts';
import { estimate } from './numbers.ts';
import type { ScreenTools } from './screen.ts';
import { drawingFigure } from './table-element.ts';

/** What can be drawn. SI. */
export interface Standing {
  readonly size?: readonly [length: number, width: number];
  readonly settings: Settings;
  readonly thickness: number;
  readonly feet: Feet;
  readonly footSize: number;
  readonly balance: Point;
  /** [kg]; left out, loads are told as shares of the weight. */
  readonly weight?: number;
  /** Height of the balance point [m], where it is known. */
  readonly balanceHeight?: number;
  /** What the drawing takes for granted, in a sentence; blank where it is all known. */
  readonly remark: string;
}

const known = <T>(result: Result<T>): T | undefined => (isFault(result) ? undefined : result);

const ofPlan = ({ values, settings }: Explanation): Standing | undefined => {
  const { length, width, height, weight, padding } = values as Readonly<Record<string, number>> & { padding?: Padding };
  const own = known(padding ? withChanges(settings, { padding }) : settings);
  if (!own) return undefined;
  const specimen = { length: length!, width: width!, height: height!, weight: weight! };
  const whole = plan(specimen, own);
  const stands = standing(specimen, materials(specimen, own).laid, whole.weight, own);
  const [feet, wall, heavy, high] = [stands.feet, whole.thickness, whole.weight, stands.balanceHeight].map((one) =>
    known(one as Result<number | Feet>),
  ) as [Feet | undefined, number | undefined, number | undefined, number | undefined];
  if (!feet || wall === undefined || heavy === undefined || high === undefined) return undefined;
  return {
    size: longerFirst(length!, width!, own),
    settings: own,
    thickness: wall,
    feet,
    footSize: footSize(own, length!, width!),
    balance: MIDDLE,
    weight: heavy,
    balanceHeight: high,
    remark: '',
  };
};

const pointOf = (balance: unknown): Point => (Array.isArray(balance) ? (balance[0] as Point) : MIDDLE);

const ofFeet = ({ values, settings }: Explanation, result: Feet | undefined): Standing | undefined => {
  const { length, width, total_weight: weight } = values as Readonly<Record<string, number>>;
  const laid = known(layers(weight!, settings));
  const wall = laid === undefined ? undefined : known(thickness(laid + settings.coverLayers, settings));
  if (!result || wall === undefined) return undefined;
  return {
    size: longerFirst(length!, width!, settings),
    settings,
    thickness: wall,
    feet: result,
    footSize: footSize(settings, length!, width!),
    balance: pointOf(values.balance),
    weight: weight!,
    remark: `FEET is not told how thick the shell is: it is drawn with ${laid! + settings.coverLayers} layers.`,
  };
};

/** Calls that are told of feet and know no jacket. */
const ofGivenFeet = (id: string, { values, settings }: Explanation, result: unknown): Standing | undefined => {
  const feet = values.feet as Feet | undefined;
  if (!feet) return undefined;
  const across = (axis: 0 | 1): number => {
    const places = feet.map((point) => point[axis]);
    return Math.max(...places) - Math.min(...places);
  };
  const balance = id === 'BALANCE' ? result : values.balance;
  const height = values.balance_height;
  const weight = values.total_weight;
  return {
    settings,
    thickness: 0,
    feet,
    footSize: footSize(settings, across(0), across(1)),
    balance: pointOf(balance),
    ...(typeof weight === 'number' && { weight }),
    ...(typeof height === 'number' && { balanceHeight: height }),
    remark: 'Only the feet are known to this call, so the jacket itself is not drawn.',
  };
};

/** Numbers of a table of lengths in SI. */
const pointsOf = (answer: unknown, system: UnitSystem): Feet | undefined => {
  if (!Array.isArray(answer) || !answer.flat().every((one) => typeof one === 'number')) return undefined;
  const perMetre = fromSi(1, 'length', system);
  return (answer as number[][]).map((row) => row.map((one) => one / perMetre)) as unknown as Feet;
};

/** What can be drawn for a call, or undefined. */
export const standingOf = ({ f, answered }: Account): Standing | undefined => {
  if (!f || !answered?.told) return undefined;
  const { told, answer, system } = answered;
  if (f.id === 'PLAN') return ofPlan(told);
  const result = pointsOf(answer, system);
  if (f.id === 'FEET') return ofFeet(told, result);
  if (f.id === 'BALANCE' && !result) return undefined;
  return ofGivenFeet(f.id, told, result);
};

/** «9.7 cm left, 14.4 cm below» of the middle */
const placeWords = ([x, y]: Point, far: (by: number) => string): string => {
  const words: string[] = [];
  if (x !== 0) words.push(`${far(x)} ${x < 0 ? 'left' : 'right'}`);
  if (y !== 0) words.push(`${far(y)} ${y < 0 ? 'below' : 'above'}`);
  return words.length ? `${words.join(', ')} of the origin` : 'at the origin';
};

/** @returns the drawing at a width, in the units of the sheet; undefined where the feet have no margin */
export const standingDrawing = (
  stands: Standing,
  system: UnitSystem,
  id: string,
  width: number,
): Drawing | undefined => {
  const { size, settings, feet, balance, weight, balanceHeight } = stands;
  const inside = known(margin(feet, balance));
  if (inside === undefined) return undefined;
  const far = (by: number): string => estimate(fromSi(Math.abs(by), 'length', system), 'length', system);
  const loads = known(footLoads(feet, balance, weight ?? 1));
  const load = (i: number): string => {
    if (!loads) return '?';
    return weight === undefined
      ? `${Math.round(100 * loads[i]!)} %`
      : estimate(fromSi(loads[i]!, 'mass', system), 'mass', system);
  };
  const ends = (axis: 0 | 1): number => {
    const places = [...feet, balance].map((point) => point[axis]);
    return Math.max(...places) - Math.min(...places) + stands.footSize;
  };
  const around = 2 * (settings.paddingThickness + stands.thickness + settings.flange);
  const [long, wide] = size ? [size[0] + around, size[1] + around] : [ends(0), ends(1)];
  const reach = (balanceHeight ?? 0) * Math.tan((settings.leastTilt * Math.PI) / 180);
  const input: PlanInput = {
    id,
    width,
    ...(size && { size }),
    settings,
    thickness: stands.thickness,
    feet,
    footSize: stands.footSize,
    balance,
    margin: inside,
    tipReach: reach,
    labels: {
      specimen: '',
      units: `${unitName('length', system)}, ${weight === undefined ? 'shares' : unitName('mass', system)}`,
      length: far(long!),
      width: far(wide!),
      feet: [0, 1, 2].map((i) => ({
        place: placeWords(feet[i]!, far),
        load: load(i),
      })) as unknown as PlanInput['labels']['feet'],
      balance: placeWords(balance, far),
      margin: inside < 0 ? `−${far(inside)}` : far(inside),
      tilt: `${settings.leastTilt}°`,
      tipReach: balanceHeight === undefined ? 'needs the height of the balance point' : far(reach),
    },
  };
  return planDrawing(input);
};

/**
 * The drawing for one call of the active cell with its table and what can be done with it; undefined where there is nothing to draw.
 *
 * @param number which of the drawings of the page it is, from 1
 */
export const cellDrawing = (account: Account, number: number, tools: ScreenTools): HTMLElement | undefined => {
  const stands = standingOf(account);
  if (!stands) return undefined;
  const { system } = account.answered!;
  const figure = drawingFigure(
    stands.size ? 'The plan from above, true to scale' : 'The three feet from above, true to scale',
    `cell-feet-${number}`,
    (id, width) => standingDrawing(stands, system, id, width),
    tools,
  );
  if (figure && stands.remark !== '') {
    const remark = document.createElement('p');
    remark.className = 'faint';
    remark.textContent = stands.remark;
    figure.append(remark);
  }
  return figure;
};
