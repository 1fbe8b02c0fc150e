import { expect, test } from 'vitest';
import calibrate from '../../src/functions/calibrate.ts';
import plaster from '../../src/functions/plaster.ts';

const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);

test('check tells on how many jackets it rests where they are few', () => {
  expect(calibrate.check([column(10, 20), column(11, 24)])).toMatch(/it rests on 2, so its interval is wide/);
  expect(calibrate.check([column(10, 20, 30, 0), column(11, 24, 33, 5)])).toMatch(
    /it rests on 3, so its interval is wide/,
  );
  expect(calibrate.check([column(10, 20, 30, 12, 9), column(11, 24, 33, 13, 11)])).toBe('ok');
});

test('one job has no spread: #N/A', () => {
  expect(calibrate.call([column(10), column(11)])).toMatchObject({
    code: '#N/A',
    reason: 'jackets with both numbers: 1, and it needs 2 or more; note what the next jacket really takes',
  });
  expect(calibrate.call([column(10, 20), column(11, null)])).toMatchObject({ code: '#N/A' });
});

test('ranges of unlike size, text and amounts below 0 are refused by name', () => {
  expect(calibrate.call([column(1, 2, 3), column(1, 2)])).toMatchObject({
    code: '#VALUE!',
    reason: 'used has 2 cells, estimated has 3; give ranges of one size',
  });
  expect(calibrate.call([column(1, 'two'), column(1, 2)])).toMatchObject({
    code: '#VALUE!',
    reason: 'estimated: cell 2 is text; type a number',
  });
  expect(calibrate.call([column(1, 2), column(1, -2)])).toMatchObject({ code: '#VALUE!' });
});

test('what it finds can be put into the settings', () => {
  const [[ratio, low, high]] = calibrate.call([column(10, 20, 30), column(11, 24, 33)]) as [number[]];
  const shop = [
    ['calibration', ratio!],
    ['calibration low', low!],
    ['calibration high', high!],
  ];
  expect((plaster.call([1, 8, shop]) as number) / (plaster.call([1, 8]) as number)).toBeCloseTo(ratio!, 12);
});
