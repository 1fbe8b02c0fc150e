import { type Fault, isPositive, mustBePositive } from '../result.ts';

/** The fault of the first of three sizes that is not finite and above 0, if there is one. Sizes in any one unit. */
export const sizeFault = (length: number, width: number, height: number): Fault | undefined => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  if (!isPositive(height)) return mustBePositive('height');
  return undefined;
};
