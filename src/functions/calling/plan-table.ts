/** The rows of a plan as cells of a table. */
import { amount, type Fault, type Quantity, type Result } from '../../calculation/result.ts';
import type { TableCell } from './tables.ts';

/** One value of a plan: an amount, a word, TRUE or FALSE, or why there is none. A count may be a word too. */
export const planCell = (value: Result<number | string | boolean>, quantity: Quantity | null): TableCell =>
  typeof value === 'number' && quantity ? amount(value, quantity) : (value as string | boolean | Fault);
