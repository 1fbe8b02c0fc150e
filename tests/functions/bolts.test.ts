import { describe, expect, test } from 'vitest';
import type { Argument } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';

const check = (...args: Argument[]) => functions.find((f) => f.id === 'CHECK')!.call(['BOLTS', ...args]);

describe('BOLTS', () => {
  test('CHECK tells of a flange or a seam too small for bolts', () => {
    expect(check(165)).toBe('ok');
    expect(check(165, [['flange', 2]])).toMatch(/^doubtful: this holds for a flange at least 2.5 cm/);
    expect(check(30)).toMatch(/^doubtful: this holds for a seam of at least two bolt spacings/);
  });
});
