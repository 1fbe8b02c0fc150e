import { describe, expect, test } from 'vitest';
import type { Argument } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';

const check = (...args: Argument[]) => functions.find((f) => f.id === 'CHECK')!.call(['LAYERS_NEEDED', ...args]);

describe('LAYERS_NEEDED', () => {
  test('CHECK tells where the answer is doubtful', () => {
    expect(check(120, 80, 60, 300)).toBe('ok');
    expect(check(10, 8, 6, 0.5)).toMatch(/^doubtful: this holds for a thin shell/);
    expect(check(80, 60, 20, 20, [['shape', 'box']])).toContain('a box at most 2.5 times as wide as high');
    expect(check(40, 40, 60, 20)).toContain('at least as long as wide and high');
  });

  test('CHECK gives the reason where there is no answer', () => {
    expect(check(120, 80, 60, 3000)).toContain('16 layers are not enough');
  });
});
