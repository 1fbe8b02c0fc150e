import { expect, it } from 'vitest';
import { absentHost } from '../../src/addin/absent-host.ts';
import { SheetProblem } from '../../src/taskpane/sheet-host.ts';

it('has no cell, can do nothing, and says so in plain words', async () => {
  const host = absentHost();
  expect(await host.selection()).toBeUndefined();
  for (const ability of ['insertFormula', 'putPicture', 'recalculate'] as const) expect(host.can(ability)).toBe(false);
  (await host.onChange(() => undefined))();
  for (const call of [() => host.read('A1', 'Rows'), () => host.insertFormula('=1'), () => host.recalculate()])
    await expect(call()).rejects.toThrow(SheetProblem);
});
