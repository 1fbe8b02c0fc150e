import { describe, expect, it } from 'vitest';
import { sizeFault } from '../../../src/calculation/size/three-sizes.ts';
import { expectPositiveArguments } from '../kit.ts';

describe('sizeFault', () => {
  it('names the size that is not above 0', () => {
    expectPositiveArguments((l, w, h) => sizeFault(l!, w!, h!), [3, 2, 1], ['length', 'width', 'height']);
  });

  it('finds nothing wrong with sizes, however small or large', () => {
    expect(sizeFault(Number.MIN_VALUE, 1, Number.MAX_VALUE)).toBeUndefined();
  });
});
