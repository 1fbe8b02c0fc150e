/** What each topic is about: its name, the question people come with, and a few sentences. */
import type { Topic } from '../../functions/define.ts';

export interface TopicText {
  readonly name: string;
  readonly question: string;
  readonly text: string;
}

export const TOPIC_TEXTS: Readonly<Record<Topic, TopicText>> = {
  size: {
    name: 'Size of the specimen',
    question: 'How large is the specimen?',
    text: 'Everything begins with three sizes and a weight. Measure the longest size, the size across and the height as it lies. For a long bone a tape round it at several places tells more than three sizes.',
  },
  shell: {
    name: 'Shell',
    question: 'How large and how thick is the shell?',
    text: 'The shell covers the padded specimen in two halves that meet at flanges. Its area and its layers decide how much plaster and cloth go into it.',
  },
  mixing: {
    name: 'Mixing',
    question: 'How much plaster and water, in how many mixes?',
    text: 'Water first, then plaster into the water. These functions say how much of each, how many mixes it takes, and how warm a thick mix can get.',
  },
  cloth: {
    name: 'Cloth, padding, clay',
    question: 'How much cloth, padding and sealer?',
    text: 'Lengths of the roll, sheets of padding, clay for undercuts, sealer for the dry shell, and a list of pieces to cut.',
  },
  weight: {
    name: 'Weight and drying',
    question: 'What will it weigh, and when is it dry?',
    text: 'A fresh shell carries its mixing water: it is heavier and weaker than a dry one. Two weighings tell more about drying than any calculation.',
  },
  feet: {
    name: 'Feet and balance',
    question: 'Where do the feet go, and will it stand?',
    text: 'Three feet always touch. What matters is that the balance point lies well inside their triangle. Origin in the middle of the jacket seen from above, x along the length, y across.',
  },
  strength: {
    name: 'Strength',
    question: 'Will the lower half hold?',
    text: 'Three ways in which a half can fail, how far each is away, and what a rib or one more layer changes. For planning, at rest: no knock and no drop is counted.',
  },
  handling: {
    name: 'Handling and exposure',
    question: 'Who can lift it, and what is in the air?',
    text: 'Lifting, turning over, shelves and dust, by published limits. Local rules come first.',
  },
  jobs: {
    name: 'Whole jobs',
    question: 'What does a whole jacket, or a whole season, need?',
    text: 'One formula for a jacket, one for a table of them, one for what to order, one for the hours, and one that compares with what was really used.',
  },
  about: {
    name: 'About the numbers',
    question: 'Where does a number come from?',
    text: 'Defaults, sources, the reason behind an error, and the version of the calculation.',
  },
};
