/** Functions that exist for the engine's tests alone: they show what reaches a function and how its answers come back. */

import type { EngineFunction } from '../../src/engine/adapter.ts';
import { type Answer, type Argument, type CallNotes, CellError } from '../../src/functions/calling/cell.ts';

const fake = (id: string, call: (args: readonly Argument[], notes?: CallNotes) => Answer): EngineFunction => ({
  id,
  description: `What ${id} does`,
  arguments: [
    { name: 'first', description: 'the first one', optional: false, takes: 'cells' },
    { name: 'rest', description: 'all others', optional: true, repeating: true, takes: 'one' },
  ],
  call,
});

/** The reason of an error in a cell, as it reached the function. */
const reasonOrNone = (cell: unknown): string => (cell instanceof CellError ? `${cell.code} ${cell.reason}` : 'none');

export const fakeFunctions: readonly EngineFunction[] = [
  /** Its arguments and notes as text. */
  fake('ECHO', (args, notes) => JSON.stringify([args, notes?.fromCells])),
  /** An error with a reason. */
  fake('FAIL', () => new CellError('#N/A', 'no answer; try another')),
  /** An error without one. */
  fake('BARE', () => new CellError('#NUM!', '')),
  /** A table of every kind of cell. */
  fake('TABLE', () => [
    ['name', 1.5],
    [true, ''],
    [new CellError('#VALUE!', 'a: is missing'), -2],
  ]),
  fake('EMPTY', () => ''),
  fake('INFINITE', () => Number.POSITIVE_INFINITY),
  fake('REASON', ([first]) => reasonOrNone(first)),
  /** The number of rows of its first argument. */
  fake('HEIGHT', ([first]) => (Array.isArray(first) ? first.length : 1)),
  /** Twice each cell. */
  fake('TWICE', ([first]) =>
    Array.isArray(first) ? first.map((row) => row.map((x: unknown) => Number(x) * 2)) : Number(first) * 2,
  ),
];
