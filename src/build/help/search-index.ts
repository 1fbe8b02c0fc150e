/** The list that the search looks through, as a script: a page opened as a file may load scripts, but not data. */
import { SETTINGS, type SettingKey } from '../../calculation/settings.ts';
import type { Page } from './frame.ts';
import { settingAddress } from './names.ts';

interface Entry {
  readonly to: string;
  /** What it is called. */
  readonly name: string;
  /** What is shown beside the name. */
  readonly text: string;
  /** Further words it can be found by. */
  readonly words: string;
}

const entries = (pages: readonly Page[]): Entry[] => [
  ...pages
    .filter(({ kind }) => kind !== 'index')
    .map(({ file, title, heading, words }) => ({ to: file, name: title, text: heading, words: words.toLowerCase() })),
  ...(Object.keys(SETTINGS) as SettingKey[]).map((key) => ({
    to: settingAddress(key),
    name: SETTINGS[key].name,
    text: `Setting: ${SETTINGS[key].source}`,
    words: `setting ${SETTINGS[key].basis}`,
  })),
];

export const searchIndex = (pages: readonly Page[]): string =>
  `globalThis.HELP_INDEX = ${JSON.stringify(entries(pages), null, 1)};\n`;
