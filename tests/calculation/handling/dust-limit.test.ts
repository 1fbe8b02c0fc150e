import { describe, expect, it } from 'vitest';
import { AUTHORITIES, dustLimit, FRACTIONS, SUBSTANCES } from '../../../src/calculation/handling/dust-limit.ts';

describe('dustLimit', () => {
  it('takes total for plaster, respirable for silica, and OSHA where nothing is named', () => {
    expect(dustLimit('plaster')).toBe(15);
    expect(dustLimit('plaster', null, 'NIOSH')).toBe(10);
    expect(dustLimit('plaster', 'respirable')).toBe(5);
    expect(dustLimit('silica')).toBe(0.05);
    expect(dustLimit('silica', null, 'NIOSH')).toBe(0.05);
  });

  it.each(AUTHORITIES)('has no limit on record for total silica, %s', (authority) => {
    expect(dustLimit('silica', 'total', authority)).toMatchObject({
      code: 'none',
      problem: 'no limit on record for total dust of silica; on record: respirable',
    });
  });

  it('allows less in the lungs than in all, and less of silica than of plaster', () => {
    for (const authority of AUTHORITIES) {
      const plaster = FRACTIONS.map((fraction) => dustLimit('plaster', fraction, authority) as number);
      expect(plaster[1]).toBeLessThan(plaster[0]!);
      expect(dustLimit('silica', 'respirable', authority)).toBeLessThan(plaster[1]!);
    }
    expect(SUBSTANCES).toHaveLength(2);
  });
});
