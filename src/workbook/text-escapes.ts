/** Characters that XML cannot hold are written `_xHHHH_` (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */

const ESCAPE = /_x([0-9a-fA-F]{4})_/g;
/** Characters without a place in XML: most control characters, two that are none, halves of pairs. The carriage return would be read as a line feed. */
const UNWRITABLE = /(?![\t\n\x7f-\x9f])\p{Cc}|[\ufffe\uffff]|\p{Cs}/gu;
/** An underscore that would be read as the start of an escape. */
const LOOKS_ESCAPED = /_(?=x[0-9a-fA-F]{4}_)/g;

const escapeOf = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

/** `_x0007_` to the character it stands for. */
export const decodeEscapes = (text: string): string =>
  text.includes('_x') ? text.replace(ESCAPE, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))) : text;

const MARKS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A formula for the file. Its text is not searched for escapes when it is read, so underscores stay. */
export const escapeFormula = (text: string): string =>
  text.replace(UNWRITABLE, escapeOf).replace(/[&<>]/g, (mark) => MARKS[mark]!);

/** A cell's text for the file. */
export const escapeText = (text: string): string => escapeFormula(text.replace(LOOKS_ESCAPED, '_x005F_'));

/** An attribute's value between double quotes. */
export const escapeAttribute = (text: string): string => text.replace(/[&<>"]/g, (mark) => MARKS[mark]!);
