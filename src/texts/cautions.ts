/**
 * The cautions that stand beside numbers which can hurt someone, for pane, help pages, sample workbooks and print alike.
 *
 * What to do comes first, then why, with published figures. Each source says how it is known.
 */

import type { Basis } from '../calculation/settings.ts';

export type CautionId = 'dust' | 'eyes' | 'heat' | 'lifting' | 'solvent' | 'turning';

/** Where a figure of a caution comes from. */
export interface CautionSource {
  readonly text: string;
  readonly basis: Basis;
}

export interface Caution {
  readonly id: CautionId;
  /** A word or two. */
  readonly title: string;
  /** What to do, in one or two sentences. */
  readonly text: string;
  /** Why, in two to four sentences. */
  readonly why: string;
  readonly sources: readonly CautionSource[];
  /** Name of the sign in `drawing/signs.ts`. */
  readonly sign: 'dust' | 'eye' | 'hand-heat' | 'lifting' | 'flame' | 'turning';
}

/** Stands with every set of cautions. */
export const FOLLOW = "Follow your local codes and the maker's data sheet.";

/** Stands beside every number about lifting, strength, stability, dust or drying. */
export const PLANNING = 'Estimates for planning.';

export const CAUTIONS: readonly Caution[] = [
  {
    id: 'dust',
    title: 'Dust',
    text: 'Mix dry plaster outdoors or under exhaust, and wear a respirator that has been fitted to you where dust holds silica or glass. Clean up wet, never with a broom or an air hose.',
    why: 'Plaster dust is limited to 15 mg/m³ in all and 5 mg/m³ of the fine part that reaches the lungs, as an 8-hour average; another recommendation is 10 and 5. For fine crystalline silica, found in sand, sandstone and many other rocks, the limit is 0.05 mg/m³, a hundred times less. Glass fibre irritates skin, eyes and throat; the recommended limit is 3 fibres in a cubic centimetre of air.',
    sources: [
      {
        text: 'Plaster: 29 CFR 1910.1000, table Z-1; lower total: NIOSH recommended exposure limit',
        basis: 'published',
      },
      { text: 'Silica: 29 CFR 1910.1053, 50 µg/m³', basis: 'published' },
      {
        text: 'Glass fibre: NIOSH recommended exposure limit, fibres up to 3.5 µm across and at least 10 µm long',
        basis: 'published',
      },
      { text: 'Irritation by glass fibre; fitting of respirators, 29 CFR 1910.134', basis: 'memory' },
    ],
    sign: 'dust',
  },
  {
    id: 'eyes',
    title: 'Eyes',
    text: 'Wear eye protection when scraping, blowing, sawing, drilling or sanding. Whoever stands by needs it too.',
    why: 'Set plaster, stiff glass cloth and rock leave the tool as splinters, and air throws them back. Eye protection to ANSI/ISEA Z87.1, or to the standard of your country, is tested against flying pieces; ordinary spectacles are not.',
    sources: [
      { text: 'ANSI/ISEA Z87.1', basis: 'memory' },
      { text: 'Splinters: no source', basis: 'common practice' },
    ],
    sign: 'eye',
  },
  {
    id: 'heat',
    title: 'Hands and heat',
    text: 'Never cast plaster round a hand or any other part of the body; thick mixes burn. Wear gloves for glass cloth and for lime.',
    why: 'Round the hands of four pupils a block of dental plaster reached 70 °C: all four were burned, and three lost fingers. Five litres of art plaster reached 47 to 51 °C, and a hand was held fast while the plaster was still below 30 °C. Skin is harmed from about 45 °C if the touch lasts. Less water makes the mix hotter.',
    sources: [
      { text: 'Burns 1982, doi 10.1016/0305-4179(82)90135-8', basis: 'published' },
      { text: 'IFA project 3148, 2018: maxima of 46.9 to 50.8 °C for three products', basis: 'published' },
      { text: 'Harm from about 45 °C: a published safety guide for art teachers', basis: 'published' },
      { text: 'Hotter with less water: heat of hydration over the heat capacity of the mix', basis: 'derived' },
    ],
    sign: 'hand-heat',
  },
  {
    id: 'lifting',
    title: 'Lifting',
    text: 'Weigh it first, then choose people or a hoist. Lift by the flanges or the whole shell, never one half by its handles.',
    why: 'For one person the published limit is 23 kg (51 lb) held close in the best posture; with the hands 63 cm (25 in) away about 9 kg (20 lb) are left. Two people lift about two thirds of what they could lift one by one together, three about half, and more than four are unlikely to work as a team. Handles pull on one half alone, so the other half hangs on the bolts.',
    sources: [
      { text: 'Limit and reach: DHHS (NIOSH) Publication 94-110', basis: 'published' },
      { text: 'Teams: HSE L23, Manual handling', basis: 'published' },
      { text: 'Handles: no source', basis: 'common practice' },
    ],
    sign: 'lifting',
  },
  {
    id: 'solvent',
    title: 'Solvents',
    text: 'Seal outdoors or under exhaust, with no flame, heater or spark near. Keep lids on, and put wet rags into a closed metal can.',
    why: 'Sealing resins are thinned with solvents such as ethanol and acetone, whose vapours catch fire below room temperature: ethanol from 13 °C, acetone from about −18 °C. From 3.3 % of ethanol in the air the vapour can explode. To breathe, both are limited to 1000 ppm over 8 hours; for acetone 250 ppm is recommended.',
    sources: [
      { text: 'Ethanol: NIOSH Pocket Guide to Chemical Hazards', basis: 'published' },
      { text: 'Acetone, limits: OSHA chemical sampling information', basis: 'published' },
      { text: 'Acetone, flash point: NIOSH Pocket Guide to Chemical Hazards', basis: 'memory' },
      { text: 'Rags in a closed metal can: no source', basis: 'common practice' },
    ],
    sign: 'flame',
  },
  {
    id: 'turning',
    title: 'Turning over',
    text: 'Tighten every bolt before turning over, and agree who calls the moves. Turn onto padding, and keep hands clear of the edge that goes down.',
    why: 'Half-way over, the jacket stands on an edge and the bolts alone hold its halves together. A jacket turned on the day it is made still holds its mixing water: it is heavier than when dry, and gypsum that is soaked keeps only about half of its strength. Let it dry where it can wait.',
    sources: [
      { text: 'Strength when soaked: Gypsum & Lime 13, 1954', basis: 'published' },
      { text: 'Bolts, and one who calls: no source', basis: 'common practice' },
    ],
    sign: 'turning',
  },
];

/** What a number is about that can hurt someone. */
export type HurtKind = 'lifting' | 'dust' | 'heat' | 'strength' | 'stability' | 'solvent';

/** The cautions that must stand beside a number of each kind, the most pressing first. */
export const hurtCautions: { readonly [K in HurtKind]: readonly CautionId[] } = {
  lifting: ['lifting', 'turning'],
  dust: ['dust', 'eyes'],
  heat: ['heat'],
  strength: ['lifting', 'turning'],
  stability: ['turning', 'lifting'],
  solvent: ['solvent'],
};

/** @returns the cautions that stand beside a number of these kinds, each once, in the order of `CAUTIONS` */
export const cautionsFor = (kinds: readonly HurtKind[]): readonly Caution[] => {
  const ids = new Set(kinds.flatMap((kind) => hurtCautions[kind]));
  return CAUTIONS.filter((caution) => ids.has(caution.id));
};
