/** The shop card: one page that goes to the bench with the jacket. */
import type { Drawing } from '../drawing/svg.ts';
import { CAUTIONS, FOLLOW, PLANNING } from '../texts/cautions.ts';
import { type CardPart, cardModel, type Field } from './card-model.ts';
import { element, signElement } from './element.ts';
import type { JacketPlan } from './jacket-plan.ts';
import type { MixLine } from './mix-lines.ts';
import { feetDrawing, layoutDrawing } from './plan-drawings.ts';
import { drawingElement, tableElement } from './table-element.ts';

/** Widths of the drawings on paper [px], 96 to the inch. */
const FEET_WIDTH = 280;
const LAYOUT_WIDTH = 660;

/** Boxes to tick beyond which a line is left to count on [1]. Our own choice. */
const MOST_BOXES = 24;

const formulaLine = (formula: string): HTMLElement =>
  element('p', { class: 'card-formula' }, element('code', {}, formula));

/** A name with its value, or with a line to write on. */
export const fieldElement = ([name, value]: Field): HTMLElement =>
  element(
    'div',
    { class: 'card-field' },
    element('dt', {}, name),
    element('dd', value === '' ? { class: 'to-write' } : {}, value),
  );

const boxes = (count: number): HTMLElement =>
  count > MOST_BOXES
    ? element('span', {}, 'made so far: ', element('span', { class: 'to-write' }))
    : element('span', { class: 'boxes' }, ...Array.from({ length: count }, () => element('span', { class: 'box' })));

const mixItem = ({ half, count, water, waterMass, plaster, slurry }: MixLine): HTMLElement =>
  element(
    'li',
    {},
    element(
      'span',
      {},
      element(
        'strong',
        {},
        `${half[0]!.toUpperCase()}${half.slice(1)} half, ${count} ${count === 1 ? 'mix' : 'mixes'}: `,
      ),
      `water ${water} (${waterMass}), then plaster ${plaster}; makes ${slurry}`,
    ),
    boxes(count),
  );

const orReason = <T>({ reason, lines }: CardPart<T>, make: (lines: readonly T[]) => HTMLElement): HTMLElement =>
  reason === undefined ? make(lines) : element('p', {}, reason);

const drawn = (drawing: Drawing | undefined, instead: string): HTMLElement =>
  drawing ? drawingElement(drawing) : element('p', {}, instead);

/** What stands at the end of every page. */
export const followLine = (): HTMLElement => element('p', { class: 'card-follow' }, `${PLANNING} ${FOLLOW}`);

const USED = ['plaster', 'water', 'cloth', 'sheets', 'layers'] as const;
const SIGNED = ['made by', 'date', 'weighed'] as const;

const toFill = (names: readonly string[], look: string, before = ''): HTMLElement =>
  element(
    'p',
    { class: look },
    before !== '' && element('strong', {}, before),
    ...names.map((name) =>
      element('span', { class: 'to-fill' }, element('span', {}, name), element('span', { class: 'to-write' })),
    ),
  );

export const shopCard = (jacket: JacketPlan): HTMLElement => {
  const model = cardModel(jacket);
  return element(
    'article',
    { class: 'page card' },
    element('h1', {}, 'Shop card'),
    element('dl', { class: 'card-names' }, ...model.names.map(fieldElement)),
    element('dl', { class: 'card-names' }, ...model.weights.map(fieldElement)),
    formulaLine(model.formula),
    model.advice !== '' && element('p', { class: 'card-advice' }, model.advice),
    element(
      'div',
      { class: 'card-columns' },
      element(
        'div',
        {},
        element('h2', {}, 'Mix in this order'),
        orReason(model.mixes, (lines) => element('ol', { class: 'card-mixes' }, ...lines.map(mixItem))),
        formulaLine(model.mixes.formula),
        element('h2', {}, 'Times'),
        orReason(model.times, (lines) =>
          tableElement('When each step begins', [
            ['step', 'begins after', 'lasts'],
            ...lines.map(({ step, starts, lasts }) => [step, starts, lasts]),
          ]),
        ),
        formulaLine(model.times.formula),
        element('h2', {}, 'Cut'),
        element('p', {}, `Cloth: ${model.layers}; ${model.roll} of roll. Padding: ${model.padding}.`),
        orReason(model.cuts, (lines) =>
          element(
            'p',
            { class: 'card-cuts' },
            ...lines.map(({ purpose, pieces, size }) =>
              element('span', {}, element('span', { class: 'box' }), ` ${purpose}: ${pieces} of ${size}`),
            ),
          ),
        ),
        formulaLine(model.cuts.formula),
      ),
      element(
        'div',
        {},
        element('h2', {}, 'Feet'),
        drawn(feetDrawing(jacket, 'card-feet', FEET_WIDTH), 'There is no drawing of its feet.'),
        formulaLine(model.feetFormula),
      ),
    ),
    element(
      'div',
      { class: 'card-layout' },
      drawn(layoutDrawing(jacket, 'card-layout', LAYOUT_WIDTH), 'There is no drawing of the roll.'),
    ),
    element(
      'p',
      { class: 'instead-of-layout' },
      'The roll is too long to be drawn here. Its layout stands in the pane.',
    ),
    element('h2', {}, 'Cautions'),
    element(
      'ul',
      { class: 'card-cautions' },
      ...CAUTIONS.map(({ title, text, sign }) =>
        element(
          'li',
          {},
          signElement(sign, 18),
          element('span', {}, element('strong', {}, `${title}. `), element('span', { class: 'whole' }, text)),
        ),
      ),
    ),
    followLine(),
    toFill(USED, 'card-used', 'Really used'),
    toFill(SIGNED, 'card-signed'),
  );
};
