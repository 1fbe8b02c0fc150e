import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutList, MOST_PIECES } from '../../../src/calculation/cloth/cut-list.ts';
import { isFault } from '../../../src/calculation/result.ts';
import { seam } from '../../../src/calculation/shell/seam.ts';
import { shellArea } from '../../../src/calculation/shell/shell-area.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, SEED, settings } from '../kit.ts';
import { expectPlan } from './packing/random-pieces.ts';

const counts = (...args: Parameters<typeof cutList>) =>
  known(cutList(...args)).cuts.map(({ purpose, count, length, width }) => [purpose, count, length, width]);

describe('cutList', () => {
  it('counts by hand', () => {
    // Shell area 0.7923952088 m²: half 0.3962 over 0.37² = 0.1369 is 2.89, so 3 squares a layer of a half; 2 × 6 × 3 = 36.
    // Seam 1.626442186 m over 0.37 is 4.40, so 5 strips; 2 halves × 2 layers × 5 = 20. Feet: 6 × 6 and 6 × 5.
    expectNear(shellArea(0.6, 0.4, 0.3, settings()), 0.7923952088, EXAMPLE);
    expectNear(seam(0.6, 0.4, settings()), 1.626442186, EXAMPLE);
    const expected = [
      ['cover', 36, 0.42, 0.42],
      ['edge strip', 20, 0.42, 0.1016],
      ['foot patch', 36, 0.15000000000000002, 0.15000000000000002],
      ['tip patch', 30, 0.1, 0.1],
    ];
    expect(counts(0.6, 0.4, 0.3, 6, settings())).toEqual(expected);
    expect(counts(0.4, 0.6, 0.3, 6, settings()), 'the longer is the length').toEqual(expected);
    expect(counts(0.6, 0.4, 0.3, 5.2, settings()), 'layers are rounded up').toEqual(expected);
  });

  it('follows common practice, no source: strips of 4 in, patches of 6 in, 5 or 6 to a foot, 4 or 5 smaller on the tip', () => {
    const [, strip, foot, tip] = known(cutList(0.6, 0.4, 0.3, 6, settings({ footSize: 0.1016 }))).cuts;
    expect(strip!.width).toBe(4 * 0.0254);
    expect(foot!.length).toBeCloseTo(6 * 0.0254, 12);
    expect([5, 6]).toContain(foot!.count / 6);
    expect([4, 5]).toContain(tip!.count / 6);
    expect(tip!.length).toBeLessThan(foot!.length);
  });

  it('leaves out what a shop does not use', () => {
    const bare = settings({ edgeStripLayers: 0, footPatches: 0, tipPatchSize: 0 });
    const list = known(cutList(0.6, 0.4, 0.3, 6, bare));
    expect(list.cuts.map(({ count }) => count)).toEqual([36, 0, 0, 0]);
    expect(list.layout.placed).toHaveLength(36);
    expect(known(cutList(0.6, 0.4, 0.3, 6, settings({ edgeStripWidth: 0 }))).cuts[1]!.count).toBe(0);
  });

  it('places every piece once, on the roll, on no other', () => {
    const size = fc.double({ min: 0.05, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0.3, max: 1.1, noNaN: true }),
        fc.double({ min: 0.3, max: 2, noNaN: true }),
        (length, width, height, layers, pieceSize, rollWidth) => {
          const list = cutList(length, width, height, layers, settings({ pieceSize, rollWidth }));
          if (isFault(list)) {
            expectFault(list, 'none');
            expect(pieceSize > rollWidth || list.problem.includes('{pieces}')).toBe(true);
            return;
          }
          expectPlan(list.layout, list.cuts, list.roll);
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('says what to change where the roll is too narrow', () => {
    const fault = cutList(0.6, 0.4, 0.3, 6, settings({ rollWidth: 0.3 }));
    expectFault(fault, 'none');
    expect(fault).toMatchObject({
      problem: expect.stringContaining('set a smaller piece size, or the roll width of a wider roll'),
      amounts: { roll: { value: 0.3 }, size: { value: 0.42 } },
    });
    const feet = cutList(0.6, 0.4, 0.3, 6, settings({ rollWidth: 0.12, pieceSize: 0.11 }));
    expect(feet).toMatchObject({ problem: expect.stringContaining('foot patches') });
    // A strip lies along a narrow roll: only its width counts.
    expect(isFault(cutList(0.6, 0.4, 0.3, 6, settings({ rollWidth: 0.42 })))).toBe(false);
  });

  it('gives up before it takes long', () => {
    expectFault(cutList(30, 20, 10, 16, settings()), 'none');
    expectFault(cutList(1e100, 1e100, 1e100, 16, settings()), 'none');
    expectFault(cutList(1e160, 1e160, 1e160, 16, settings()), 'overflow');
    const huge = settings({ pieceSize: 1e300, rollWidth: 1e300 });
    expect(isFault(cutList(0.6, 0.4, 0.3, 6, huge))).toBe(false);
    expectFault(cutList(0.6, 0.4, 0.3, 6, settings({ pieceSize: 1e308, rollWidth: 1e308 })), 'overflow');
    // Some 9000 pieces; a generous second, so that only a plan that grows out of hand fails.
    const start = performance.now();
    const large = known(cutList(6, 4, 3, 15, settings()));
    expect(performance.now() - start).toBeLessThan(1000);
    expect(large.layout.placed.length).toBeGreaterThan(0.5 * MOST_PIECES);
    expect(large.layout.placed.length).toBeLessThanOrEqual(MOST_PIECES);
  });

  it('refuses sizes and layers that are not above 0', () => {
    expectPositiveArguments(
      (a, b, c, d) => cutList(a!, b!, c!, d!, settings()),
      [0.6, 0.4, 0.3, 6],
      ['length', 'width', 'height', 'layers'],
    );
  });
});
