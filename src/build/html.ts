/** Small helpers for pages that are written as text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that may stand anywhere in HTML. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => ENTITIES[c]!);
