/** Arguments and texts that the functions of measured long bones share. */
import { numbers } from './arguments.ts';

export const STATIONS = numbers('length', 'the distances along the bone where the tape was put, rising', {
  signed: true,
});
export const GIRTHS = numbers('length', 'the girths there', { zero: true });

export const GIRTH_LIMIT = { text: 'sections near to round: a girth of a flat section tells too large an area' };
