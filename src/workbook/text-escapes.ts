/** Characters that XML cannot hold are written `_xHHHH_` (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */

const ESCAPE = /_x([0-9a-fA-F]{4})_/g;
/** Characters without a place in XML: most control characters, two that are none, halves of pairs. The carriage return would be read as a line feed. */
const UNWRITABLE =
  /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
/** An underscore that would be read as the start of an escape. */
const LOOKS_ESCAPED = /_(?=x[0-9a-fA-F]{4}_)/g;

const escapeOf = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;

/** `_x0007_` to the character it stands for. */
export const decodeEscapes = (text: string): string =>
  text.includes('_x') ? text.replace(ESCAPE, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))) : text;

/** The characters `&`, `<`, `>` as XML text wants them. Formulas and names know no `_x` escapes. */
export const escapeXml = (text: string): string =>
  text.replace(/[&<>]/g, (c) => (c === '&' ? '&amp;' : c === '<' ? '&lt;' : '&gt;')).replace(/\r/g, '&#13;');

/** A cell's text for the file. */
export const escapeText = (text: string): string =>
  escapeXml(text.replace(LOOKS_ESCAPED, '_x005F_').replace(UNWRITABLE, escapeOf));

/** An attribute's value between double quotes. */
export const escapeAttribute = (text: string): string => escapeXml(text).replace(/"/g, '&quot;');
