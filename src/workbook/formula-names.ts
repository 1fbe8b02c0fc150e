/** Which function calls a formula makes, and which names it makes for itself. */

import type { Token } from './formula-tokens.ts';

export interface Call {
  /** Index of the closing bracket. */
  readonly close: number;
  /** Index of the first token of each argument and of the token after its last. */
  readonly arguments: readonly { readonly from: number; readonly to: number }[];
}

/** Calls by the index of the function's name. A call that is never closed is left out. */
export function functionCalls(tokens: readonly Token[]): Map<number, Call> {
  const calls = new Map<number, Call>();
  const open: { name: number; starts: number[] }[] = [];
  tokens.forEach((token, i) => {
    if (token.kind !== 'mark') return;
    if (token.text === '(' || token.text === '{') {
      const isCall = token.text === '(' && tokens[i - 1]?.kind === 'word';
      open.push({ name: isCall ? i - 1 : -1, starts: [i + 1] });
    } else if (token.text === ',') open.at(-1)?.starts.push(i + 1);
    else if (token.text === ')' || token.text === '}') {
      const last = open.pop();
      if (!last || last.name < 0) return;
      const spans = last.starts.map((from, n) => ({ from, to: (last.starts[n + 1] ?? i + 1) - 1 }));
      calls.set(last.name, { close: i, arguments: spans });
    }
  });
  return calls;
}

/** The one word of an argument, or undefined where it is more than a word. */
function onlyWord(tokens: readonly Token[], span: { from: number; to: number }): string | undefined {
  const inside = tokens.slice(span.from, span.to).filter((token) => token.kind !== 'space');
  return inside.length === 1 && inside[0]!.kind === 'word' ? inside[0]!.text.toLowerCase() : undefined;
}

/** Indexes of the words that `LET` and `LAMBDA` name, where they are named and where they are used. */
export function localNames(tokens: readonly Token[]): Set<number> {
  const found = new Set<number>();
  for (const [name, call] of functionCalls(tokens)) {
    const kind = tokens[name]!.text.toUpperCase().replace('_XLFN.', '');
    if (kind !== 'LET' && kind !== 'LAMBDA') continue;
    const declared = call.arguments.slice(0, -1).filter((_, n) => kind === 'LAMBDA' || n % 2 === 0);
    const names = new Set(declared.map((span) => onlyWord(tokens, span)));
    for (let i = name + 1; i < call.close; i++) {
      const isPart = tokens[i + 1]?.text === '!' || tokens[i - 1]?.text === '!';
      if (tokens[i]!.kind === 'word' && !isPart && names.has(tokens[i]!.text.toLowerCase())) found.add(i);
    }
  }
  return found;
}
