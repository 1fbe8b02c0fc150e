import { describe, expect, it } from 'vitest';
import { schedule } from '../../../src/calculation/plans/schedule.ts';
import type { Given } from '../../../src/calculation/settings.ts';
import { LEAST_DRYING } from '../../../src/calculation/weight/dry-time.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, settings } from '../kit.ts';

const lasting = (step: string, given: Given, area = 1) =>
  known(schedule(area, 8, settings(given)))
    .filter((row) => row.step === step)
    .map(({ lasts }) => lasts);

describe('schedule', () => {
  it('gives the steps of the contract, the last of them as in EXAMPLES 4.9', () => {
    const steps = known(schedule(1, 8, settings()));
    expect(steps.map(({ step }) => step)).toEqual([
      'prepare',
      'lay up the first half',
      'set',
      'turn and clean',
      'lay up the second half',
      'set',
      'trim',
      'dry',
      'seal',
    ]);
    expectNear(steps[8]!.starts, 63.6461659, EXAMPLE);
    expect(steps[8]!.lasts).toBe(1);
  });

  it('starts each step when the one before ends', () => {
    for (const given of [{}, { padding: 'foam' }, { settingTime: 0, trimTime: 0.25 }] satisfies Given[]) {
      const steps = known(schedule(2, 10, settings(given)));
      expect(steps[0]!.starts).toBe(0);
      // Sums of nine numbers.
      for (const [i, step] of steps.slice(1).entries())
        expect(Math.abs(step.starts - steps[i]!.starts - steps[i]!.lasts)).toBeLessThan(1e-10);
    }
  });

  it('lays up a half in its mixes, one working time each', () => {
    expect(lasting('lay up the first half', {})).toEqual([40 / 60]);
    expectNear(lasting('lay up the second half', { workingTime: 30 }, 3)[0]!, 3 * 0.5, ROUNDING);
  });

  it('waits one setting time between the mixes on foam', () => {
    expectNear(lasting('lay up the first half', { padding: 'foam' })[0]!, 2 * (40 / 60) + 1, ROUNDING);
    expectNear(
      lasting('lay up the first half', { padding: 'foam', settingTime: 0.5 }, 3)[0]!,
      3 * (40 / 60) + 1,
      ROUNDING,
    );
  });

  it('takes the other times from the settings', () => {
    expect(lasting('prepare', { preparationTime: 0.5 })).toEqual([0.5]);
    expect(lasting('turn and clean', { preparationTime: 0.5 })).toEqual([0.5]);
    expect(lasting('set', { settingTime: 1.5 })).toEqual([1.5, 1.5]);
    expect(lasting('trim', { trimTime: 2 })).toEqual([2]);
    expect(lasting('seal', { trimTime: 2 })).toEqual([2]);
  });

  it('follows common practice, no source: 40 minutes to a mix, an hour of setting, at least 24 hours of drying', () => {
    expect(lasting('lay up the first half', {})[0]! * 60).toBe(40);
    expect(lasting('set', {})).toEqual([1, 1]);
    const warm = { roomTemperature: 50, roomHumidity: 0.05, airSpeed: 5 };
    expect(lasting('dry', warm)).toEqual([LEAST_DRYING]);
    expect(LEAST_DRYING).toBe(24);
  });

  it('has no answer where nothing dries', () => {
    expectFault(schedule(1, 8, settings({ roomTemperature: 1, roomHumidity: 0.99 })), 'none');
  });

  it('refuses an area or layers that are not above 0', () => {
    expectPositiveArguments((a, l) => schedule(a!, l!, settings()), [1, 8], ['shell_area', 'layers']);
  });
});
