import { describe, expect, it } from 'vitest';
import { dustLimit } from '../../src/calculation/handling/dust-limit.ts';
import { type Lift, liftLimit } from '../../src/calculation/handling/lift-limit.ts';
import { SIGN_NAMES } from '../../src/drawing/signs.ts';
import { CAUTIONS, type CautionId, cautionsFor, FOLLOW, hurtCautions, PLANNING } from '../../src/texts/cautions.ts';

/** Sentences of a text. A full stop inside a number has no space after it. */
const sentences = (text: string): string[] => text.split(/(?<=[.])\s+(?=[A-Z])/);

const why = (id: CautionId): string => CAUTIONS.find((caution) => caution.id === id)!.why;

describe('cautions', () => {
  it('are six, each once', () => {
    expect(CAUTIONS.map(({ id }) => id)).toEqual(['dust', 'eyes', 'heat', 'lifting', 'solvent', 'turning']);
  });

  it.each(CAUTIONS)('$id: says what to do in one or two sentences, and why in two to four', ({ title, text, why }) => {
    expect(title.length).toBeLessThanOrEqual(16);
    expect(sentences(text).length).toBeGreaterThanOrEqual(1);
    expect(sentences(text).length).toBeLessThanOrEqual(2);
    expect(sentences(why).length).toBeGreaterThanOrEqual(2);
    expect(sentences(why).length).toBeLessThanOrEqual(4);
  });

  it.each(CAUTIONS)('$id: is made of whole sentences without exclamation marks', ({ text, why }) => {
    for (const part of [text, why]) {
      expect(part).toMatch(/^[A-Z].*\.$/);
      expect(part).not.toContain('!');
      expect(part).not.toMatch(/ {2}/);
    }
  });

  it.each(CAUTIONS)('$id: has a sign and says how its figures are known', ({ sign, sources }) => {
    expect(SIGN_NAMES).toContain(sign);
    expect(sources.length).toBeGreaterThan(0);
    for (const { text, basis } of sources) {
      expect(['published', 'derived', 'common practice', 'memory']).toContain(basis);
      if (basis === 'common practice') expect(text).toMatch(/no source/);
      expect(text).not.toMatch(/https?:|www\./);
    }
  });

  it('have no sign twice', () => {
    expect(new Set(CAUTIONS.map(({ sign }) => sign)).size).toBe(CAUTIONS.length);
  });

  it.each([
    ['dust', /outdoors or under exhaust/],
    ['dust', /respirator .* fitted/],
    ['dust', /silica or glass/],
    ['dust', /Clean up wet/],
    ['eyes', /scraping, blowing, sawing, drilling or sanding/],
    ['heat', /Never cast plaster round a hand/],
    ['heat', /thick mixes burn/],
    ['heat', /gloves for glass cloth and for lime/],
    ['lifting', /Weigh it first/],
    ['lifting', /people or a hoist/],
    ['lifting', /never one half by its handles/],
    ['solvent', /no flame, heater or spark/],
    ['solvent', /under exhaust/],
    ['turning', /Tighten every bolt/],
    ['turning', /who calls/],
  ] as const)('%s says %s', (id, words) => {
    expect(CAUTIONS.find((caution) => caution.id === id)!.text).toMatch(words);
  });
});

describe('figures in the cautions', () => {
  it('dust: the limits are those the calculation gives', () => {
    const plaster = [
      dustLimit('plaster', 'total'),
      dustLimit('plaster', 'respirable'),
      dustLimit('plaster', 'total', 'NIOSH'),
    ];
    expect(why('dust')).toContain(`${plaster[0]} mg/m³ in all and ${plaster[1]} mg/m³`);
    expect(why('dust')).toContain(
      `another recommendation is ${plaster[2]} and ${dustLimit('plaster', 'respirable', 'NIOSH')}`,
    );
    expect(why('dust')).toContain(`${dustLimit('silica')} mg/m³, a hundred times less`);
    // Exact up to floating point: 5 over 0.05.
    expect((plaster[1] as number) / (dustLimit('silica') as number)).toBeCloseTo(100, 10);
  });

  it('lifting: the limits are those the calculation gives, rounded to a whole', () => {
    const best: Lift = { reach: 1, height: 75, travel: 1, twist: 0, rate: 0, hours: 1, grip: 'good' };
    const inches: Lift = { ...best, height: 30 };
    const whole = (x: unknown): string => (x as number).toFixed(0);
    expect(why('lifting')).toContain(`${liftLimit(best, 'metric')} kg (${liftLimit(inches, 'us')} lb) held close`);
    const far = [liftLimit({ ...best, reach: 63 }, 'metric'), liftLimit({ ...inches, reach: 25 }, 'us')];
    expect(why('lifting')).toContain(`63 cm (25 in) away about ${whole(far[0])} kg (${whole(far[1])} lb)`);
  });

  it('heat: H-20, H-21 and H-22, published', () => {
    expect(why('heat')).toMatch(/70 °C.*four were burned.*three lost fingers/);
    expect(why('heat')).toMatch(/47 to 51 °C.*below 30 °C/);
    expect(why('heat')).toMatch(/about 45 °C/);
  });

  it('solvent: H-06 and H-07, published; the flash point of acetone from memory', () => {
    expect(why('solvent')).toMatch(/ethanol from 13 °C, acetone from about −18 °C/);
    expect(why('solvent')).toMatch(/3\.3 % of ethanol.*1000 ppm.*acetone 250 ppm/);
  });
});

describe('sentences beside them', () => {
  it('defer to local codes and data sheets, and call estimates so', () => {
    expect(FOLLOW).toBe("Follow your local codes and the maker's data sheet.");
    expect(PLANNING).toBe('Estimates for planning.');
  });
});

describe('hurtCautions', () => {
  it.each([
    ['lifting', 'lifting'],
    ['dust', 'dust'],
    ['heat', 'heat'],
    ['strength', 'lifting'],
    ['stability', 'turning'],
    ['solvent', 'solvent'],
  ] as const)('%s has %s first', (kind, id) => {
    expect(hurtCautions[kind][0]).toBe(id);
  });

  it('reaches every caution', () => {
    expect(new Set(Object.values(hurtCautions).flat())).toEqual(new Set(CAUTIONS.map(({ id }) => id)));
  });

  it('gives each caution once, in one order', () => {
    expect(cautionsFor(['stability', 'lifting', 'dust']).map(({ id }) => id)).toEqual([
      'dust',
      'eyes',
      'lifting',
      'turning',
    ]);
    expect(cautionsFor([])).toEqual([]);
  });
});
