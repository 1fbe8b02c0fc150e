/** All sample workbooks. */
import type { BookPlan } from './book.ts';
import { collectionRows } from './collection-rows.ts';
import { feltOrFoam } from './felt-or-foam.ts';
import { oneJacket } from './one-jacket.ts';
import { seasonBudget } from './season-budget.ts';
import { willItStand } from './will-it-stand.ts';

export const samples: readonly (() => BookPlan)[] = [oneJacket, collectionRows, feltOrFoam, seasonBudget, willItStand];
