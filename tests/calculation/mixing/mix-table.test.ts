import { describe, expect, it } from 'vitest';
import { MOST_MIXES, mixTable } from '../../../src/calculation/mixing/mix-table.ts';
import { mixes, oneMix } from '../../../src/calculation/mixing/mixes.ts';
import { plaster } from '../../../src/calculation/mixing/plaster.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, settings } from '../kit.ts';

const total = (list: readonly { plaster: number }[]) => list.reduce((sum, mix) => sum + mix.plaster, 0);

describe('mixTable', () => {
  it('shares the plaster of EXAMPLES 4.3 between two mixes', () => {
    const list = known(mixTable(1, 8, settings()));
    expect(list.map(({ mix, half }) => [mix, half])).toEqual([
      [1, 'lower'],
      [2, 'upper'],
    ]);
    expectNear(list[0]!.plaster, 18.29571642 / 2, EXAMPLE);
    expectNear(list[0]!.water, (0.38 * 18.29571642) / 2, EXAMPLE);
    expectNear(list[0]!.waterVolume, (0.38 * 18.29571642) / 2 / 998, EXAMPLE);
    // MIX_VOLUME(10) is 7.430803636 L.
    expectNear(list[0]!.slurry, (7.430803636e-4 * 18.29571642) / 2, EXAMPLE);
  });

  it.each([
    { area: 1, layers: 8, given: { padding: 'foam' }, count: 4 },
    { area: 3, layers: 12, given: {}, count: 8 },
    { area: 3, layers: 12, given: { bucket: 3e-3 }, count: 20 },
    { area: 3, layers: 12, given: { layingRate: 0.05, plaster: 'casting plaster' }, count: 22 },
  ] as const)('$area m² in $layers layers: $count equal mixes, half of them for the lower half', (row) => {
    const s = settings(row.given);
    const list = known(mixTable(row.area, row.layers, s));
    expect(list).toHaveLength(known(mixes(row.area, row.layers, s)));
    expect(list).toHaveLength(row.count);
    expect(list.map(({ mix }) => mix)).toEqual(list.map((_, i) => i + 1));
    expect(list.map(({ half }) => half)).toEqual(list.map((_, i) => (i < row.count / 2 ? 'lower' : 'upper')));
    expectNear(total(list), known(plaster(row.area, row.layers, s)), ROUNDING);
    for (const { plaster: dry, water, slurry } of list) {
      expect(slurry).toBeLessThanOrEqual(oneMix(s) * (1 + ROUNDING));
      expectNear(water / dry, s.waterRatio, ROUNDING);
      expect(dry).toBe(list[0]!.plaster);
    }
  });

  it('makes one mix a half where the bucket is larger than the job', () => {
    expect(known(mixTable(0.1, 4, settings({ bucket: 1 })))).toHaveLength(2);
  });

  it('follows common practice, no source: a mix is worked within about 40 minutes', () => {
    expect(settings().workingTime).toBe(40);
  });

  it('gives up where no table would hold the mixes', () => {
    // One mix: 4 mL; half the slurry of the example: 6.8 L.
    expect(known(mixTable(1, 8, settings({ bucket: 13.6e-6 })))).toHaveLength(MOST_MIXES);
    const fault = mixTable(1, 8, settings({ bucket: 1e-6 }));
    expectFault(fault, 'none');
    expect(fault).toMatchObject({ problem: expect.stringContaining('larger bucket') });
    expectFault(mixTable(1e300, 1e300, settings()), 'overflow');
  });

  it('refuses an area or layers that are not above 0', () => {
    expectPositiveArguments((a, l) => mixTable(a!, l!, settings()), [1, 8], ['shell_area', 'layers']);
  });
});
