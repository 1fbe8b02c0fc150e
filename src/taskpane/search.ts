/** Which functions fit what somebody types. */
import type { WorksheetFunction } from '../functions/define.ts';

const plain = (text: string): string => text.toLowerCase().replaceAll('_', ' ');

/** All words in which a function may be looked for, the most telling ones first. */
const fields = (f: WorksheetFunction): readonly string[] => [
  plain(f.id),
  plain(f.question),
  plain(f.description),
  plain(f.arguments.map(({ name, what }) => `${name} ${what}`).join(' ')),
  plain([f.result.what, f.topic, ...(f.remarks ?? [])].join(' ')),
];

const NOT_FOUND = Number.POSITIVE_INFINITY;

/** How well a word fits: the place of the first field that has it. */
const rank = (word: string, inFields: readonly string[]): number => {
  const at = inFields.findIndex((field) => field.includes(word));
  return at < 0 ? NOT_FOUND : at;
};

/**
 * The functions in which every typed word occurs, the best fitting first; all of them, in their order, where nothing is typed.
 */
export const search = (typed: string, functions: readonly WorksheetFunction[]): readonly WorksheetFunction[] => {
  const words = plain(typed)
    .replace(/^\s*=/, '')
    .replace(/\bjacket\./g, '')
    .split(/[\s,;()]+/)
    .filter(Boolean);
  if (words.length === 0) return functions;
  const isItsName = ({ id }: WorksheetFunction): boolean => plain(id) === words.join(' ');
  return functions
    .map((f) => ({ f, score: words.reduce((sum, word) => sum + rank(word, fields(f)), isItsName(f) ? -1 : 0) }))
    .filter(({ score }) => score < NOT_FOUND)
    .sort((a, b) => a.score - b.score)
    .map(({ f }) => f);
};
