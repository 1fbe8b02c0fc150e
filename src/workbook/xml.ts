/**
 * A pull reader for the XML of workbook parts that knows where everything stands in the text.
 *
 * It reads what workbook parts may hold: elements, attributes, text, CDATA, comments, processing instructions, namespaces, the five named
 * entities and numeric ones. Document types, and with them entity declarations, are refused.
 */

import { DEEPEST_ELEMENT, MOST_ATTRIBUTES } from './limits.ts';

/** What `next` has found. A self-closing element is an `open` followed by a `close`. */
export type XmlEvent = 'open' | 'close' | 'text' | 'end';

/** Names in scope: prefix to namespace, and names already resolved. */
interface Scope {
  readonly spaces: ReadonlyMap<string, string>;
  readonly names: Map<string, { readonly local: string; readonly space: string }>;
}

const XML_SPACE = 'http://www.w3.org/XML/1998/namespace';
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const LESS = 60;
const GREATER = 62;
const SLASH = 47;
const EQUALS = 61;

const isSpace = (code: number): boolean => code === 32 || code === 10 || code === 9 || code === 13;

export class XmlReader {
  readonly xml: string;
  /** Makes the error to throw for text that is not well formed. */
  readonly #refuse: () => Error;
  /** Span of the last event in the text. */
  start = 0;
  end = 0;
  /** Of the last element: name as written, its part after the prefix, its namespace, and whether it closes itself. */
  qualified = '';
  local = '';
  space = '';
  selfClosing = false;
  /** Number of elements that are open, the last opened one included. */
  depth = 0;

  #at = 0;
  #closing = false;
  #isCdata = false;
  #sawRoot = false;
  #scope: Scope = { spaces: new Map([['xml', XML_SPACE]]), names: new Map() };
  readonly #open: { readonly name: string; readonly outer: Scope }[] = [];
  #attributeCount = 0;
  readonly #attributeNames: string[] = [];
  /** Start and end of each attribute's value. */
  readonly #attributeSpans: number[] = [];

  constructor(xml: string, refuse: () => Error) {
    this.xml = xml;
    this.#refuse = refuse;
    if (xml.charCodeAt(0) === 0xfeff) this.#at = 1;
  }

  next(): XmlEvent {
    if (this.#closing) return this.#closeSelf();
    const { xml } = this;
    for (;;) {
      const at = this.#at;
      if (at >= xml.length) {
        if (this.depth > 0 || !this.#sawRoot) throw this.#refuse();
        return 'end';
      }
      if (xml.charCodeAt(at) !== LESS) return this.#text(at);
      const code = xml.charCodeAt(at + 1);
      if (code === SLASH) return this.#closeTag(at);
      if (code === 33) {
        if (xml.startsWith('<!--', at)) this.#at = this.#after('-->', at + 4);
        else if (xml.startsWith('<![CDATA[', at)) return this.#cdata(at);
        else throw this.#refuse();
      } else if (code === 63) this.#at = this.#after('?>', at + 2);
      else return this.#openTag(at);
    }
  }

  /** Reads on to the root element. */
  openRoot(): { readonly local: string; readonly space: string } {
    if (this.next() !== 'open') throw this.#refuse();
    return { local: this.local, space: this.space };
  }

  /** Prefix of the last element with its colon, or `''`. */
  get prefix(): string {
    return this.qualified.slice(0, this.qualified.length - this.local.length);
  }

  /** Text of the last `text` event. */
  text(): string {
    const raw = this.#isCdata
      ? this.xml.slice(this.start + '<![CDATA['.length, this.end - ']]>'.length)
      : this.xml.slice(this.start, this.end);
    const lines = raw.includes('\r') ? raw.replace(/\r\n?/g, '\n') : raw;
    return this.#isCdata ? lines : this.#decode(lines);
  }

  /** An attribute without prefix of the last `open` event. */
  attribute(name: string): string | undefined {
    for (let i = 0; i < this.#attributeCount; i++) if (this.#attributeNames[i] === name) return this.#value(i);
    return undefined;
  }

  /** An attribute of that local name in one of the namespaces. */
  attributeIn(spaces: ReadonlySet<string>, local: string): string | undefined {
    for (let i = 0; i < this.#attributeCount; i++) {
      const name = this.#attributeNames[i]!;
      const colon = name.indexOf(':');
      if (colon < 0 || name.slice(colon + 1) !== local) continue;
      if (spaces.has(this.#scope.spaces.get(name.slice(0, colon)) ?? '')) return this.#value(i);
    }
    return undefined;
  }

  /** Reads on to the end of the element that has just opened and answers its text, nested elements included. */
  textInside(): string {
    const depth = this.depth;
    let text = '';
    for (;;) {
      const event = this.next();
      if (event === 'text') text += this.text();
      else if (event === 'close' && this.depth < depth) return text;
    }
  }

  /** Reads on to the end of the element that has just opened. */
  skip(): void {
    const depth = this.depth;
    while (this.next() !== 'close' || this.depth >= depth);
  }

  #value(i: number): string {
    const raw = this.xml.slice(this.#attributeSpans[2 * i], this.#attributeSpans[2 * i + 1]);
    return this.#decode(/[\t\r\n]/.test(raw) ? raw.replace(/\r\n|[\t\r\n]/g, ' ') : raw);
  }

  #decode(text: string): string {
    if (!text.includes('&')) return text;
    return text.replace(/&([^;&]*);?/g, (whole, name: string) => {
      if (!whole.endsWith(';')) throw this.#refuse();
      const named = ENTITIES[name];
      if (named !== undefined) return named;
      const digits = /^#(?:x([0-9a-fA-F]{1,6})|([0-9]{1,7}))$/.exec(name);
      if (!digits) throw this.#refuse();
      const code = digits[1] ? Number.parseInt(digits[1], 16) : Number(digits[2]);
      if (code > 0x10ffff) throw this.#refuse();
      return String.fromCodePoint(code);
    });
  }

  #after(mark: string, from: number): number {
    const at = this.xml.indexOf(mark, from);
    if (at < 0) throw this.#refuse();
    return at + mark.length;
  }

  #text(at: number): XmlEvent {
    const next = this.xml.indexOf('<', at);
    this.start = at;
    this.end = next < 0 ? this.xml.length : next;
    this.#at = this.end;
    this.#isCdata = false;
    if (this.depth === 0) {
      if (this.xml.slice(this.start, this.end).trim() !== '') throw this.#refuse();
      return this.next();
    }
    return 'text';
  }

  #cdata(at: number): XmlEvent {
    if (this.depth === 0) throw this.#refuse();
    this.start = at;
    this.end = this.#after(']]>', at);
    this.#at = this.end;
    this.#isCdata = true;
    return 'text';
  }

  #closeSelf(): XmlEvent {
    this.#closing = false;
    this.start = this.end;
    this.#leave();
    return 'close';
  }

  #closeTag(at: number): XmlEvent {
    const name = this.#open[this.depth - 1]?.name;
    if (name === undefined || !this.xml.startsWith(name, at + 2)) throw this.#refuse();
    let end = at + 2 + name.length;
    while (isSpace(this.xml.charCodeAt(end))) end++;
    if (this.xml.charCodeAt(end) !== GREATER) throw this.#refuse();
    this.start = at;
    this.end = end + 1;
    this.#at = this.end;
    this.qualified = name;
    this.#resolve(name);
    this.#leave();
    return 'close';
  }

  #leave(): void {
    this.depth--;
    this.#scope = this.#open[this.depth]!.outer;
  }

  #openTag(at: number): XmlEvent {
    const { xml } = this;
    if (this.depth === 0 && this.#sawRoot) throw this.#refuse();
    if (this.depth >= DEEPEST_ELEMENT) throw this.#refuse();
    this.#sawRoot = true;
    let i = at + 1;
    let code = xml.charCodeAt(i);
    while (code !== GREATER && code !== SLASH && !isSpace(code)) {
      if (code === LESS || code === EQUALS || Number.isNaN(code)) throw this.#refuse();
      code = xml.charCodeAt(++i);
    }
    const name = xml.slice(at + 1, i);
    if (name === '') throw this.#refuse();
    this.#attributeCount = 0;
    let declares = false;
    for (;;) {
      const gap = i;
      while (isSpace(code)) code = xml.charCodeAt(++i);
      if (code === GREATER || code === SLASH) break;
      const nameStart = i;
      while (code !== EQUALS && !isSpace(code)) {
        if (code === LESS || code === GREATER || Number.isNaN(code)) throw this.#refuse();
        code = xml.charCodeAt(++i);
      }
      const attribute = xml.slice(nameStart, i);
      while (isSpace(code)) code = xml.charCodeAt(++i);
      if (code !== EQUALS || gap === nameStart || attribute === '') throw this.#refuse();
      code = xml.charCodeAt(++i);
      while (isSpace(code)) code = xml.charCodeAt(++i);
      if (code !== 34 && code !== 39) throw this.#refuse();
      const close = xml.indexOf(code === 34 ? '"' : "'", i + 1);
      if (close < 0) throw this.#refuse();
      const n = this.#attributeCount++;
      if (n >= MOST_ATTRIBUTES) throw this.#refuse();
      this.#attributeNames[n] = attribute;
      this.#attributeSpans[2 * n] = i + 1;
      this.#attributeSpans[2 * n + 1] = close;
      if (attribute.startsWith('xmlns')) declares = true;
      i = close + 1;
      code = xml.charCodeAt(i);
    }
    this.selfClosing = code === SLASH;
    if (this.selfClosing && xml.charCodeAt(++i) !== GREATER) throw this.#refuse();
    this.start = at;
    this.end = i + 1;
    this.#at = this.end;
    this.#open[this.depth] = { name, outer: this.#scope };
    this.depth++;
    if (declares) this.#declare();
    this.qualified = name;
    this.#resolve(name);
    this.#closing = this.selfClosing;
    return 'open';
  }

  #declare(): void {
    const spaces = new Map(this.#scope.spaces);
    for (let i = 0; i < this.#attributeCount; i++) {
      const name = this.#attributeNames[i]!;
      if (name === 'xmlns') spaces.set('', this.#value(i));
      else if (name.startsWith('xmlns:')) spaces.set(name.slice('xmlns:'.length), this.#value(i));
    }
    this.#scope = { spaces, names: new Map() };
  }

  #resolve(name: string): void {
    let known = this.#scope.names.get(name);
    if (!known) {
      const colon = name.indexOf(':');
      const prefix = colon < 0 ? '' : name.slice(0, colon);
      const space = this.#scope.spaces.get(prefix);
      if (space === undefined && prefix !== '') throw this.#refuse();
      known = { local: name.slice(colon + 1), space: space ?? '' };
      this.#scope.names.set(name, known);
    }
    this.local = known.local;
    this.space = known.space;
  }
}
