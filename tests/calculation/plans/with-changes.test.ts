import { expect, test } from 'vitest';
import { withChanges } from '../../../src/calculation/plans/with-changes.ts';
import { SETTINGS, type SettingKey, type Settings } from '../../../src/calculation/settings.ts';
import { expectFault, known, settings } from '../kit.ts';

const KEYS = Object.keys(SETTINGS) as SettingKey[];

test.each([
  [{}, { padding: 'foam' as const }],
  [
    { waterRatio: 0.4, waste: 0.2 },
    { plaster: 'casting plaster' as const, condition: 'wet' as const },
  ],
  [{ paddingDensity: 80 }, { padding: 'foam' as const, shape: 'box' as const, reliefFactor: 1.4 }],
  [{ flange: 0.06 }, { flange: 0.04, footSize: 0.08 }],
])('%j changed by %j is as if the shop had set it so', (given, changes) => {
  const made = known(withChanges(settings(given), changes));
  const direct = settings({ ...given, ...changes });
  for (const key of KEYS) expect(made[key], key).toBe(direct[key]);
  expect(made.given).toEqual(direct.given);
});

test('changes can be changed again', () => {
  const wet = known(withChanges(known(withChanges(settings(), { padding: 'foam' })), { condition: 'wet' }));
  expect([wet.padding, wet.condition]).toEqual(['foam', 'wet']);
  expect(wet.given).toEqual({ padding: 'foam', condition: 'wet' });
});

test('what stays the same is read from the settings themselves, what changed is not', () => {
  const read: string[] = [];
  const watched = new Proxy(settings(), {
    get: (target, key) => {
      read.push(String(key));
      return target[key as keyof Settings];
    },
  });
  const made = known(withChanges(watched, { padding: 'foam' }));
  read.length = 0;
  expect([made.waste, made.padding, made.paddingDensity]).toEqual([
    0.1,
    'foam',
    settings({ padding: 'foam' }).paddingDensity,
  ]);
  expect(read).toEqual(['waste']);
});

test('a change out of range is the fault of its setting', () => {
  expectFault(withChanges(settings(), { reliefFactor: 4 }), 'value', 'relief factor');
});
