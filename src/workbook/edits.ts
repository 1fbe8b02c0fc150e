/** Small changes to a text that leave the rest of it alone. */

import { escapeAttribute } from './text-escapes.ts';

/** A stretch of the old text and what stands there instead. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Applies edits in the order of their places; at one place, insertions in the order given, then the replacement. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const inOrder = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  let at = 0;
  for (const edit of inOrder) {
    pieces.push(text.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(text.slice(at));
  return pieces.join('');
}

const ATTRIBUTE = /(\s+)([^\s=/>]+)(\s*=\s*)("[^"]*"|'[^']*')/g;

/**
 * An opening tag with attributes changed: text sets, null takes away, left out stays. New ones come last.
 * The tag's own ending, `>` or `/>`, stays.
 */
export function withAttributes(tag: string, changes: Readonly<Record<string, string | null | undefined>>): string {
  const done = new Set<string>();
  const changed = tag.replace(ATTRIBUTE, (whole, gap: string, name: string, equals: string) => {
    const value = changes[name];
    if (value === undefined) return whole;
    done.add(name);
    return value === null ? '' : `${gap}${name}${equals}"${escapeAttribute(value)}"`;
  });
  const added = Object.entries(changes).flatMap(([name, value]) =>
    typeof value === 'string' && !done.has(name) ? [` ${name}="${escapeAttribute(value)}"`] : [],
  );
  const ending = /\s*\/?>$/.exec(changed)![0];
  return changed.slice(0, changed.length - ending.length) + added.join('') + ending;
}

/** An opening tag that does not close itself. */
export const opened = (tag: string): string => tag.replace(/\s*\/>$/, '>');
