import { describe, expect, it } from 'vitest';
import { titleBlock } from '../../src/drawing/title-block.ts';
import { readSvg } from './read-svg.ts';

const textsOf = (svg: string) => readSvg(svg).flatMap(({ name, text }) => (name === 'text' ? [text] : []));

describe('titleBlock', () => {
  it('tells the specimen and the units, and leaves the date blank', () => {
    expect(textsOf(titleBlock(0, 0, 400, 'INV 12', 'cm, kg'))).toEqual([
      'specimen',
      'INV 12',
      'units',
      'cm, kg',
      'date',
    ]);
    expect(textsOf(titleBlock(0, 0, 400, '', 'in, lb'))).toEqual(['specimen', 'units', 'in, lb', 'date']);
  });

  it('cuts a name that is too long', () => {
    expect(textsOf(titleBlock(0, 0, 300, 'a name that goes on and on and on', 'cm'))[1]).toMatch(/…$/);
  });
});
