import { describe, expect, it } from 'vitest';
import { paddingChoice } from '../../../src/calculation/cloth/padding-choice.ts';
import { expectPositiveArguments, settings } from '../kit.ts';

describe('paddingChoice', () => {
  // Exact: words.
  it.each([
    [10, false, false, 'felt'],
    [24.999, false, false, 'felt'],
    [25, false, false, 'foam'],
    [200, false, false, 'foam'],
    [200, true, false, 'felt'],
    [200, false, true, 'felt'],
    [200, true, true, 'felt'],
  ] as const)('%d kg, fragile %s, high relief %s: %s', (weight, fragile, highRelief, choice) => {
    expect(paddingChoice(weight, fragile, highRelief, settings())).toBe(choice);
  });

  it('follows the foam weight', () => {
    expect(paddingChoice(10, false, false, settings({ foamWeight: 10 }))).toBe('foam');
    expect(paddingChoice(0.1, false, false, settings({ foamWeight: 0 }))).toBe('foam');
  });

  it('refuses a weight that is not above 0', () => {
    expectPositiveArguments((w) => paddingChoice(w!, false, false, settings()), [1], ['weight']);
  });
});
