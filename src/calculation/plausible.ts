import {
  type NumberSetting,
  PADDING_DENSITY,
  SETTINGS,
  type SettingKey,
  type Settings,
  WATER_RATIO,
} from './settings.ts';
import { glassReinforcedStrength } from './strength/flexural-strength.ts';

/** How far a value that a shop has set by hand may still be off, as a fraction of it. Assumption. */
export const OWN_VALUE_SPREAD = 0.05;

/** Inputs that keep their central values where a shop has calibrated, since the calibration was measured with them. */
const CALIBRATED: ReadonlySet<SettingKey> = new Set(['layerThickness', 'finishCoat', 'waterRatio', 'waste']);

/** Relative difference below which a value typed by hand is the default itself, written in other units. */
const SAME = 1e-6;

const defaultOf = (key: SettingKey, s: Settings): number | null => {
  if (key === 'paddingDensity') return PADDING_DENSITY[s.padding];
  if (key === 'waterRatio') return WATER_RATIO[s.plaster];
  if (key === 'flexuralStrength') return glassReinforcedStrength(s.waterRatio);
  return SETTINGS[key].value as number | null;
};

const isCalibrated = (s: Settings): boolean => s.calibrationLow !== null && s.calibrationHigh !== null;

/**
 * The ends between which a setting plausibly lies.
 *
 * A value set by hand, other than the default's own, narrows the range to that value ± 5 %. Where both ends of a calibration are given,
 * the calibration has that range, and what it was measured with keeps its central value.
 *
 * @returns low and high in SI, or undefined where the setting carries no range
 */
export const plausibleRange = (key: SettingKey, s: Settings): readonly [number, number] | undefined => {
  if (key === 'calibration' && isCalibrated(s)) return [s.calibrationLow!, s.calibrationHigh!];
  const { plausible } = SETTINGS[key] as NumberSetting;
  const central = s[key];
  if (!plausible || typeof central !== 'number') return undefined;
  if (isCalibrated(s) && CALIBRATED.has(key)) return undefined;
  const own = s.given[key] as number | undefined;
  const usual = defaultOf(key, s);
  if (own !== undefined && (usual === null || Math.abs(own - usual) > SAME * Math.abs(usual)))
    return [own * (1 - OWN_VALUE_SPREAD), own * (1 + OWN_VALUE_SPREAD)];
  return plausible.relative ? [central * plausible.low, central * plausible.high] : [plausible.low, plausible.high];
};
