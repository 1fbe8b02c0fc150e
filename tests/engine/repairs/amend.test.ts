import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import { expect, test } from 'vitest';
import { lifted, numberOf, numberText } from '../../../src/engine/repairs/amend.ts';

test.each([
  [1 / 3, '0.333333333333333'],
  [0.1 + 0.2, '0.3'],
  [-2.5, '-2.5'],
  [1e20, '100000000000000000000'],
  [1e21, '1E+21'],
  [-1.5e25, '-1.5E+25'],
  [1e-10, '0.0000000001'],
  [-1.25e-7, '-0.000000125'],
  [1e-20, '1E-20'],
])('%d is written %s', (number, text) => {
  expect(numberText(number)).toBe(text);
});

test('values as numbers', () => {
  expect(numberOf(NullValueObject.create())).toBe(0);
  expect(numberOf(StringValueObject.create('10%'))).toBe(0.1);
  expect(numberOf(StringValueObject.create('x'))).toBeNaN();
});

test('a function of single values over tables of several shapes', () => {
  const sum = (a: BaseValueObject, b: BaseValueObject): BaseValueObject =>
    NumberValueObject.create(numberOf(a) + numberOf(b));
  const over = (a: number[][], b: number[][]): unknown =>
    (lifted([ArrayValueObject.createByArray(a), ArrayValueObject.createByArray(b)], sum) as ArrayValueObject).toValue();
  expect(over([[1, 2]], [[10], [20]])).toEqual([
    [11, 12],
    [21, 22],
  ]);
  expect(over([[1, 2, 3]], [[1, 2]])).toEqual([[2, 4, ErrorType.NA]]);
});
