/** Inputs for the drawing tests: specimens of an invented museum, worked out and labelled as a face would. */

import { cutList } from '../../src/calculation/cloth/cut-list.ts';
import { feet } from '../../src/calculation/feet/feet.ts';
import { footSize } from '../../src/calculation/feet/foot.ts';
import { footLoads } from '../../src/calculation/feet/foot-loads.ts';
import { margin } from '../../src/calculation/feet/margin.ts';
import type { Point } from '../../src/calculation/feet/points.ts';
import type { Given } from '../../src/calculation/settings.ts';
import { thickness } from '../../src/calculation/shell/thickness.ts';
import type { BarsInput } from '../../src/drawing/bars.ts';
import type { CutLayoutInput } from '../../src/drawing/cut-layout.ts';
import type { PlanInput } from '../../src/drawing/plan.ts';
import { known, settings } from '../calculation/kit.ts';

const cm = (metres: number): string => `${(100 * metres).toFixed(1)} cm`;
const kg = (mass: number): string => `${mass.toFixed(1)} kg`;

interface Specimen {
  readonly specimen: string;
  readonly size: readonly [length: number, width: number, height: number];
  readonly weight: number;
  readonly balance?: Point;
  readonly given?: Given;
  readonly layers?: number;
}

export const SPECIMENS: Readonly<Record<string, Specimen>> = {
  skull: { specimen: 'INV 1204 · skull', size: [0.6, 0.4, 0.3], weight: 40, balance: [0.05, 0.02] },
  slab: { specimen: 'INV 0077 · slab', size: [0.9, 0.7, 0.12], weight: 75, given: { shape: 'box' } },
  femur: { specimen: 'INV 3310 · femur', size: [1.5, 0.4, 0.3], weight: 60, balance: [0.05, 0], layers: 8 },
  small: { specimen: '', size: [0.2, 0.14, 0.1], weight: 3, layers: 4 },
};

export const planInput = (name: string, width: number): PlanInput => {
  const { specimen, size, weight, balance = [0, 0], given, layers = 6 } = SPECIMENS[name]!;
  const s = settings(given);
  const at = known(feet(size[0], size[1], weight, balance, s));
  const loads = known(footLoads(at, balance, weight));
  const shell = known(thickness(layers, s));
  const over = 2 * (s.paddingThickness + shell + s.flange);
  const distance = known(margin(at, balance));
  const reach = 0.3 * Math.tan((10 * Math.PI) / 180);
  const where = ([x, y]: Point) => `${cm(x)} along, ${cm(y)} across`;
  return {
    id: `plan-${name}`,
    width,
    size: [size[0], size[1]],
    settings: s,
    thickness: shell,
    feet: at,
    footSize: footSize(s, size[0], size[1]),
    balance,
    margin: distance,
    tipReach: reach,
    labels: {
      specimen,
      units: 'cm, kg',
      length: cm(size[0] + over),
      width: cm(size[1] + over),
      feet: [0, 1, 2].map((i) => ({
        place: where(at[i]!),
        load: kg(loads[i]!),
      })) as unknown as PlanInput['labels']['feet'],
      balance: where(balance),
      margin: cm(distance),
      tilt: '10°',
      tipReach: cm(reach),
    },
  };
};

export const cutInput = (name: string, width: number): CutLayoutInput => {
  const { size, given, layers = 6 } = SPECIMENS[name]!;
  const list = known(cutList(...size, layers, settings(given)));
  return {
    id: `cut-${name}`,
    width,
    list,
    labels: {
      roll: `${(100 * list.roll).toFixed(0)} cm`,
      length: `${list.layout.length.toFixed(2)} m`,
      sizes: list.cuts.map((cut) => `${(100 * cut.length).toFixed(0)} × ${(100 * cut.width).toFixed(0)} cm`),
      place: (along) => `${along.toFixed(2)} m`,
    },
  };
};

export const barsInput = (width: number): BarsInput => ({
  id: 'bars',
  width,
  title: 'Felt against foam',
  pairs: [
    {
      item: 'plaster',
      felt: { value: 16.55, low: 12.75, high: 22.67, label: '16.6 kg' },
      foam: { value: 16.55, low: 12.75, high: 22.67, label: '16.6 kg' },
    },
    { item: 'mixes', felt: { value: 2, low: 2, high: 4, label: '2' }, foam: { value: 4, low: 4, high: 4, label: '4' } },
    {
      item: 'padding sheets',
      felt: { value: 0.26, low: 0.22, high: 0.31, label: '0.26' },
      foam: { value: 0.26, low: 0.22, high: 0.31, label: '0.26' },
    },
    {
      item: 'weight with specimen',
      felt: { value: 40.1, low: 35.9, high: 46.2, label: '40.1 kg' },
      foam: { value: 39.5, low: 35.3, high: 45.6, label: '39.5 kg' },
    },
  ],
});
