/** What the engine does wrong as shipped (version 0.25.1) and can be put right from outside. */

import type { Injector } from '@univerjs/core';
import { IFunctionService } from '@univerjs/engine-formula';
import { repairArrays } from './repairs/arrays.ts';
import { repairComparisons } from './repairs/comparisons.ts';
import { repairConditions } from './repairs/conditions.ts';
import { repairConvert } from './repairs/convert.ts';
import { repairCriteria } from './repairs/criteria.ts';
import { repairDates } from './repairs/dates.ts';
import { repairLookups } from './repairs/lookups.ts';
import { repairNumbers } from './repairs/numbers.ts';
import { repairReader } from './repairs/reader.ts';
import { repairReferences } from './repairs/references.ts';
import { repairSort } from './repairs/sort.ts';
import { repairTables } from './repairs/tables.ts';
import { repairTexts } from './repairs/texts.ts';

/**
 * Puts the repaired functions in place of the shipped ones. Call it after the first workbook was created, which restores those.
 *
 * Four repairs are for all engines of a process: what comparisons remember, tables of values, references, and how formulas are read.
 */
export function repair(injector: Injector): void {
  const service = injector.get(IFunctionService);
  repairArrays();
  repairReader();
  repairReferences(service);
  repairTables(injector);
  repairComparisons(service);
  repairConditions(service);
  repairConvert(service);
  repairCriteria(service);
  repairDates(service);
  repairLookups(service);
  repairNumbers(service);
  repairSort(service);
  repairTexts(service);
}
