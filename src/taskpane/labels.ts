/** Labels for all sides of a jacket, on one page to cut apart. */
import { type LabelModel, labelModels } from './card-model.ts';
import { element } from './element.ts';
import type { JacketPlan } from './jacket-plan.ts';
import { fieldElement, followLine } from './shop-card.ts';

const label = ({ half, place, names, weight, people }: LabelModel): HTMLElement =>
  element(
    'section',
    { class: 'label' },
    element('h2', {}, `${half}, ${place}`),
    element('dl', {}, ...names.map(fieldElement)),
    element('p', { class: 'label-weight' }, element('strong', {}, weight), ' with specimen'),
    element('p', { class: 'label-people' }, 'lift with ', element('strong', {}, people)),
    element(
      'p',
      { class: 'to-fill' },
      element('span', {}, 'date'),
      element('span', { class: 'to-write' }),
      element('span', {}, 'weighed'),
      element('span', { class: 'to-write' }),
    ),
  );

export const labelsPage = (jacket: JacketPlan): HTMLElement => {
  const [top, ...others] = labelModels(jacket);
  return element(
    'article',
    { class: 'page labels' },
    element('h1', { class: 'unseen' }, 'Labels'),
    element(
      'div',
      { class: 'label-top' },
      label(top!),
      element('div', { class: 'tag-bag' }, 'Fix the bag with the original tag here'),
    ),
    element('div', { class: 'label-grid' }, ...others.map(label)),
    followLine(),
  );
};
