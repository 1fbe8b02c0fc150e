/** The drawings of a plan, at the width that they are shown at. */
import { cutList } from '../calculation/cloth/cut-list.ts';
import type { Feet } from '../calculation/feet/points.ts';
import { isFault } from '../calculation/result.ts';
import { type Bar, barsDrawing } from '../drawing/bars.ts';
import { cutLayoutDrawing } from '../drawing/cut-layout.ts';
import { planDrawing } from '../drawing/plan.ts';
import type { Drawing } from '../drawing/svg.ts';
import { type Answer, isCellError, isRows } from '../functions/calling/cell.ts';
import { fromSi, toSi, unitName } from '../functions/calling/units.ts';
import { cutLines, rollWords } from './cut-lines.ts';
import { type JacketPlan, planCell, rowOf } from './jacket-plan.ts';
import { lineOf, reading } from './reading.ts';
import { rowsBelowHeader } from './worked.ts';

/** The specimen as drawings name it. */
export const specimenWords = ({ form: { number, element } }: JacketPlan): string =>
  [number, element]
    .map((text) => text.trim())
    .filter(Boolean)
    .join(' · ');

/** A number of the plan in SI, or undefined where it has no answer. */
const inSi = ({ plan, system }: JacketPlan, label: string): number | undefined => {
  const { answer } = planCell(plan, label);
  return typeof answer === 'number' ? toSi(answer, rowOf(label).quantity ?? 'count', system) : undefined;
};

const isNumbers = (answer: Answer): answer is number[][] =>
  isRows(answer) && answer.flat().every((cell) => typeof cell === 'number');

/** «9.7 cm left, 14.4 cm below the middle» */
const placeWords = (x: number, y: number, { system }: JacketPlan): string => {
  const far = (by: number): string => reading(Math.abs(by), 'length', system);
  const words: string[] = [];
  if (Math.abs(x) > 0) words.push(`${far(x)} ${x < 0 ? 'left' : 'right'}`);
  if (Math.abs(y) > 0) words.push(`${far(y)} ${y < 0 ? 'below' : 'above'}`);
  return words.length ? `${words.join(', ')} of the middle` : 'the middle';
};

/** The plan from above; undefined where the feet have no answer. */
export const feetDrawing = (jacket: JacketPlan, id: string, width: number): Drawing | undefined => {
  const { system, settings, sizes, feet, loads } = jacket;
  const [thickness, footSize, margin, height] = ['thickness', 'foot size', 'margin', 'balance height'].map((label) =>
    inSi(jacket, label),
  );
  if (thickness === undefined || footSize === undefined || margin === undefined || height === undefined)
    return undefined;
  if (!isNumbers(feet.answer) || !isNumbers(loads.answer)) return undefined;
  const loadCells = loads.answer;
  const shown = feet.answer as [number, number][];
  const reach = height * Math.tan((settings.leastTilt * Math.PI) / 180);
  return planDrawing({
    id,
    width,
    size: [toSi(sizes.length, 'length', system), toSi(sizes.width, 'length', system)],
    settings,
    thickness,
    feet: shown.map((point) => point.map((one) => toSi(one, 'length', system))) as unknown as Feet,
    footSize,
    balance: [0, 0],
    margin,
    tipReach: reach,
    labels: {
      specimen: specimenWords(jacket),
      units: `${unitName('length', system)}, ${unitName('mass', system)}`,
      length: lineOf(jacket, 'outer length').value,
      width: lineOf(jacket, 'outer width').value,
      feet: shown.map(([x, y], i) => ({
        place: placeWords(x, y, jacket),
        load: reading(loadCells[i]![0]!, 'mass', system),
      })) as unknown as Parameters<typeof planDrawing>[0]['labels']['feet'],
      balance: 'the middle, until it is weighed on its feet',
      margin: lineOf(jacket, 'margin').value,
      tilt: `${settings.leastTilt}°`,
      tipReach: reading(fromSi(reach, 'length', system), 'length', system),
    },
  });
};

/** The pieces on the roll; undefined where the list has no answer. */
export const layoutDrawing = (jacket: JacketPlan, id: string, width: number): Drawing | undefined => {
  const { system, settings, sizes, plan } = jacket;
  const layers = planCell(plan, 'layers').answer;
  if (typeof layers !== 'number') return undefined;
  const [length, across, height] = [sizes.length, sizes.width, sizes.height].map((size) =>
    toSi(size, 'length', system),
  );
  const list = cutList(length!, across!, height!, layers + settings.coverLayers, settings);
  if (isFault(list)) return undefined;
  return cutLayoutDrawing({
    id,
    width,
    list,
    labels: {
      roll: reading(fromSi(list.roll, 'length', system), 'length', system),
      length: rollWords(jacket),
      sizes: cutLines(jacket).map(({ size }) => size),
      place: (along) => reading(fromSi(along, 'clothLength', system), 'clothLength', system),
    },
  });
};

/** Rows of the comparison that are drawn. */
const COMPARED = ['plaster', 'cloth', 'mixes', 'weight', 'wet weight', 'safety factor'];

/** Columns of COMPARE, from 0: felt, foam, and where the ends of each stand. */
const FELT = { value: 1, low: 5, high: 6 } as const;
const FOAM = { value: 2, low: 7, high: 8 } as const;

/** Felt against foam; undefined where there is no comparison. */
export const compareDrawing = (jacket: JacketPlan, id: string, width: number): Drawing | undefined => {
  const { compare, system } = jacket;
  const pairs = rowsBelowHeader(compare)
    .filter(([item]) => COMPARED.includes(String(item)))
    .map((row) => {
      const item = String(row[0]);
      const { quantity } = rowOf(item);
      const bar = ({ value, low, high }: typeof FELT | typeof FOAM): Bar => {
        const cell = row[value] as number;
        const end = (at: number) => (typeof row[at] === 'number' ? (row[at] as number) : undefined);
        const [from, to] = [end(low), end(high)];
        return {
          value: typeof cell === 'number' ? cell : 0,
          ...(from === undefined ? {} : { low: from }),
          ...(to === undefined ? {} : { high: to }),
          label: isCellError(cell) ? cell.code : reading(cell, quantity, system, item),
        };
      };
      return { item, felt: bar(FELT), foam: bar(FOAM) };
    });
  return pairs.length ? barsDrawing({ id, width, title: 'Felt against foam', pairs }) : undefined;
};
