import { isFault, type Result } from '../result.ts';
import { type Given, resolveSettings, type SettingKey, type Settings } from '../settings.ts';

/**
 * Settings with some of them changed, as if the shop had set them so: what follows from a changed one follows.
 *
 * What stays the same is still read from the settings handed in, so that whoever watches those sees what a calculation reads.
 *
 * @param settings in force so far
 * @param changes values in SI by key
 * @returns settings, or the fault of a change that is out of range
 */
export const withChanges = (settings: Settings, changes: Given): Result<Settings> => {
  const before = resolveSettings(settings.given);
  const after = resolveSettings({ ...settings.given, ...changes });
  if (isFault(before)) return before;
  if (isFault(after)) return after;
  const different: PropertyDescriptorMap = { given: { value: after.given } };
  for (const key of Object.keys(after) as (SettingKey | 'given')[])
    if (after[key] !== before[key]) different[key] = { value: after[key], enumerable: true };
  return Object.create(settings, different) as Settings;
};
