import { expect, test } from 'vitest';
import { MORE_SLIPS } from '../../../src/build/help/more-slips.ts';
import { slips } from '../../../src/build/help/slips.ts';
import { isCellError, isRows } from '../../../src/functions/calling/cell.ts';
import { functions } from '../../../src/functions/index.ts';
import { files, unescaped } from './site.ts';

const bySlips = functions.map((f) => [f.id, f] as const);

test.each(bySlips)('%s: each reason stands once, and on the page', (_, f) => {
  const all = slips(f);
  expect(new Set(all.map(({ error }) => error.reason)).size).toBe(all.length);
  const page = unescaped(files.get(`${f.id.toLowerCase().replaceAll('_', '-')}.html`)!);
  for (const { error, args } of all) {
    expect(error.reason).not.toBe('');
    const answer = f.call(args);
    expect(isRows(answer) ? answer.flat().find(isCellError) : answer).toEqual(error);
    expect(page).toContain(error.reason);
  }
});

test.each(bySlips.filter(([, f]) => f.arguments.some((a) => !a.optional)))('%s has at least one slip', (_, f) => {
  expect(slips(f).length).toBeGreaterThan(0);
});

test.each(Object.entries(MORE_SLIPS).flatMap(([id, all]) => all.map((slip) => [id, slip.when, slip] as const)))(
  '%s: %s gives an error',
  (id, when, slip) => {
    const f = functions.find((one) => one.id === id)!;
    expect(slips(f).map((one) => one.when)).toContain(when);
    const answer = f.call(slip.args);
    expect(isRows(answer) ? answer.flat().some(isCellError) : isCellError(answer)).toBe(true);
  },
);

test('PLASTER tells of blanks, text, numbers out of range and ranges of unlike size', () => {
  const reasons = slips(functions.find((f) => f.id === 'PLASTER')!).map(({ error }) => error.reason);
  expect(reasons).toEqual(
    expect.arrayContaining([
      'shell_area is blank; type the area of both halves in m²',
      'shell_area is text; type a number',
      'shell_area is -1; type a number above 0',
      'shell_area has 3 rows, layers has 2 rows; give ranges of one size',
    ]),
  );
});
