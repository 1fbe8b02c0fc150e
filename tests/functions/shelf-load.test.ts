import { describe, expect, test } from 'vitest';
import type { Argument } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';

const check = (...args: Argument[]) => functions.find((f) => f.id === 'CHECK')!.call(['SHELF_LOAD', ...args]);

describe('SHELF_LOAD', () => {
  test('CHECK tells of a load above that of light storage', () => {
    expect(check(60, 40, 50)).toBe('ok');
    expect(check(60, 40, 150)).toMatch(/^doubtful: this holds for a load up to 6.0 kPa/);
    // 24 × 16 in and 330 lb: 123.75 lb/ft²; 340 lb: 127.5.
    expect(check(24, 16, 330, 'us')).toBe('ok');
    expect(check(24, 16, 340, 'us')).toContain('125 lb/ft²');
  });
});
