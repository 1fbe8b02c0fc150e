/** The fields of the form for one jacket: native ones, each with its unit beside it and its reason below it. */
import { unitName } from '../functions/calling/units.ts';
import { element } from './element.ts';
import { NAMES, type Name, type PlanForm, SIZES, type Size } from './plan-form.ts';

const SIZE_LABELS: Readonly<Record<Size, string>> = {
  length: 'Length, its longest size',
  width: 'Width, across',
  height: 'Height, as it lies in the jacket',
  weight: 'Weight of the specimen alone',
};

const NAME_LABELS: Readonly<Record<Name, string>> = {
  number: 'Number',
  element: 'Element, such as skull',
  side: 'Side, such as left',
};

/** Longest name that still fits on a label. Our own choice. */
const MOST_LETTERS = '40';

export interface PlanFields {
  readonly place: HTMLFormElement;
  /** The form as it stands now. */
  read(): PlanForm;
  /** Shows reasons, and takes away those that are no more. */
  tell(reasons: Partial<Record<Size, string>>): void;
  /** Brings the first field with a reason into the hands of whoever types. */
  focusFirst(): void;
}

const radio = (name: string, value: string, words: string, checked: boolean): HTMLElement =>
  element(
    'label',
    { class: 'choice' },
    element('input', { type: 'radio', name, value, checked }),
    element('span', {}, words),
  );

const tick = (name: string, words: string): HTMLElement =>
  element('label', { class: 'choice' }, element('input', { type: 'checkbox', name }), element('span', {}, words));

const group = (legend: string, ...children: readonly HTMLElement[]): HTMLElement =>
  element('fieldset', {}, element('legend', {}, legend), ...children);

export const planFields = (form: PlanForm, ...actions: readonly HTMLElement[]): PlanFields => {
  const inputs = {} as Record<Size, HTMLInputElement>;
  const units = {} as Record<Size, HTMLElement>;
  const reasons = {} as Record<Size, HTMLElement>;
  const names = {} as Record<Name, HTMLInputElement>;
  const sizeField = (size: Size): HTMLElement => {
    const id = `plan-${size}`;
    units[size] = element('span', { class: 'unit', id: `${id}-unit` });
    reasons[size] = element('p', { class: 'field-reason', id: `${id}-reason` });
    inputs[size] = element('input', {
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      id,
      name: size,
      value: form[size],
      'aria-describedby': `${id}-unit ${id}-reason`,
    });
    return element(
      'div',
      { class: 'field' },
      element('label', { for: id }, SIZE_LABELS[size]),
      element('span', { class: 'with-unit' }, inputs[size], units[size]),
      reasons[size],
    );
  };
  const nameField = (name: Name): HTMLElement => {
    const id = `plan-${name}`;
    names[name] = element('input', {
      type: 'text',
      autocomplete: 'off',
      maxlength: MOST_LETTERS,
      id,
      name,
      value: form[name],
    });
    return element('div', { class: 'field' }, element('label', { for: id }, NAME_LABELS[name]), names[name]);
  };
  const padding = element(
    'select',
    { id: 'plan-padding', name: 'padding' },
    element('option', { value: 'choose' }, 'let it choose'),
    element('option', { value: 'felt' }, 'felt'),
    element('option', { value: 'foam' }, 'foam'),
  );
  padding.value = form.padding;
  const asked = group(
    'To choose the padding',
    tick('fragile', 'It is fragile'),
    tick('relief', 'Its surface is of high relief'),
  );
  const place = element(
    'form',
    { class: 'plan-form', novalidate: true, autocomplete: 'off' },
    group(
      'Units',
      radio('system', 'metric', 'cm and kg', form.system === 'metric'),
      radio('system', 'us', 'in and lb', form.system === 'us'),
    ),
    ...SIZES.map(sizeField),
    element('div', { class: 'field' }, element('label', { for: 'plan-padding' }, 'Padding'), padding),
    asked,
    element(
      'details',
      {},
      element('summary', {}, 'Names for the print'),
      element(
        'p',
        { class: 'faint' },
        'Kept only until this page is closed. What is blank becomes a line to write on.',
      ),
      ...NAMES.map(nameField),
    ),
    element('p', { class: 'actions' }, ...actions),
  );
  const is = (name: string): boolean => (place.elements.namedItem(name) as HTMLInputElement).checked;
  const read = (): PlanForm => ({
    length: inputs.length.value,
    width: inputs.width.value,
    height: inputs.height.value,
    weight: inputs.weight.value,
    number: names.number.value,
    element: names.element.value,
    side: names.side.value,
    system: place.querySelector<HTMLInputElement>('[name="system"]:checked')?.value === 'us' ? 'us' : 'metric',
    padding: padding.value as PlanForm['padding'],
    fragile: is('fragile'),
    relief: is('relief'),
  });
  const follow = (): void => {
    const { system, padding: how } = read();
    for (const size of SIZES) units[size].textContent = unitName(size === 'weight' ? 'mass' : 'length', system);
    asked.hidden = how !== 'choose';
  };
  follow();
  place.addEventListener('change', follow);
  return {
    place,
    read,
    tell: (told) => {
      for (const size of SIZES) {
        reasons[size].textContent = told[size] ?? '';
        if (told[size] === undefined) inputs[size].removeAttribute('aria-invalid');
        else inputs[size].setAttribute('aria-invalid', 'true');
      }
    },
    focusFirst: () =>
      SIZES.map((size) => inputs[size])
        .find((one) => one.hasAttribute('aria-invalid'))
        ?.focus(),
  };
};
