/** Dust limits and the 8-hour average against published values. Row numbers such as H-01 name the check value. */

import { describe, expect, it } from 'vitest';
import { dustLimit } from '../../src/calculation/handling/dust-limit.ts';
import { exposure } from '../../src/calculation/handling/exposure.ts';

describe('H-01: plaster dust', () => {
  it.each([
    // Published: OSHA limit, 29 CFR 1910.1000, documented by NIOSH for the 1988 limits.
    { fraction: 'total', authority: 'OSHA', limit: 15 },
    { fraction: 'respirable', authority: 'OSHA', limit: 5 },
    // Published: NIOSH recommended limit, read for gypsum.
    { fraction: 'total', authority: 'NIOSH', limit: 10 },
    { fraction: 'respirable', authority: 'NIOSH', limit: 5 },
  ] as const)('$authority $fraction: $limit mg/m³', ({ fraction, authority, limit }) => {
    expect(dustLimit('plaster', fraction, authority)).toBe(limit);
  });
});

describe('H-04: respirable crystalline silica', () => {
  // Published: 50 µg/m³, read in secondary pages; the paragraph 29 CFR 1910.1053(c) is from memory.
  it.each(['OSHA', 'NIOSH'] as const)('%s: 50 µg/m³', (authority) => {
    expect(dustLimit('silica', 'respirable', authority)).toBe(50 / 1000);
  });
});

describe('H-08: 8-hour average', () => {
  it('3 h at 10 and 5 h at 2 give 5', () => {
    // Published formula, 29 CFR 1915.1000; the numbers are derived. Exact in floating point.
    expect(exposure([10, 2], [3, 5])).toBe(5);
  });
});
