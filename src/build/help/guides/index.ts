/** All guides in the order in which people need them. */
import type { Guide } from '../pieces.ts';
import { calibrate } from './calibrate.ts';
import { errors } from './errors.ts';
import { firstJacket } from './first-jacket.ts';
import { keyboard } from './keyboard.ts';
import { limits } from './limits.ts';
import { season } from './season.ts';
import { shop } from './shop.ts';
import { units } from './units.ts';

export const GUIDES: readonly Guide[] = [firstJacket, season, shop, calibrate, units, errors, limits, keyboard];
