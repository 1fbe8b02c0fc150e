import { expect, it } from 'vitest';
import { functions } from '../../src/functions/index.ts';
import { search } from '../../src/taskpane/search.ts';

const found = (typed: string): string[] => search(typed, functions).map(({ id }) => id);

it('nothing typed finds all, in their order', () => {
  expect(found('  ')).toEqual(functions.map(({ id }) => id));
});

it('a name finds its function first, however it is written', () => {
  for (const { id } of functions)
    for (const typed of [id, id.toLowerCase(), id.replaceAll('_', ' '), `=JACKET.${id}(`])
      expect(found(typed)[0], typed).toBe(id);
});

it('every word must fit', () => {
  expect(found('plaster zeppelin')).toEqual([]);
  expect(found('water plaster')).toContain('WATER');
});

it('words are looked for in arguments too', () => {
  expect(found('layers')).toContain('PLASTER');
});
