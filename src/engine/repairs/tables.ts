/** References into tables. */

import type { Injector } from '@univerjs/core';
import { ErrorType, type ISuperTableService, ReferenceNodeFactory } from '@univerjs/engine-formula';
import { readTableReference, rowsOfSections, type TableRows } from '../table-reference.ts';
import { faulty } from './amend.ts';

/** A table as the engine keeps it, with the rows that it does not ask for. */
export type KnownTable = Parameters<ISuperTableService['registerTable']>[2] & { readonly rows?: TableRows };

/** What the engine keeps to itself of a reference into a table. */
interface Node {
  execute(): void;
  setValue(value: unknown): void;
  readonly _tableReferenceObject?: {
    getCurrentRow(): number | undefined;
    setRangeData(range: { startRow: number; endRow: number; startColumn: number; endColumn: number }): void;
    _isCurrentRowForRange: boolean;
  };
}

interface Factory {
  _getTableMap(): Pick<Map<string, KnownTable>, 'has' | 'get'> | undefined;
  _getTableReferenceNode(text: string, isCall: boolean, isPart: boolean, isWhole?: boolean): Node | undefined;
}

function inAnyLetters(tables: ReadonlyMap<string, KnownTable>): Pick<Map<string, KnownTable>, 'has' | 'get'> {
  const find = (name: string): KnownTable | undefined => {
    const known = tables.get(name);
    if (known !== undefined) return known;
    const lower = name.toLowerCase();
    for (const [other, table] of tables) if (other.toLowerCase() === lower) return table;
    return undefined;
  };
  return { has: (name) => find(name) !== undefined, get: find };
}

/** The column of a heading, from 0; letter case aside. */
function columnOf({ titleMap }: KnownTable, heading: string): number | undefined {
  const known = titleMap.get(heading);
  if (known !== undefined) return known;
  const lower = heading.toLowerCase();
  for (const [title, index] of titleMap) if (title.toLowerCase() === lower) return index;
  return undefined;
}

/** The row of the formula's own cell, which has to be one of the table's. */
function onlyInside(node: Node, rows: TableRows): void {
  const object = node._tableReferenceObject!;
  object._isCurrentRowForRange = true;
  const execute = node.execute.bind(node);
  node.execute = () => {
    execute();
    const row = object.getCurrentRow();
    if (row !== undefined && !(row >= rows.first && row <= rows.last)) node.setValue(faulty(ErrorType.VALUE));
  };
}

/**
 * As shipped a table and its columns are known by the very letters of their names, a totals row is taken for data, several sections at once are not
 * read, and the row of a cell beside the table is as good as another.
 */
export function repairTables(injector: Injector): void {
  const factory = injector.get(ReferenceNodeFactory) as unknown as Factory & { readonly areRepaired?: true };
  if (factory.areRepaired) return;
  Object.assign(factory, { areRepaired: true });
  const tableMap = factory._getTableMap.bind(factory);
  const shipped = factory._getTableReferenceNode.bind(factory);
  factory._getTableMap = () => {
    const tables = tableMap() as ReadonlyMap<string, KnownTable> | undefined;
    return tables && inAnyLetters(tables);
  };
  factory._getTableReferenceNode = (text, isCall, isPart, isWhole) => {
    const reference = isCall ? undefined : readTableReference(text);
    const table = reference && factory._getTableMap()?.get(reference.table);
    if (reference === undefined || table?.rows === undefined) return shipped(text, isCall, isPart, isWhole);
    const rows = rowsOfSections(reference.sections, table.rows);
    const [first, last] = (reference.columns ?? []).map((heading) => columnOf(table, heading));
    if (rows === undefined || (reference.columns !== undefined && (first === undefined || last === undefined)))
      return undefined;
    const node = shipped(reference.table, false, isPart, true);
    const object = node?._tableReferenceObject;
    if (object === undefined) return node;
    const { startColumn, endColumn } = table.range;
    object.setRangeData({
      startRow: rows[0],
      endRow: rows[1],
      startColumn: first === undefined ? startColumn : startColumn + Math.min(first, last!),
      endColumn: first === undefined ? endColumn : startColumn + Math.max(first, last!),
    });
    if (reference.sections.includes('#this row')) onlyInside(node!, table.rows);
    return node;
  };
}
