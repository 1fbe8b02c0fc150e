/** Cuts a formula into tokens. Joined again, they are the formula: nothing is dropped or changed. */

export type TokenKind =
  /** `"text"` */
  | 'string'
  /** `'Sheet name'` or `'[1]Sheet name'` */
  | 'quoted'
  /** `[…]`: columns of a table, a workbook's number */
  | 'bracket'
  /** `#REF!` */
  | 'error'
  /** A name, function, reference, number or sheet name without quotes. */
  | 'word'
  | 'space'
  /** One operator, bracket or comma. */
  | 'mark';

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

const SPACE = /[ \t\r\n]+/y;
const ERROR =
  /#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!|GETTING_DATA)/iy;
/** A number with an exponent first, since its sign is no operator. */
const WORD = /\d+\.?\d*[eE][+-]?\d+|\.\d+(?:[eE][+-]?\d+)?|[\p{L}\p{M}\p{N}_\\$?.]+/uy;

/** End of a quoted stretch whose quote is doubled inside. */
function endOfQuoted(text: string, at: number): number {
  const quote = text[at]!;
  for (let i = at + 1; ; i += 2) {
    i = text.indexOf(quote, i);
    if (i < 0) return text.length;
    if (text[i + 1] !== quote) return i + 1;
  }
}

/** End of a bracket, nested ones included. A single quote inside takes the next character literally. */
function endOfBracket(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const character = text[i];
    if (character === "'") i++;
    else if (character === '[') depth++;
    else if (character === ']' && --depth === 0) return i + 1;
  }
  return text.length;
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

export function tokenise(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length; ) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

function tokenAt(formula: string, at: number): Token {
  const character = formula[at]!;
  if (character === '"') return { kind: 'string', text: formula.slice(at, endOfQuoted(formula, at)) };
  if (character === "'") return { kind: 'quoted', text: formula.slice(at, endOfQuoted(formula, at)) };
  if (character === '[') return { kind: 'bracket', text: formula.slice(at, endOfBracket(formula, at)) };
  const space = match(SPACE, formula, at);
  if (space) return { kind: 'space', text: space };
  const error = character === '#' ? match(ERROR, formula, at) : undefined;
  if (error) return { kind: 'error', text: error };
  const word = match(WORD, formula, at);
  if (word) return { kind: 'word', text: word };
  return { kind: 'mark', text: character };
}
