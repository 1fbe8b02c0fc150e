/** All sample workbooks. */
import type { BookPlan } from './book.ts';
import { collectionRows } from './collection-rows.ts';

export const samples: readonly (() => BookPlan)[] = [collectionRows];
