/** File names of the help pages. Names of function pages never change, since hosts keep them. */
import type { SettingKey } from '../../calculation/settings.ts';
import { SETTINGS } from '../../calculation/settings.ts';
import type { Topic } from '../../functions/define.ts';

export { helpFile } from '../metadata.ts';

export const INDEX_FILE = 'index.html';
export const SETTINGS_FILE = 'list-settings.html';
export const SOURCES_FILE = 'list-sources.html';
export const CAUTIONS_FILE = 'guide-cautions.html';

export const topicFile = (topic: Topic): string => `topic-${topic}.html`;

/** A name as the fragment of an address: `one-person limit` is `one-person-limit`. */
export const fragment = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');

export const settingAddress = (key: SettingKey): string => `${SETTINGS_FILE}#${fragment(SETTINGS[key].name)}`;
