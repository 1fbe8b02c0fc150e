/** Each limit: a number just within it calls for nothing, a number just beyond it for one caution with figure, limit, source and what to do. */
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../src/texts/cautions.ts';
import { type Figures, HARM_TEMPERATURE, liveCautions, type Say } from '../../src/texts/live-cautions.ts';
import { settings } from '../calculation/kit.ts';

const say: Say = (value, quantity) => `${Number(value.toPrecision(3))} ${quantity}`;
const found = (figures: Figures, given = {}) => liveCautions(figures, settings(given), say);

const EDGES: readonly (readonly [about: string, within: Figures, beyond: Figures])[] = [
  ['wet weight', { load: { name: 'wet weight', weight: 23 } }, { load: { name: 'wet weight', weight: 23.1 } }],
  // Half a metre of reach is left by a load 60 cm wide: 23·25/50.
  ['load', { load: { name: 'load', weight: 11.5, width: 0.6 } }, { load: { name: 'load', weight: 11.6, width: 0.6 } }],
  ['load', { load: { name: 'load', crew: 1 } }, { load: { name: 'load', crew: 2 } }],
  ['margin', { margin: 0.001 }, { margin: 0 }],
  ['tip angle', { tipAngle: 10 }, { tipAngle: 9.99 }],
  ['tip angle', { stable: true }, { stable: false }],
  ['safety factor', { safetyFactor: 2 }, { safetyFactor: 1.99 }],
  ['safety factor when made', { safetyFactorWhenMade: 1 }, { safetyFactorWhenMade: 0.99 }],
  ['mix temperature', { mixTemperature: HARM_TEMPERATURE }, { mixTemperature: 45.1 }],
  ['foot pressure', { footPressure: 6894 }, { footPressure: 6895 }],
  ['pressure on the padding', { paddingPressure: 6894 }, { paddingPressure: 6895 }],
  ['shelf load', { shelfLoad: 6000 }, { shelfLoad: 6001 }],
  ['lifting index', { liftIndex: 1 }, { liftIndex: 1.01 }],
  ['exposure to dust', { exposure: 0.05 }, { exposure: 0.051 }],
  ['weight of the specimen', { specimenWeight: 500 }, { specimenWeight: 501 }],
  ['lift', {}, { noLift: 'the limit is 0' }],
  ['strength', {}, { tooWeak: 'no rib is enough' }],
];

describe.each(EDGES)('%s', (about, within, beyond) => {
  it('calls for nothing within its limit', () => {
    expect(found(within)).toEqual([]);
  });

  it('calls for one caution beyond it, with figure, limit, source and what to do', () => {
    const all = found(beyond);
    expect(all.map((one) => one.about)).toEqual([about]);
    const { id, figure, limit, source, todo, excess } = all[0]!;
    expect(CAUTIONS.map((one) => one.id)).toContain(id);
    for (const text of [figure, limit, source, todo]) {
      expect(text).toMatch(/^[A-Z0-9].*\.$/);
      expect(text).not.toMatch(/!|undefined|NaN|\bis safe\b|safely|brand/);
    }
    expect(source).toMatch(/\((published|derived|common practice|assumption|memory)\)/);
    expect(excess).toBeGreaterThanOrEqual(1);
  });
});

describe('what they say', () => {
  it('names the figure and all limits of a load', () => {
    const [one] = found({ load: { name: 'wet weight', weight: 40 } });
    expect(one!.figure).toBe('Wet weight about 40 mass: a hoist.');
    expect(one!.limit).toBe('23 mass for one person held close, 30.7 mass for two together, 34.5 mass for three.');
    expect(one!.todo).toContain('hoist');
  });

  it('says where a limit was set by hand', () => {
    expect(found({ tipAngle: 12 }, { leastTilt: 15 })[0]!.source).toBe('Least tilt set by you.');
    expect(found({ tipAngle: 8 })[0]!.source).toContain('IEC 60601-1');
  });

  it('goes further above a lifting index of 3', () => {
    expect(found({ liftIndex: 3.1 })[0]!.todo).toContain('Do not lift it alone');
    expect(found({ liftIndex: 3 })[0]!.todo).not.toContain('Do not lift it alone');
  });

  it('tells all limits of dust that are passed', () => {
    const limit = (exposure: number) => found({ exposure })[0]!.limit;
    expect(limit(1)).toBe('Passed: 0.05 dust for fine crystalline silica.');
    expect(limit(16)).toContain('15 dust for all plaster dust.');
  });

  it('leaves the tip angle to the margin where it tips at rest', () => {
    expect(found({ margin: -0.03, tipAngle: -5 }).map((one) => one.about)).toEqual(['margin']);
  });

  it('gives no unit to a number whose unit is not known', () => {
    expect(found({ margin: -0.03, unitUnknown: true })[0]!.figure).toContain('-0.03 (in the unit of the feet)');
  });
});
