/** Makes elements of the page. Text is always text, never markup. */
import { type SignName, sign } from '../drawing/signs.ts';

type Child = Node | string | undefined | false;

/** Attributes of an element; `onclick` and the like take a function. */
export type Attributes = Readonly<Record<string, string | boolean | undefined | ((event: Event) => void)>>;

/** An element with attributes and children. What is undefined or false is left out. */
export const element = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] => {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') made.addEventListener(name.replace(/^on/, ''), value);
    else if (value === true) made.setAttribute(name, '');
    else if (typeof value === 'string') made.setAttribute(name, value);
  }
  made.append(...children.filter((child): child is Node | string => child !== undefined && child !== false));
  return made;
};

/** One of our signs. A word always stands beside it. */
export const signElement = (name: SignName, size?: number): HTMLElement => {
  const place = element('span', { class: 'sign' });
  // The one markup that is not built element by element: a constant of our own.
  place.innerHTML = sign(name, size);
  return place;
};

/** A button with words, and perhaps a sign before them. */
export const button = (
  words: string,
  onclick: (event: Event) => void,
  look = 'plain',
  before?: SignName,
): HTMLElement => element('button', { type: 'button', class: look, onclick }, before && signElement(before, 18), words);

/** What is folded away under a line of words. */
export const folded = (words: string, ...children: readonly Child[]): HTMLDetailsElement =>
  element('details', {}, element('summary', {}, words), ...children);
