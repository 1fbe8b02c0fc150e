/** Answers that would exhaust the machine: the engine as shipped (version 0.25.1) makes tables and texts of any size that a formula asks for. */

import type { Injector } from '@univerjs/core';
import {
  type BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  IFunctionService,
  StringValueObject,
} from '@univerjs/engine-formula';

/** Longest text of a cell [characters]. From the published limits of spreadsheet programs. */
export const LONGEST_TEXT = 32_767;

/** Most cells of a table that a single call makes. Ours: a whole column of a sheet fits. */
export const MOST_MADE_CELLS = 2_000_000;

/** Functions that make a table, with which of their arguments say how large. */
const MAKERS: readonly (readonly [name: string, rows: number, columns: number])[] = [
  ['EXPAND', 1, 2],
  ['MAKEARRAY', 0, 1],
  ['MUNIT', 0, 0],
];

const bounded = new WeakSet<BaseFunction>();

const sizeIn = (argument: FunctionVariantType | undefined): number => {
  if (argument === undefined || argument.isReferenceObject()) return 1;
  // No number is no size: what that comes to is for the function to say.
  return Math.max(1, Math.trunc(Number((argument as BaseValueObject).getValue())) || 1);
};

function boundMaker(maker: BaseFunction, rows: number, columns: number): void {
  if (bounded.has(maker)) return;
  bounded.add(maker);
  const calculate = maker.calculate.bind(maker);
  maker.calculate = (...args) =>
    sizeIn(args[rows]) * sizeIn(args[columns]) > MOST_MADE_CELLS
      ? ErrorValueObject.create(ErrorType.NUM)
      : calculate(...args);
}

let textsAreBounded = false;

/** A text that is longer than a cell can hold is an error, as it is in spreadsheet programs. Doubled some thirty times it would fill the memory. */
function boundTexts(): void {
  if (textsAreBounded) return;
  textsAreBounded = true;
  const create = StringValueObject.create.bind(StringValueObject);
  StringValueObject.create = (text, ...more) =>
    text?.length > LONGEST_TEXT
      ? (ErrorValueObject.create(ErrorType.VALUE) as BaseValueObject as StringValueObject)
      : create(text, ...more);
}

/** Bounds what single calls make. Call it after the first workbook was created, which puts the shipped functions in place. */
export function bound(injector: Injector): void {
  const service = injector.get(IFunctionService);
  for (const [name, rows, columns] of MAKERS) {
    const maker = service.getExecutor(name);
    if (maker) boundMaker(maker, rows, columns);
  }
  boundTexts();
}
