/** Arguments and limits that the two functions of the lifting equation share. */
import { GRIPS } from '../../calculation/handling/coupling.ts';
import { quantity, word } from './arguments.ts';

/** In the published units of the system in force: the source has parallel constants, not conversions. */
export const LIFT_ARGUMENTS = {
  reach: quantity('length', 'the level distance from ankles to hands', { asTyped: true }),
  height: quantity('length', 'the height of the hands above the floor', { zero: true, asTyped: true }),
  travel: quantity('length', 'how far up or down it is moved', { zero: true, asTyped: true }),
  twist: quantity('angle', 'the twist from straight ahead', { zero: true }),
  rate: quantity('perMinute', 'the number of lifts', { zero: true }),
  hours: quantity('hours', 'how long the work lasts'),
  grip: word(GRIPS, 'good, fair or poor'),
};

export const LIFT_SOURCE =
  'revised NIOSH lifting equation: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110';
