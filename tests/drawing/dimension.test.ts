import { describe, expect, it } from 'vitest';
import { dimensionBelow, dimensionLeft, measure } from '../../src/drawing/dimension.ts';
import { attribute, numbersOf, type Read, readSvg } from './read-svg.ts';

const named = (svg: string, name: string): Read[] => readSvg(svg).filter((element) => element.name === name);
/** Points of the arrow heads. */
const tips = (svg: string) => named(svg, 'path').map(({ attributes }) => numbersOf(attributes.d!).slice(0, 2));

describe('dimension lines', () => {
  it('point at both ends of what they measure', () => {
    expect(tips(dimensionBelow(20, 120, 50, 70, '1 m'))).toEqual([
      [20, 70],
      [120, 70],
    ]);
    expect(tips(dimensionLeft(10, 90, 40, 20, '1 m'))).toEqual([
      [20, 10],
      [20, 90],
    ]);
    expect(tips(measure(5, 8, 5, 60))).toEqual([
      [5, 8],
      [5, 60],
    ]);
  });

  it('put the number beside the line', () => {
    const [below] = named(dimensionBelow(20, 120, 50, 70, '1 m'), 'text');
    expect(below!.text).toBe('1 m');
    expect([attribute(below!, 'x'), attribute(below!, 'y')]).toEqual([70, 65]);
    const [left] = named(dimensionLeft(10, 90, 40, 20, '1 m'), 'text');
    expect(left!.attributes.transform).toBe('rotate(-90 15 50)');
  });

  it('have their arrows outside where there is no room inside', () => {
    const xs = (svg: string) => named(svg, 'path').map(({ attributes }) => numbersOf(attributes.d!)[2]!);
    const [first, last] = xs(dimensionBelow(20, 120, 50, 70, '1 m'));
    expect(first! > 20 && last! < 120).toBe(true);
    const [before, after] = xs(dimensionBelow(20, 30, 50, 70, '1 m'));
    expect(before! < 20 && after! > 30).toBe(true);
  });
});
