/** Tables and drawings of the pane. */
import { type Drawing, standalone, type Table } from '../drawing/svg.ts';
import { problemWords } from './cell-screen.ts';
import { button, element, folded } from './element.ts';
import type { ScreenTools } from './screen.ts';

/** A table whose first row is its header and whose first column names its rows. */
export const tableElement = (caption: string, [header, ...rows]: Table, look = ''): HTMLElement =>
  element(
    'table',
    { class: `rows ${look}`.trim() },
    element('caption', { class: 'unseen' }, caption),
    element('thead', {}, element('tr', {}, ...header!.map((cell) => element('th', { scope: 'col' }, cell)))),
    element(
      'tbody',
      {},
      ...rows.map(([first, ...cells]) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, first ?? ''),
          ...cells.map((cell) => element('td', {}, cell)),
        ),
      ),
    ),
  );

/** A drawing of ours as an element of the page. Its texts were escaped where it was made. */
export const drawingElement = ({ svg }: Drawing): HTMLElement => {
  const place = element('div', { class: 'drawing' });
  place.innerHTML = svg;
  return place;
};

/** Hands a file to the browser. */
export const saveText = (text: string, type: string, name: string): void => {
  const address = URL.createObjectURL(new Blob([text], { type }));
  element('a', { href: address, download: name }).click();
  // The browser takes the file in its own time.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};

/** Width of a drawing outside of the pane, such as in a sheet or a file [px]. Our own choice. */
const WIDTH_OUTSIDE = 560;

/**
 * A drawing that is made again when its place becomes wider or narrower, with the table that says the same and with what can be done with it.
 *
 * @param name short, for files and lists of objects
 * @param draw makes it at a width
 */
export const drawingFigure = (
  title: string,
  name: string,
  draw: (id: string, width: number) => Drawing | undefined,
  tools: ScreenTools,
): HTMLElement | undefined => {
  const id = `pane-${name}`;
  const whole = draw(`${name}-alone`, WIDTH_OUTSIDE);
  if (!whole) return undefined;
  const home = element('div', { class: 'drawing-home' });
  let width = 0;
  new ResizeObserver(() => {
    const now = Math.floor(home.clientWidth);
    if (now === width || now < 1) return;
    width = now;
    const drawing = draw(id, width);
    if (drawing) home.replaceChildren(drawingElement(drawing));
  }).observe(home);
  const actions = element('p', { class: 'actions' });
  const alone = standalone(whole.svg);
  const description = /<desc[^>]*>([^<]*)/.exec(whole.svg)?.[1] ?? title;
  if (tools.host.can('putPicture'))
    actions.append(
      button('Put the drawing on the sheet', () => {
        tools.host.putPicture({ svg: alone, name: title, description }).then(
          () => tools.say('The drawing lies on the sheet.'),
          (problem: unknown) => tools.say(problemWords(problem)),
        );
      }),
    );
  actions.append(
    button('Save the drawing', () => {
      saveText(alone, 'image/svg+xml', `${name}.svg`);
      tools.say(`Handed to the browser as ${name}.svg.`);
    }),
  );
  return element(
    'figure',
    {},
    element('figcaption', {}, title),
    home,
    folded('The same as a table', tableElement(title, whole.table)),
    actions,
  );
};
