import { describe, expect, it } from 'vitest';
import { type Hatch, hatched, hatchPattern, hatchPatterns } from '../../src/drawing/hatch.ts';
import { readSvg } from './read-svg.ts';

const ALL: readonly Hatch[] = ['felt', 'foam', 'cross', 'section', 'grain'];

describe('hatches', () => {
  it('are patterns with the id of their drawing, which fills refer to', () => {
    for (const hatch of ALL) {
      const [pattern, path] = readSvg(hatchPattern('plan-1', hatch));
      expect(hatched('plan-1', hatch)).toBe(`url(#${pattern!.attributes.id})`);
      expect(path!.name).toBe('path');
    }
  });

  it('differ from each other by their lines, not by a colour', () => {
    const paths = readSvg(hatchPatterns('x', ALL)).filter(({ name }) => name === 'path');
    expect(new Set(paths.map(({ attributes }) => attributes.d)).size).toBe(ALL.length);
  });
});
