/** Arguments that many functions share. */
import { optional, quantity } from './arguments.ts';

export const LENGTH = quantity('length', 'the longest size');
export const WIDTH = quantity('length', 'the size across');
export const HEIGHT = quantity('length', 'the height as it lies in the jacket');
export const SHELL_AREA = quantity('area', 'the area of both halves');
export const LAYERS = quantity('count', 'the number of layers');
export const SPECIMEN_WEIGHT = quantity('mass', 'the weight of the specimen alone');
export const TOTAL_WEIGHT = quantity('mass', 'the weight of jacket and specimen');
export const SPECIMEN_OR_NONE = optional(quantity('mass', 'the weight of the specimen inside', { zero: true }));
