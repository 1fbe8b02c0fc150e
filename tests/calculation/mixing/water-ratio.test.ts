import { describe, expect, it } from 'vitest';
import { waterRatio } from '../../../src/calculation/mixing/water-ratio.ts';
import { expectFault } from '../kit.ts';

describe('waterRatio', () => {
  // Exact: a table.
  it.each([
    ['casting plaster', 0.7],
    ['gypsum cement', 0.38],
    ['dental stone', 0.3],
    ['  Gypsum Cement ', 0.38],
  ])('%s: %d', (kind, ratio) => {
    expect(waterRatio(kind)).toBe(ratio);
  });

  it('refuses another name', () => {
    for (const name of ['', 'cement', 'constructor', 'toString'])
      expectFault(waterRatio(name), 'value', 'plaster_kind');
  });
});
