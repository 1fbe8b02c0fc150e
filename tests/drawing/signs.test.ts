import { describe, expect, it } from 'vitest';
import { SIGN_GRID, SIGN_NAMES, SIGN_STROKE, sign } from '../../src/drawing/signs.ts';

const pathOf = (svg: string): string => /<path d="([^"]+)"\/>/.exec(svg)![1]!;

/** Numbers that each command takes, and at which of them its pairs of coordinates begin. */
const COMMANDS: Record<string, { step: number; pairs: number }> = {
  m: { step: 2, pairs: 0 },
  l: { step: 2, pairs: 0 },
  t: { step: 2, pairs: 0 },
  q: { step: 4, pairs: 0 },
  s: { step: 4, pairs: 0 },
  c: { step: 6, pairs: 0 },
  a: { step: 7, pairs: 5 },
};

/** Where the pen goes, control points included. The signs use `M` for the start of a part and relative commands for the rest. */
const pointsOf = (path: string): [number, number][] => {
  const points: [number, number][] = [];
  let at: [number, number] = [0, 0];
  for (const [whole, command, rest] of path.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const n = (rest!.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    if (command === 'z') continue;
    if (command === 'h' || command === 'v') {
      at = command === 'h' ? [at[0] + n[0]!, at[1]] : [at[0], at[1] + n[0]!];
      points.push(at);
      continue;
    }
    const known = COMMANDS[command!.toLowerCase()];
    if (!known || n.length === 0 || n.length % known.step !== 0) throw new Error(`cannot read ${whole}`);
    const from = (): [number, number] => (command === 'M' ? [0, 0] : at);
    for (let i = 0; i < n.length; i += known.step) {
      const [x, y] = from();
      for (let k = i + known.pairs; k < i + known.step; k += 2) points.push([x + n[k]!, y + n[k + 1]!]);
      at = points.at(-1)!;
    }
  }
  return points;
};

describe.each(SIGN_NAMES)('sign %s', (name) => {
  const svg = sign(name);

  it('is one stroke in the colour of the text, without fill or words', () => {
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" [^<]*><path d="[^"]+"\/><\/svg>$/);
    expect(svg).toContain('fill="none"');
    expect(svg).toContain('stroke="currentColor"');
    expect(svg).toContain('stroke-linecap="round"');
    expect(svg).not.toMatch(/<(text|title|desc|style|image)|#[0-9a-f]{3}/i);
  });

  it('is hidden from screen readers and from the tab order', () => {
    expect(svg).toContain('aria-hidden="true"');
    expect(svg).toContain('focusable="false"');
  });

  it('stays on the grid, stroke included', () => {
    const points = pointsOf(pathOf(svg));
    expect(points.length).toBeGreaterThan(2);
    for (const at of points.flat()) {
      expect(at).toBeGreaterThanOrEqual(SIGN_STROKE / 2);
      expect(at).toBeLessThanOrEqual(SIGN_GRID - SIGN_STROKE / 2);
    }
  });

  it('takes its size from the caller and keeps its grid', () => {
    expect(sign(name, 48)).toContain('viewBox="0 0 24 24" width="48" height="48"');
    expect(svg).toContain('width="24" height="24"');
  });
});

describe('signs', () => {
  it('has one for each caution and button', () => {
    expect([...SIGN_NAMES].sort()).toEqual([
      'copy',
      'dust',
      'eye',
      'flame',
      'fold',
      'hand-heat',
      'insert',
      'lifting',
      'turning',
      'unfold',
      'warning',
    ]);
  });

  it('draws no two alike', () => {
    expect(new Set(SIGN_NAMES.map((name) => sign(name))).size).toBe(SIGN_NAMES.length);
  });
});
