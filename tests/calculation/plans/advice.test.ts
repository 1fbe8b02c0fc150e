import { expect, test } from 'vitest';
import { advice } from '../../../src/calculation/plans/advice.ts';
import { plan } from '../../../src/calculation/plans/plan.ts';
import type { Specimen } from '../../../src/calculation/plans/specimen.ts';
import type { Given } from '../../../src/calculation/settings.ts';
import { layersNeeded } from '../../../src/calculation/shell/layers-needed.ts';
import { known, settings } from '../kit.ts';

const SMALL: Specimen = { length: 0.3, width: 0.25, height: 0.15, weight: 5 };
const TIBIA: Specimen = { length: 0.85, width: 0.22, height: 0.16, weight: 31 };
const SLAB: Specimen = { length: 1.2, width: 0.7, height: 0.025, weight: 48 };
const BLOCK: Specimen = { length: 1.8, width: 1.1, height: 0.45, weight: 1350 };
const BOX = { shape: 'box' } as const;

const told = (specimen: Specimen, given: Given = {}): string =>
  advice(plan(specimen, settings(given)), specimen, settings(given));

test('nothing out of line, nothing said', () => {
  expect(told(SMALL)).toBe('');
});

test('not stable: feet farther apart or lower, and the long ratio where that moved them in', () => {
  expect(told(TIBIA)).toMatch(/^Not stable on its feet: set them farther apart or lower, or set a higher long ratio;/);
  expect(told(SMALL, { leastTilt: 60 })).toBe('Not stable on its feet: set them farther apart or lower.');
  expect(told(TIBIA, { longRatio: 10 })).not.toContain('stable');
});

test('not strong enough: by which way, and how many layers would do', () => {
  const needed = known(layersNeeded(SLAB.length, SLAB.width, SLAB.height, SLAB.weight, settings(BOX)));
  expect(told(SLAB, BOX)).toContain(`Not strong enough over one foot: lay up ${needed} layers in all`);
  const enough = { ...BOX, leastLayers: needed - 1, mostLayers: 16 };
  expect(told(SLAB, enough)).not.toContain('strong enough');
});

test('a pallet where no number of layers is enough', () => {
  expect(told(BLOCK, BOX)).toContain('Not strong enough over one foot: carry it on a pallet;');
});

test('too weak while it is wet, though strong enough when dry', () => {
  expect(told({ length: 0.9, width: 0.6, height: 0.05, weight: 62 }, { ...BOX, padding: 'foam' })).toMatch(
    /^Too weak while it is wet: let it dry before it is turned or lifted;/,
  );
});

test('a rib higher than the feet', () => {
  const long: Specimen = { length: 3, width: 0.3, height: 0.1, weight: 200 };
  expect(told(long, { footHeight: 0, condition: 'wet', targetSafetyFactor: 4 })).toContain(
    'rib would stand out below the feet',
  );
});

test('heavier than the most layers are meant for, and too heavy for three people', () => {
  expect(told(BLOCK, BOX)).toContain('designed by an engineer; too heavy for three people: lift it with a hoist.');
  expect(told({ ...BLOCK, weight: 500 }, BOX)).not.toContain('engineer');
});
