import { describe, expect, it } from 'vitest';
import { Fault } from '../../../src/calculation/result.ts';
import { girthChain, girthRadius } from '../../../src/calculation/size/girth-chain.ts';
import { expectNear, ROUNDING } from '../kit.ts';

const said = (stations: (number | null)[], girths: (number | null)[]): string => {
  const fault = girthChain(stations, girths);
  expect(fault).toBeInstanceOf(Fault);
  const { code, field, problem } = fault as Fault;
  expect(code).toBe('value');
  return field ? `${field} ${problem}` : problem;
};

describe('girthChain', () => {
  it('turns girths into radii', () => {
    expect(girthChain([0, 0.5], [0, 0.3])).toEqual({ stations: [0, 0.5], radii: [0, girthRadius(0.3)] });
    expectNear(girthRadius(2 * Math.PI), 1, ROUNDING);
  });

  it('lets stations start anywhere, also below 0', () => {
    expect(girthChain([-0.5, 0, 0.1], [1, 0, 1])).toEqual({
      stations: [-0.5, 0, 0.1],
      radii: [girthRadius(1), 0, girthRadius(1)],
    });
  });

  it('says which cell is wrong', () => {
    expect(said([0, 0], [3, 4])).toBe('stations must increase; cell 2 does not');
    expect(said([0, 5, 4], [3, 4, 4])).toBe('stations must increase; cell 3 does not');
    expect(said([0, 10, 20], [0, 0, 5])).toBe('girths: cells 1 and 2 are both 0');
    expect(said([0, 10, 20], [5, 0, 0])).toBe('girths: cells 2 and 3 are both 0');
    expect(said([0, 10], [5, -1])).toBe('girths must be 0 or more; cell 2 is not');
    expect(said([0, 10], [Number.NaN, 1])).toBe('girths must be 0 or more; cell 1 is not');
    expect(said([0, 10], [1, Number.POSITIVE_INFINITY])).toBe('girths must be 0 or more; cell 2 is not');
    expect(said([Number.NaN, 10], [1, 1])).toBe('stations must be numbers; cell 1 is not');
    expect(said([0, Number.POSITIVE_INFINITY], [1, 1])).toBe('stations must be numbers; cell 2 is not');
    expect(said([0, null], [1, 1])).toBe('stations must have no blanks; cell 2 is blank');
    expect(said([0, 1], [null, 1])).toBe('girths must have no blanks; cell 1 is blank');
    expect(said([0], [1])).toBe('stations must have 2 cells or more');
    expect(said([], [])).toBe('stations must have 2 cells or more');
    expect(said([0, 1, 2], [1, 1])).toBe('girths has 2 cells, stations has 3; give each station one girth');
  });
});
