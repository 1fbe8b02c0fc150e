/** Text patterns of spreadsheet programs: `*` any characters, `?` one, `~` in front of these and of itself for the character. */

const SPECIAL = /~[*?~]|[*?]|[\\^$.|+()[\]{}]/g;

const piece = (found: string): string => {
  if (found === '*') return '[^]*';
  if (found === '?') return '[^]';
  return found.startsWith('~') ? `\\${found.charAt(1)}` : `\\${found}`;
};

export const hasWildcards = (text: string): boolean => /[*?~]/.test(text);

/** A pattern as a regular expression, letter case aside, that looks anywhere in a text. */
export const looksFor = (pattern: string): RegExp =>
  new RegExp(pattern.replace(SPECIAL, piece).replaceAll('[^]*', '[^]*?'), 'gi');

/** A pattern as a regular expression, letter case aside, for a whole text. */
export const isWhole = (pattern: string): RegExp => new RegExp(`^${pattern.replace(SPECIAL, piece)}$`, 'i');
