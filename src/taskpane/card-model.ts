/** What stands on the shop card and on the labels, in words. All numbers come from functions that can be put in the sheet. */
import { type CutLine, cutLines, rollWords } from './cut-lines.ts';
import { type JacketPlan, planCell } from './jacket-plan.ts';
import { type MixLine, mixLines } from './mix-lines.ts';
import { lineOf } from './reading.ts';
import { type TimeLine, timeLines } from './time-lines.ts';
import { formulaOf, reasonOf, type Worked } from './worked.ts';

/** A name and what is known of it; blank where it is written by hand. */
export type Field = readonly [name: string, value: string];

/** A part of the card that a function answers, with the formula that gives the same in a sheet. */
export interface CardPart<T> {
  readonly lines: readonly T[];
  readonly formula: string;
  /** Why there are no lines. */
  readonly reason?: string;
}

export interface CardModel {
  readonly names: readonly Field[];
  readonly weights: readonly Field[];
  readonly advice: string;
  readonly formula: string;
  readonly mixes: CardPart<MixLine>;
  readonly cuts: CardPart<CutLine>;
  readonly roll: string;
  /** «6 layers, and 1 over everything» */
  readonly layers: string;
  readonly padding: string;
  readonly times: CardPart<TimeLine>;
  readonly feetFormula: string;
}

/** «about 40.1 kg (35.5 to 46.9 kg)» */
const about = (jacket: JacketPlan, label: string): string => {
  const { value, range } = lineOf(jacket, label);
  return range === '' ? value : `about ${value} (${range})`;
};

/** Who lifts it: «2 people», «a hoist», or from one to the other. */
export const peopleWords = (jacket: JacketPlan): string => {
  const { value, range } = lineOf(jacket, 'crew');
  const words = (text: string): string => text.replace('hoist', 'a hoist');
  return range === '' ? words(value) : `${words(value)} (${words(range)})`;
};

const part = <T>(worked: Worked, lines: readonly T[]): CardPart<T> => {
  const reason = reasonOf(worked);
  return { lines, formula: formulaOf(worked), ...(reason === undefined ? {} : { reason }) };
};

const nameFields = ({ form }: JacketPlan): readonly Field[] => [
  ['number', form.number.trim()],
  ['element', form.element.trim()],
  ['side', form.side.trim()],
];

export const cardModel = (jacket: JacketPlan): CardModel => {
  const advice = planCell(jacket.plan, 'advice').answer;
  const over = jacket.settings.coverLayers;
  return {
    names: nameFields(jacket),
    weights: [
      ['weight with specimen', about(jacket, 'weight')],
      ['on the day it is made', about(jacket, 'wet weight')],
      ['people', peopleWords(jacket)],
    ],
    advice: typeof advice === 'string' ? advice : '',
    formula: formulaOf(jacket.plan),
    mixes: part(jacket.mixes, mixLines(jacket)),
    cuts: part(jacket.cuts, cutLines(jacket)),
    roll: rollWords(jacket),
    layers: `${lineOf(jacket, 'layers').value}, and ${over} over everything`,
    padding: `${jacket.padding}, ${lineOf(jacket, 'padding sheets').value}`,
    times: part(jacket.times, timeLines(jacket)),
    feetFormula: formulaOf(jacket.feet),
  };
};

/** Where labels go: both halves, so that a half that was taken off is known too. */
export const LABEL_PLACES: readonly (readonly [half: string, place: string])[] = [
  ['upper half', 'long side'],
  ['upper half', 'long side'],
  ['upper half', 'end'],
  ['upper half', 'end'],
  ['lower half', 'long side'],
  ['lower half', 'long side'],
  ['lower half', 'end'],
  ['lower half', 'end'],
];

/** The label that lies on top, with the place for the tag. */
export const TOP_LABEL = ['upper half', 'top'] as const;

export interface LabelModel {
  readonly half: string;
  readonly place: string;
  readonly names: readonly Field[];
  readonly weight: string;
  readonly people: string;
}

/** The labels of a jacket, the one on top first. */
export const labelModels = (jacket: JacketPlan): readonly LabelModel[] =>
  [TOP_LABEL, ...LABEL_PLACES].map(([half, place]) => ({
    half,
    place,
    names: nameFields(jacket),
    weight: about(jacket, 'weight'),
    people: peopleWords(jacket),
  }));
