import type { Quantity } from '../result.ts';
import type { Plan } from './plan.ts';

export interface PlanRow {
  readonly of: keyof Plan;
  readonly label: string;
  /** null for words and for TRUE or FALSE. */
  readonly quantity: Quantity | null;
}

const row = (of: keyof Plan, label: string, quantity: Quantity | null): PlanRow => ({ of, label, quantity });

/** Rows of a plan in the order in which they are shown; the advice comes after them. */
export const PLAN_ROWS: readonly PlanRow[] = [
  row('padding', 'padding', null),
  row('surfaceArea', 'surface area', 'area'),
  row('volume', 'volume', 'bodyVolume'),
  row('seam', 'seam', 'length'),
  row('shellArea', 'shell area', 'area'),
  row('layers', 'layers', 'count'),
  row('meanLayers', 'mean layers', 'count'),
  row('thickness', 'thickness', 'thickness'),
  row('outerLength', 'outer length', 'length'),
  row('outerWidth', 'outer width', 'length'),
  row('outerHeight', 'outer height', 'length'),
  row('plaster', 'plaster', 'mass'),
  row('water', 'water', 'mass'),
  row('slurry', 'slurry', 'liquidVolume'),
  row('mixes', 'mixes', 'count'),
  row('mixTemperature', 'mix temperature', 'temperature'),
  row('cloth', 'cloth', 'clothLength'),
  row('paddingSheets', 'padding sheets', 'count'),
  row('sealer', 'sealer', 'liquidVolume'),
  row('weight', 'weight', 'mass'),
  row('wetWeight', 'wet weight', 'mass'),
  row('dryingTime', 'drying time', 'hours'),
  row('footSize', 'foot size', 'length'),
  row('margin', 'margin', 'length'),
  row('balanceHeight', 'balance height', 'length'),
  row('tipAngle', 'tip angle', 'angle'),
  row('stable', 'stable', null),
  row('largestFootLoad', 'largest foot load', 'mass'),
  row('footPressure', 'foot pressure', 'bearing'),
  row('safetyFactor', 'safety factor', 'ratio'),
  row('weakest', 'weakest', null),
  row('safetyFactorWhenMade', 'safety factor when made', 'ratio'),
  row('strongEnough', 'strong enough', null),
  row('ribHeight', 'rib height', 'length'),
  row('bolts', 'bolts', 'count'),
  row('turnWeight', 'turn weight', 'mass'),
  row('shelfLoad', 'shelf load', 'shelfLoad'),
  row('crew', 'crew', 'count'),
];

/** Label of the last row. */
export const ADVICE = 'advice';
