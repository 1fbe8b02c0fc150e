import { expect, test } from 'vitest';
import { collectionJacket } from '../../../src/calculation/plans/collection.ts';
import { plan } from '../../../src/calculation/plans/plan.ts';
import { settings } from '../kit.ts';
import { INVENTED } from './thirty-specimens.ts';

const SHARED = [
  'padding',
  'layers',
  'shellArea',
  'plaster',
  'water',
  'mixes',
  'cloth',
  'sealer',
  'bolts',
  'weight',
  'wetWeight',
  'margin',
  'tipAngle',
  'safetyFactor',
  'ribHeight',
  'crew',
] as const;

test.each(INVENTED.map((one) => [one.element, one] as const))('%s: as in its plan', (_, one) => {
  const [length, width, height] = one.size.map((cm) => cm / 100) as [number, number, number];
  const specimen = { length, width, height, weight: one.weight };
  for (const padding of ['felt', 'foam'] as const) {
    const shop = settings({ shape: one.shape, reliefFactor: one.relief, padding });
    const [jacket, whole] = [collectionJacket(specimen, shop), plan(specimen, shop)];
    for (const key of SHARED) expect(jacket[key], key).toEqual(whole[key]);
    expect(jacket.feltSheets).toBe(padding === 'felt' ? whole.paddingSheets : 0);
    expect(jacket.foamSheets).toBe(padding === 'foam' ? whole.paddingSheets : 0);
  }
});
