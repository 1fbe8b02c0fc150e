import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { EVALUATE_USAGE, evaluate } from '../../src/cli/evaluate.ts';
import { recorded } from './recorded.ts';

async function run(...args: string[]) {
  const output = recorded();
  const status = await evaluate(args, output);
  return { status, out: output.printed.join('\n'), error: output.explained.join('\n') };
}

describe('plain', () => {
  test('one value a line, TRUE and FALSE, a blank line between formulas', async () => {
    expect(await run('1+1', '=1=2', '"a"', 'TRUE')).toEqual({ status: 0, out: '2\n\nFALSE\n\na\n\nTRUE', error: '' });
  });

  test('a table as lines with tabs', async () => {
    expect((await run('{1,"x";TRUE,4}')).out).toBe('1\tx\nTRUE\t4');
  });

  test('an error value, its reason beside it, each reason once', async () => {
    expect(await run('1/0', '1/{0;0}')).toEqual({
      status: 1,
      out: '#DIV/0!\n\n#DIV/0!\n#DIV/0!',
      error: '#DIV/0! something is divided by 0\n#DIV/0! something is divided by 0',
    });
  });

  test('one of our functions with a reason', async () => {
    const { status, out, error } = await run('JACKET.AREA(60,40,"x")');
    expect({ status, out }).toEqual({ status: 1, out: '#VALUE!' });
    expect(error).toMatch(/^#VALUE! height/);
  });

  test('a formula that cannot be read, and the others still answered', async () => {
    expect(await run('1+', '2', '1/0')).toEqual({
      status: 2,
      out: '2\n\n#DIV/0!',
      error: '1+: cannot be read: the end of the formula is missing\n#DIV/0! something is divided by 0',
    });
  });

  test('a doubt is told and changes nothing', async () => {
    const { status, error } = await run('NOW()');
    expect(status).toBe(0);
    expect(error).toBe('NOW(): not checked: NOW: the answer changes with time or place, so it is kept as it was');
  });
});

describe('--json', () => {
  test('an element a formula', async () => {
    const { status, out, error } = await run('--json', '=1+1', '{1,2}', '1/0', 'IF({1,0},1,1/0)', '1+');
    expect(status).toBe(2);
    expect(error).toBe('');
    expect(JSON.parse(out)).toEqual([
      { formula: '=1+1', value: 2 },
      { formula: '{1,2}', rows: [[1, 2]] },
      { formula: '1/0', error: '#DIV/0!', message: 'something is divided by 0' },
      { formula: 'IF({1,0},1,1/0)', rows: [[1, { error: '#DIV/0!', message: 'something is divided by 0' }]] },
      { formula: '1+', unreadable: 'the end of the formula is missing' },
    ]);
  });

  test('exit status 1 for an error inside a table', async () => {
    expect((await run('--json', 'IF({1,0},1,1/0)')).status).toBe(1);
  });
});

test('a formula that begins with a minus is no option', async () => {
  expect(await run('-1')).toMatchObject({ status: 0, out: '-1' });
  expect(await run('--', '-1')).toMatchObject({ status: 0, out: '-1' });
});

test('how it is used', async () => {
  expect(await run()).toEqual({ status: 2, out: '', error: EVALUATE_USAGE });
  expect(await run('--json')).toMatchObject({ status: 2 });
  expect(await run('--help')).toEqual({ status: 0, out: EVALUATE_USAGE, error: '' });
});

describe('from the shell', () => {
  const root = resolve(import.meta.dirname, '../..');
  const shell = (...args: string[]) =>
    spawnSync(process.execPath, ['src/build/run.mjs', ...args], { cwd: root, encoding: 'utf8' });

  // The first run builds what is missing or old.
  beforeAll(() => {
    expect(shell('evaluate', '1').status).toBe(0);
  }, 120_000);

  test('values, errors and exit statuses', () => {
    const thickness = shell('evaluate', '=JACKET.THICKNESS(4,{"layer thickness",2;"finish coat",1})');
    expect(thickness).toMatchObject({ status: 0, stderr: '' });
    // 4 layers of 2 mm and 1 mm of finish; 12 digits leave room for the last one of the binary fraction.
    expect(Number(thickness.stdout)).toBeCloseTo(9, 12);
    expect(shell('evaluate', 'FOO()')).toMatchObject({
      status: 1,
      stdout: '#NAME?\n',
      stderr: '#NAME? there is no function FOO\n',
    });
    expect(shell('evaluate', '(')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: '(: cannot be read: a bracket is not closed\n',
    });
  });

  test('an unknown command', () => {
    const { status, stdout, stderr } = shell('measure');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain('npm run fill -- IN OUT');
  });
});
