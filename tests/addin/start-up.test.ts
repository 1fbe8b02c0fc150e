import { expect, it } from 'vitest';
import { hostAnswer, NOTICES } from '../../src/addin/start-up.ts';

const SOON = 20;

it.each([
  ['a workbook', { host: 'Excel' }, 'workbook'],
  ['another host', { host: 'Word' }, 'elsewhere'],
  ['a plain browser', { host: null }, 'elsewhere'],
  ['a host without a word', undefined, 'elsewhere'],
])('%s', async (_, answer, told) => {
  expect(await hostAnswer({ onReady: () => Promise.resolve(answer) }, SOON)).toBe(told);
});

it('a script that is not there', async () => {
  expect(await hostAnswer(undefined)).toBe('blocked');
});

it('a host that never answers', async () => {
  expect(await hostAnswer({ onReady: () => new Promise(() => undefined) }, SOON)).toBe('blocked');
});

it('a host that fails', async () => {
  expect(await hostAnswer({ onReady: () => Promise.reject(new Error('no')) }, SOON)).toBe('blocked');
});

it('notices say what to do next', () => {
  for (const words of Object.values(NOTICES)) expect(words).toMatch(/(Open|Check) .+ then /);
});
