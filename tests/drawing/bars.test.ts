import { describe, expect, it } from 'vitest';
import { barsDrawing } from '../../src/drawing/bars.ts';
import { barsInput } from './inputs.ts';
import { attribute, expectDrawing, readSvg } from './read-svg.ts';

/** Bars below the key, in order. */
const barsOf = (svg: string) =>
  readSvg(svg).filter(({ name, attributes }) => name === 'rect' && Number(attributes.height) === 14);

describe.each([320, 700])('bars at %d px', (width) => {
  const input = barsInput(width);
  const { svg, table } = barsDrawing(input);

  it('are as they were', async () => {
    await expect(svg).toMatchFileSnapshot(`__snapshots__/bars-${width}.svg`);
  });

  it('keep the rules of all drawings', () => {
    expectDrawing(svg, input.id);
  });

  it('are as long as their numbers, each pair to its own scale', () => {
    const bars = barsOf(svg);
    expect(bars).toHaveLength(2 * input.pairs.length);
    for (const [i, { felt, foam }] of input.pairs.entries()) {
      const [one, other] = [bars[2 * i]!, bars[2 * i + 1]!].map((bar) => attribute(bar, 'width')) as [number, number];
      // Two decimals are drawn.
      expect(one / other).toBeCloseTo(felt.value / foam.value, 3);
    }
  });

  it('say the same in their table', () => {
    expect(table).toEqual([
      ['item', 'felt', 'foam'],
      ...input.pairs.map(({ item, felt, foam }) => [item, felt.label, foam.label]),
    ]);
  });
});

describe('barsDrawing', () => {
  it('draws nothing for 0, for what is not a number, and without pairs', () => {
    const zero = { value: 0, label: '0' };
    const { svg } = barsDrawing({
      ...barsInput(320),
      pairs: [{ item: 'bolts', felt: zero, foam: { value: Number.NaN, label: '–' } }],
    });
    expectDrawing(svg, 'bars');
    for (const bar of barsOf(svg)) expect(attribute(bar, 'width')).toBe(0);
    expectDrawing(barsDrawing({ ...barsInput(320), pairs: [] }).svg, 'bars');
  });

  it('shows no range where none is given', () => {
    const pairs = barsInput(320).pairs.map(({ item, felt, foam }) => ({
      item,
      felt: { value: felt.value, label: felt.label },
      foam: { value: foam.value, label: foam.label },
    }));
    expect(barsDrawing({ ...barsInput(320), pairs }).svg).not.toContain('plausible range<');
  });
});
