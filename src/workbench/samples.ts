/** Sample workbooks that the page offers. */

export interface Sample {
  readonly file: string;
  readonly title: string;
  /** Sheet and cell that are shown first. */
  readonly sheet?: string;
  readonly cell?: string;
}

/** The first one opens by itself. */
export const SAMPLES: readonly [Sample, ...Sample[]] = [
  {
    file: 'collection-rows.xlsx',
    title: 'A collection sheet with what its jackets need',
    sheet: 'Spilled',
    cell: 'C5',
  },
  { file: 'one-jacket.xlsx', title: 'One jacket' },
  { file: 'felt-or-foam.xlsx', title: 'Felt or foam?' },
  { file: 'will-it-stand.xlsx', title: 'Will it stand, and will it hold?' },
  { file: 'season-budget.xlsx', title: 'A season’s budget' },
];

/** The bytes of a sample. Throws with a sentence for people. */
export async function fetchSample(file: string): Promise<Uint8Array> {
  const answer = await fetch(`samples/${file}`);
  if (!answer.ok) throw new Error(`The sample ${file} is not there.`);
  return new Uint8Array(await answer.arrayBuffer());
}
