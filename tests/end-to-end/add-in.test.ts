/**
 * The add-in as it runs: the built page, the host's own JavaScript, and a stand-in for the host's native half.
 *
 * What this cannot show: how the native half turns cells into arguments, how it draws results, and how long a real recalculation takes.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { callable } from '../../src/addin/functions.ts';
import type { Argument } from '../../src/functions/calling/cell.ts';
import { isCellError, isRows } from '../../src/functions/calling/cell.ts';
import type { WorksheetFunction } from '../../src/functions/define.ts';
import { functions } from '../../src/functions/index.ts';
import { type AddInPage, ensureBuilt, launch, type Opening, openAddIn, root } from './add-in-page.ts';
import type { HostAnswer, HostCall } from './stand-in.d.ts';

declare global {
  interface Window {
    // biome-ignore lint/suspicious/noExplicitAny: methods are called by name, as text crosses into the page
    officeHost: Record<string, (...args: any[]) => any>;
  }
}

let browser: Browser;
const open: AddInPage[] = [];
beforeAll(async () => {
  ensureBuilt();
  browser = await launch();
});
afterAll(() => browser?.close());

const opened = async (opening: Opening = {}): Promise<AddInPage> => {
  const one = await openAddIn(browser, opening);
  open.push(one);
  return one;
};

/** A page whose host is ready and whose pane stands. */
const ready = async (opening: Opening = {}): Promise<AddInPage> => {
  const one = await opened({ read: true, ...opening });
  await one.page.waitForSelector('.pane');
  return one;
};

/** Numbers under which the host's script sends errors. */
const CODES: Readonly<Record<string, number>> = { '#N/A': 1, '#DIV/0!': 5, '#NUM!': 6, '#VALUE!': 7, '#NULL!': 8 };

/** A cell as the host hands it over. */
const hostCell = (cell: unknown): unknown =>
  isCellError(cell) ? { type: 'CustomFunctionError', code: cell.code } : cell;

/** An argument as the host hands it over: all are rows, what is left out is null. */
const hostArgument = (argument: Argument): unknown =>
  argument === null ? null : isRows(argument) ? argument.map((row) => row.map(hostCell)) : [[hostCell(argument)]];

/** Arguments of a call, filled up as the host does it; those of a repeating parameter as a list. */
const hostArguments = (f: WorksheetFunction, args: readonly Argument[]): unknown[] => {
  const given = args.map(hostArgument);
  if (f.arguments.at(-1)?.repeating) {
    const fixed = f.arguments.length - 1;
    return [...given.slice(0, fixed), given.slice(fixed)];
  }
  return Array.from({ length: f.arguments.length }, (_, i) => given[i] ?? null);
};

interface PlainError {
  code: string;
  message?: string;
}
const plainError = (code: string, message?: string): PlainError =>
  message === undefined ? { code } : { code, message };

/** What our own code gives for a call, in the form in which it comes back through the host's script. */
const expected = (f: WorksheetFunction, args: readonly unknown[]): HostAnswer => {
  try {
    return { ok: true, value: callable(f, plainError)(...structuredClone(args), {}) };
  } catch (error) {
    const { code, message } = error as PlainError;
    return { ok: false, value: message ?? '', code: CODES[code]! };
  }
};

/** An answer without what the host's script adds to errors inside of tables. */
const received = ({ ok, value, code }: HostAnswer): HostAnswer => {
  if (!ok) return { ok, value: code === CODES['#VALUE!'] || code === CODES['#N/A'] ? value : '', code: code! };
  return {
    ok,
    value: (value as unknown[][]).map((row) =>
      row.map((cell) => {
        if (typeof cell !== 'object' || cell === null) return cell;
        const { code: inside, message } = cell as PlainError;
        return plainError(inside, message || undefined);
      }),
    ),
  };
};

/**
 * Both are compared as they stand but for the last digits of numbers: Node and the browser have other versions of exp and pow, whose results may
 * differ by a few units in the last of about 16 digits, and calculations carry that on.
 */
const LAST_DIGITS = 1e-12;

const expectSame = (answer: unknown, other: unknown, told: string): void => {
  if (typeof answer === 'number' && typeof other === 'number') {
    expect(Math.abs(answer - other), `${told}: ${answer} and ${other}`).toBeLessThanOrEqual(
      LAST_DIGITS * Math.abs(other),
    );
  } else if (Array.isArray(answer) && Array.isArray(other)) {
    expect(answer.length, told).toBe(other.length);
    for (const [i, one] of answer.entries()) expectSame(one, other[i], told);
  } else expect(answer, told).toEqual(other);
};

const expectAnswer = (answer: HostAnswer, other: HostAnswer, told: string): void => {
  expectSame(answer.value, other.value, told);
  expect({ ...answer, value: undefined }, told).toEqual({ ...other, value: undefined });
};

const callAll = async (page: Page, calls: readonly HostCall[]): Promise<HostAnswer[]> => {
  const answers = await page.evaluate((all) => window.hostStandIn.callMany(all), calls as HostCall[]);
  return answers.map(received);
};

describe('the bundle', () => {
  it('stays under 100 kB packed', () => {
    expect(gzipSync(readFileSync(join(root, 'dist/functions.js')), { level: 9 }).length).toBeLessThan(100_000);
  });

  it('stands with every other file that the manifest names', () => {
    const manifest = readFileSync(join(root, 'dist/manifest.xml'), 'utf8');
    const urls = [...manifest.matchAll(/"https:\/\/localhost:3000\/([^"]+)"/g)].map(([, file]) => file!);
    expect(urls).toContain('functions.js');
    for (const file of urls) expect(existsSync(join(root, 'dist', file)), file).toBe(true);
  });

  it('holds none of the host’s scripts', () => {
    expect(readFileSync(join(root, 'dist/functions.js'), 'utf8')).not.toContain('_richApiNativeBridge');
  });
});

describe('functions in the host', () => {
  let one: AddInPage;
  beforeAll(async () => {
    one = await ready();
  });
  afterAll(() => one?.close());

  it('give every example of the registry', async () => {
    const examples = functions.flatMap((f) => f.examples.map(({ args }) => ({ f, args: hostArguments(f, args) })));
    const answers = await callAll(
      one.page,
      examples.map(({ f, args }) => ({ id: f.id, args })),
    );
    for (const [i, { f, args }] of examples.entries()) {
      expectAnswer(answers[i]!, expected(f, args), `${f.id} ${JSON.stringify(args)}`);
    }
  });

  it('answer anything that cells can hold, always with something that a cell can show', async () => {
    const error = (code: string) => ({ type: 'CustomFunctionError', code });
    const kinds: unknown[] = [
      null,
      [[null]],
      [['']],
      [[0]],
      [[1]],
      [[-1]],
      [['text']],
      [[true]],
      [[1e308]],
      [[error('#REF!')]],
      [[error('#NAME?')]],
      [[error('#N/A')]],
      [[{ type: 'Double', basicValue: 2, numberFormat: '0.0' }]],
      [[{ type: 'Entity', text: 'card', basicType: 'Error', basicValue: '#VALUE!' }]],
      [[1], [null], [''], [0], ['x'], [error('#DIV/0!')]],
      [[1, 2, 3]],
      [
        ['units', 'us'],
        ['waste', 0.2],
      ],
    ];
    const calls: { f: WorksheetFunction; args: unknown[] }[] = [];
    for (const f of functions) {
      const list = hostArguments(f, f.examples[0].args);
      for (const kind of kinds) {
        calls.push({ f, args: list.map((_, i) => (f.arguments[i]!.repeating ? [kind, kind] : kind)) });
        for (let i = 0; i < list.length; i++)
          calls.push({ f, args: list.map((own, j) => (i !== j ? own : f.arguments[j]!.repeating ? [kind] : kind)) });
      }
    }
    const answers = await callAll(
      one.page,
      calls.map(({ f, args }) => ({ id: f.id, args })),
    );
    for (const [i, { f, args }] of calls.entries()) {
      const told = `${f.id} ${JSON.stringify(args)}`;
      const answer = answers[i]!;
      expectAnswer(answer, expected(f, args), told);
      if (!answer.ok) {
        expect(Object.values(CODES), told).toContain(answer.code);
        continue;
      }
      for (const cell of (answer.value as unknown[][]).flat()) {
        if (typeof cell === 'object') expect(Object.keys(CODES), told).toContain((cell as PlainError | null)?.code);
        else expect(['number', 'string', 'boolean'], told).toContain(typeof cell);
      }
    }
    // Every failure of kind #VALUE! tells its reason.
    for (const [i, answer] of answers.entries())
      if (!answer.ok && answer.code === CODES['#VALUE!'])
        expect(answer.value, `${calls[i]!.f.id} ${JSON.stringify(calls[i]!.args)}`).not.toBe('');
  });

  it('keep a row blank whose cells are blank, though a typed value stands beside them', async () => {
    const call = (addresses: (string | null)[]) =>
      one.page.evaluate(
        (told) => window.hostStandIn.call('PLASTER', [[[null]], [[8]], null], { addresses: told }),
        addresses,
      );
    expect((await call(['Rows!E7', null, null])).value).toEqual([['']]);
    // Where the host tells of no address, every value may have come from a cell.
    expect((await call([null, null, null])).ok).toBe(false);
  });

  it('can be called in any letter case, and say so when they are not known', async () => {
    const answers = await callAll(one.page, [
      { id: 'plaster', args: [[[1]], [[8]], null] },
      { id: 'NOT_THERE', args: [] },
    ]);
    expect(answers.map(({ ok }) => ok)).toEqual([true, false]);
  });

  it('are not upset by a call that is cancelled', async () => {
    for (const wait of [0, 20]) {
      const answer = await one.page.evaluate(
        (ms) => window.hostStandIn.callAndCancel('PLASTER', [[[1]], [[8]], null], ms, 15_000),
        wait,
      );
      // The calculation is over before it could be cancelled, so the answer comes all the same.
      expect(answer?.ok).toBe(true);
    }
    expect((await one.page.evaluate(() => window.hostStandIn.call('PLASTER', [[[1]], [[8]], null]))).ok).toBe(true);
  });

  it('take a whole column', async () => {
    const answer = await one.page.evaluate(async () => {
      const column = Array.from({ length: 1_048_576 }, (_, i) => [i % 2 === 0 ? 1 : null]);
      const { ok, value } = await window.hostStandIn.call('PLASTER', [column, [[8]], null]);
      const rows = value as unknown[][];
      return { ok, rows: rows.length, first: rows[0], second: rows[1], last: rows.at(-1) };
    });
    const plaster = (functions.find(({ id }) => id === 'PLASTER') as WorksheetFunction).call([1, 8]);
    expectSame(answer.first, [plaster], 'first row');
    expect({ ...answer, first: undefined }).toEqual({ ok: true, rows: 1_048_576, second: [''], last: [''] });
  });

  it('leave the console clean', () => {
    expect(one.said).toEqual([]);
  });
});

describe('before the host is ready', () => {
  it('functions can be called already', async () => {
    let release = (): void => undefined;
    const strings = new Promise<void>((done) => {
      release = done;
    });
    const { page, said, close } = await opened({ strings });
    await page.waitForFunction(() => typeof CustomFunctions !== 'undefined' && CustomFunctions.Error !== undefined);
    expect(await page.locator('.pane').count()).toBe(0);
    const answer = await page.evaluate(() => window.hostStandIn.call('PLASTER', [[[1]], [['x']], null]));
    expect(answer).toMatchObject({ ok: false, value: 'layers is text; type a number' });
    release();
    await page.waitForSelector('.pane');
    expect(said).toEqual([]);
    await close();
  });

  it('a host that never answers is given up with a plain sentence', async () => {
    const { page, said, close } = await opened({
      strings: new Promise(() => undefined),
      before: (fresh) => fresh.clock.install(),
    });
    await page.clock.fastForward(9_000);
    expect(await page.locator('.notice').count()).toBe(0);
    await page.clock.fastForward(2_000);
    expect(await page.locator('.notice').textContent()).toContain('The spreadsheet did not answer');
    expect(said).toEqual([]);
    await close();
  });

  it('blocked scripts are told in a plain sentence, and the pane can be read', async () => {
    const { page, said, close } = await opened({ scripts: 'blocked' });
    expect(await page.locator('.notice').textContent()).toContain('The spreadsheet did not answer');
    await page.click('text=This cell');
    expect(await page.locator('.screen-cell').textContent()).toContain('No cell is selected.');
    await page.click('nav >> text=Find a function');
    await page.fill('input', 'plaster');
    await page.click('.entry >> nth=0');
    // Nothing can be put into a sheet that is not there.
    expect(await page.locator('text=Put in the cell').count()).toBe(0);
    // The browser's own word about the one file that was blocked.
    expect(said).toEqual(['error: Failed to load resource: net::ERR_FAILED']);
    await close();
  });

  it('a plain browser is told where the page belongs', async () => {
    const { page, said, outside, close } = await opened({ plain: true });
    expect(await page.locator('.notice').textContent()).toContain('This page belongs beside a workbook');
    // What the host's own script says, word for word, when it is loaded outside of its host.
    expect(said.filter((words) => words !== 'log: Warning: Office.js is loaded outside of Office client')).toEqual([]);
    for (const url of outside) expect(url).toMatch(/^https:\/\/appsforoffice\.microsoft\.com\/lib\/1\/hosted\//);
    await close();
  });
});

describe('the sheet through the host’s own objects', () => {
  let one: AddInPage;
  beforeAll(async () => {
    one = await ready();
    // The module as it was compiled, beside the bundle that has it inside.
    await one.page.addScriptTag({
      type: 'module',
      content: "import { officeHost } from '/modules/addin/office-host.js'; window.officeHost = officeHost();",
    });
    await one.page.waitForFunction(() => 'officeHost' in window);
    await one.page.evaluate(() => {
      const { workbook } = window.hostStandIn;
      workbook.sheets = {
        Rows: {
          B1: { v: 'length' },
          B2: { v: 1.5 },
          B3: { v: true },
          B4: { v: { error: '#DIV/0!' } },
          D2: { f: '=JACKET.PLASTER(B2,8)', v: 27.4 },
          F2: { f: '=JACKET.AREA(B2:B4,1,1)', v: 1, spill: [3, 1] },
          F3: { v: 2 },
          F4: { v: 3 },
        },
        "Shop's settings": { A1: { v: 'waste' }, B1: { v: 0.2 } },
      };
      workbook.names = { Shop: "'Shop''s settings'!$A$1:$B$1" };
    });
  });
  afterAll(() => one?.close());

  /** Calls a method of the host and tells what came of it; errors as their code, problems as their sentence. */
  const host = (method: string, ...args: unknown[]): Promise<unknown> =>
    one.page.evaluate(
      async ([name, given]) => {
        try {
          const value = await window.officeHost[name]!(...given);
          return JSON.parse(JSON.stringify(value ?? null));
        } catch (problem) {
          return `${(problem as Error).name}: ${(problem as Error).message}`;
        }
      },
      [method, args] as [string, unknown[]],
    );
  const select = (address: string): Promise<void> =>
    one.page.evaluate((to) => window.hostStandIn.select('Rows', to), address);

  it('tells of the active cell', async () => {
    await select('D2');
    expect(await host('selection')).toEqual({
      sheet: 'Rows',
      address: 'D2',
      formula: '=JACKET.PLASTER(B2,8)',
      value: 27.4,
      spillRow: 0,
      spillColumn: 0,
    });
  });

  it('tells of blank cells, errors and cells that another one fills', async () => {
    await select('A9');
    expect(await host('selection')).toMatchObject({ formula: '', value: null });
    await select('B4');
    expect(await host('selection')).toMatchObject({ formula: '', value: { code: '#DIV/0!', reason: '' } });
    await select('F4');
    expect(await host('selection')).toMatchObject({
      address: 'F4',
      formula: '=JACKET.AREA(B2:B4,1,1)',
      value: 3,
      spillRow: 2,
      spillColumn: 0,
    });
  });

  it.each([
    ['B2', [[1.5]]],
    [
      '$B$1:$C$2',
      [
        ['length', null],
        [1.5, null],
      ],
    ],
    ["'Shop''s settings'!A1:B1", [['waste', 0.2]]],
    ['Shop', [['waste', 0.2]]],
    ['B:B', [['length'], [1.5], [true], [{ code: '#DIV/0!', reason: '' }]]],
    ['Z:Z', [[null]]],
    ['1:1', [[null, 'length']]],
    ['F2#', [[1], [2], [3]]],
  ])('reads %s', async (reference, rows) => {
    expect(await host('read', reference, 'Rows')).toEqual(rows);
  });

  it.each([
    ['Nobody', 'SheetProblem: Nobody is not a range of this workbook.'],
    ['B2#', 'SheetProblem: B2# is not a range of this workbook.'],
    ['A1:Z100000', 'SheetProblem: A1:Z100000 has more cells than can be shown here.'],
  ])('says why %s cannot be read', async (reference, words) => {
    expect(await host('read', reference, 'Rows')).toBe(words);
  });

  it('writes a formula, calculates again, and draws', async () => {
    await select('H5');
    await host('insertFormula', '=JACKET.PLASTER(1,8)');
    await host('recalculate');
    await host('putPicture', {
      svg: '<svg xmlns="http://www.w3.org/2000/svg"/>',
      name: 'Plan',
      description: 'Three feet',
    });
    const { cell, log } = await one.page.evaluate(() => ({
      cell: window.hostStandIn.workbook.sheets.Rows!.H5,
      log: window.hostStandIn.workbook.log,
    }));
    expect(cell?.f).toBe('=JACKET.PLASTER(1,8)');
    expect(log).toContainEqual(['calculate', 'Full']);
    expect(log).toContainEqual(['set', 'shape', 'AltTextDescription', 'Three feet']);
  });

  it('says in plain words what the host refuses', async () => {
    await one.page.evaluate(() => window.hostStandIn.failNext('InvalidOperationInCellEditMode'));
    expect(await host('insertFormula', '=1')).toBe(
      'SheetProblem: A cell is being typed into. Press Enter or Escape in the sheet, then try again.',
    );
    await one.page.evaluate(() => window.hostStandIn.failNext('AccessDenied'));
    expect(await host('insertFormula', '=1')).toContain('The sheet is protected.');
    await one.page.evaluate(() => window.hostStandIn.failNext('GeneralException'));
    expect(await host('selection')).toBe('SheetProblem: The selected cell could not be read. Select it again.');
  });

  it('tells of changes until it is told to stop', async () => {
    const counts = await one.page.evaluate(async () => {
      const pause = () => new Promise((done) => setTimeout(done, 150));
      let heard = 0;
      const stop = await window.officeHost.onChange!(() => {
        heard += 1;
      });
      const seen: number[] = [];
      window.hostStandIn.select('Rows', 'B2');
      await pause();
      seen.push(heard);
      window.hostStandIn.calculated();
      await pause();
      seen.push(heard);
      stop();
      await pause();
      window.hostStandIn.select('Rows', 'B3');
      window.hostStandIn.calculated();
      await pause();
      return [...seen, heard];
    });
    expect(counts).toEqual([1, 2, 2]);
  });

  it('asked for nothing that the stand-in does not know, and left the console clean', async () => {
    expect(await one.page.evaluate(() => window.hostStandIn.workbook.unknown)).toEqual([]);
    expect(one.said).toEqual([]);
  });
});
