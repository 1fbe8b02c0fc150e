/** The parts inside a workbook file: their texts, how they point at each other, and the list of their types. */

import { LARGEST_TEXT } from './limits.ts';
import { escapeAttribute } from './text-escapes.ts';
import type { WorkbookError } from './workbook-error.ts';
import { XmlReader } from './xml.ts';
import { Zip } from './zip.ts';

const CONTENT_TYPES = '[Content_Types].xml';

/** A pointer from one part to another. */
export interface Relationship {
  readonly id: string;
  readonly type: string;
  /** Name of the part; undefined where it points outside of the file. */
  readonly target?: string;
  /** Span of its element in the text of the relationships. */
  readonly start: number;
  readonly end: number;
}

/** True for a relationship type of that last step. The steps before it differ between the two editions of the format. */
export const isType = (relationship: Relationship, last: string): boolean => relationship.type.endsWith(`/${last}`);

/** The part that holds the relationships of `path`; `''` is the file itself. */
const relationshipsOf = (path: string): string => {
  const slash = path.lastIndexOf('/') + 1;
  return `${path.slice(0, slash)}_rels/${path.slice(slash)}.rels`;
};

/** A target as seen from the part that names it. */
function resolve(source: string, target: string): string {
  const steps = target.startsWith('/') ? [] : source.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}

export class Parts {
  readonly zip: Zip;
  /** The text asked for last, since a sheet is often read twice in a row. */
  #last: { path: string; text: string } | undefined;

  constructor(bytes: Uint8Array, fileName: string) {
    this.zip = new Zip(bytes, fileName);
  }

  refuse(what: string): WorkbookError {
    return this.zip.refuse(what);
  }

  has(path: string): boolean {
    return this.zip.has(path);
  }

  text(path: string): string {
    if (this.#last?.path === path) return this.#last.text;
    const bytes = this.zip.read(path);
    if (bytes.length > LARGEST_TEXT)
      throw this.refuse(`has a part larger than 500 MB, the most that is read here: ${path}`);
    let text: string;
    try {
      text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    } catch {
      throw this.#notUtf8(path);
    }
    const encoding = /^\ufeff?<\?xml[^>]*\sencoding\s*=\s*["']([^"']*)["']/.exec(text)?.[1];
    if (encoding && !/^(utf-?8|us-ascii)$/i.test(encoding)) throw this.#notUtf8(path);
    this.#last = { path, text };
    return text;
  }

  #notUtf8(path: string): WorkbookError {
    return this.refuse(`has a part that is not in UTF-8: ${path}. Open it in a spreadsheet and save it anew`);
  }

  write(path: string, text: string): void {
    this.zip.write(path, new TextEncoder().encode(text));
    this.#last = { path, text };
  }

  remove(path: string): void {
    this.zip.remove(path);
    this.#last = undefined;
  }

  /** The error for a part whose XML is broken. */
  broken(path: string): WorkbookError {
    return this.refuse(`is damaged: its part ${path} cannot be read`);
  }

  reader(path: string): XmlReader {
    return new XmlReader(this.text(path), () => this.broken(path));
  }

  relationships(source: string): Relationship[] {
    const path = relationshipsOf(source);
    const found: Relationship[] = [];
    if (!this.has(path)) return found;
    const reader = this.reader(path);
    for (let event = reader.next(); event !== 'end'; event = reader.next()) {
      if (event !== 'open' || reader.local !== 'Relationship') continue;
      const target = reader.attribute('Target') ?? '';
      const isOutside = reader.attribute('TargetMode') === 'External';
      const { start } = reader;
      const id = reader.attribute('Id') ?? '';
      const type = reader.attribute('Type') ?? '';
      reader.skip();
      found.push({ id, type, start, end: reader.end, ...(isOutside ? {} : { target: resolve(source, target) }) });
    }
    return found;
  }

  /** Adds a part with its relationship from `source`. `type` is the relationship's, `content` the part's type. */
  addPart(source: string, part: { path: string; text: string; type: string; content: string }): void {
    this.write(part.path, part.text);
    const path = relationshipsOf(source);
    const used = new Set(this.relationships(source).map((relationship) => relationship.id));
    let number = used.size + 1;
    while (used.has(`rId${number}`)) number++;
    this.#append(path, 'Relationship', `Id="rId${number}" Type="${part.type}" Target="/${escapeAttribute(part.path)}"`);
    this.#append(CONTENT_TYPES, 'Override', `PartName="/${escapeAttribute(part.path)}" ContentType="${part.content}"`);
  }

  /** Takes a part out, with its relationship from `source` and its entry in the list of types. */
  removePart(source: string, relationship: Relationship): void {
    const path = relationshipsOf(source);
    const text = this.text(path);
    this.write(path, text.slice(0, relationship.start) + text.slice(relationship.end));
    if (relationship.target === undefined) return;
    const name = `/${relationship.target}`.toLowerCase();
    const reader = this.reader(CONTENT_TYPES);
    for (let event = reader.next(); event !== 'end'; event = reader.next()) {
      if (event !== 'open' || reader.local !== 'Override' || reader.attribute('PartName')?.toLowerCase() !== name)
        continue;
      const { start } = reader;
      reader.skip();
      this.write(CONTENT_TYPES, reader.xml.slice(0, start) + reader.xml.slice(reader.end));
      break;
    }
    this.remove(relationship.target);
  }

  /** Type of a part by the list of types, or undefined. */
  contentType(path: string): string | undefined {
    const reader = this.reader(CONTENT_TYPES);
    const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
    let byEnding: string | undefined;
    for (let event = reader.next(); event !== 'end'; event = reader.next()) {
      if (event !== 'open') continue;
      const type = reader.attribute('ContentType');
      if (reader.local === 'Override' && reader.attribute('PartName')?.toLowerCase() === `/${path.toLowerCase()}`)
        return type;
      if (reader.local === 'Default' && reader.attribute('Extension')?.toLowerCase() === ending) byEnding = type;
    }
    return byEnding;
  }

  /** Writes an empty element at the end of a part's root, with the root's own prefix. */
  #append(path: string, local: string, attributes: string): void {
    const reader = this.reader(path);
    reader.openRoot();
    const element = `<${reader.prefix}${local} ${attributes}/>`;
    if (reader.selfClosing) {
      const root = reader.xml.slice(reader.start, reader.end).replace(/\s*\/>$/, '>');
      this.write(
        path,
        `${reader.xml.slice(0, reader.start)}${root}${element}</${reader.qualified}>${reader.xml.slice(reader.end)}`,
      );
      return;
    }
    reader.skip();
    this.write(path, reader.xml.slice(0, reader.start) + element + reader.xml.slice(reader.start));
  }
}
