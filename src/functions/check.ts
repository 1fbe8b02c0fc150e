import { wrong } from '../calculation/result.ts';
import { anything, single, text } from './calling/arguments.ts';
import { plainName, unknownName } from './calling/names.ts';
import { define } from './define.ts';
// The registry imports this file too; the list is only read when a call runs.
import { functions } from './index.ts';

export default define({
  id: 'CHECK',
  topic: 'about',
  question: 'Why does this cell show an error?',
  description: 'The reason why a call fails, or what is doubtful about it, as text.',
  equation: 'none',
  arguments: {
    function_name: single(text('the name of a function, such as PLASTER')),
    arguments: anything('the arguments as you gave them to that function'),
  },
  settings: false,
  result: { kind: 'text', what: 'ok, or the reason; one text a cell on ranges' },
  examples: [
    { args: ['PLASTER', 1, 8], value: 'ok' },
    { args: ['PLASTER', 'wide', 8], value: 'shell_area is text; type a number' },
  ],
  basis: 'derived',
  source: 'the registry itself',
  remarks: ['Also says what is doubtful: a value outside the limits within which the number can be relied on.'],
  related: ['SOURCE', 'SETTINGS'],
  run: ({ function_name: name, arguments: given }, _settings, _system, notes) => {
    const id = plainName(name)
      .replace(/^jacket\./, '')
      .toUpperCase();
    const f = functions.find((one) => one.id === id);
    if (!f)
      return wrong(
        'function_name',
        `is ${unknownName(
          name,
          functions.map((one) => one.id),
          'a function',
        )}`,
      );
    const answer = f.check(given ?? [], notes?.fromCells && { fromCells: notes.fromCells.slice(1) });
    return answer as string | string[][];
  },
});
