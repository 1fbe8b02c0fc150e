import { describe, expect, test } from 'vitest';
import { mathLines, mathml } from '../../../src/build/help/math.ts';
import { functions } from '../../../src/functions/index.ts';

test.each(functions.filter((f) => f.equation !== 'none').map((f) => [f.id, f] as const))(
  '%s has its formula in LaTeX, and each line can be set',
  (_, { math = '' }) => {
    const lines = mathLines(math);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(mathml(line)).toMatch(/^<math xmlns="[^"]+"[\s\S]*<\/math>$/);
  },
);

describe('MathML', () => {
  test('a fraction', () => {
    expect(mathml(String.raw`\frac{a}{b}`)).toMatch(/<mfrac><mi>a<\/mi><mi>b<\/mi><\/mfrac>/);
  });
  test('no styles of its own', () => {
    expect(mathml(String.raw`\begin{cases} 1 & a \\ 2 & b \end{cases}`)).not.toContain('style=');
  });
  test('LaTeX that cannot be read throws', () => {
    expect(() => mathml(String.raw`\frac{a}{`)).toThrow();
    expect(() => mathml(String.raw`\nosuchword`)).toThrow();
  });
});
