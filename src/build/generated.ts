/** Texts of the committed files that are made from the registry, by path. */
import { metadata } from './metadata.ts';
import { reference } from './reference.ts';

export const generatedTexts = (): Map<string, string> =>
  new Map([
    ['manifest/functions.json', `${JSON.stringify(metadata(), null, 2)}\n`],
    ['src/functions/README.md', `${reference().trimEnd()}\n`],
  ]);
