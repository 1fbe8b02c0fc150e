/** All sample workbooks. */
import type { BookPlan } from './book.ts';
import { collectionRows } from './collection-rows.ts';
import { willItStand } from './will-it-stand.ts';

export const samples: readonly (() => BookPlan)[] = [collectionRows, willItStand];
