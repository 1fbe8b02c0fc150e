/** Puts a formula in the selected cell, and asks before something is written over. */
import { problemWords } from './cell-screen.ts';
import { button, element } from './element.ts';
import type { ScreenTools } from './screen.ts';

/**
 * @param formula with its `=`
 * @param actions where the question stands, if there is one
 * @param then what to say after «Put in G7.»
 */
export const putFormula = async (
  formula: string,
  tools: ScreenTools,
  actions: HTMLElement,
  then: string,
  over = false,
): Promise<void> => {
  try {
    const cell = await tools.host.selection();
    if (!cell) return tools.say('Select a cell in the sheet first.');
    if (!over && (cell.value !== null || cell.formula !== '')) {
      const ask = element(
        'span',
        { class: 'ask' },
        element('span', {}, `${cell.address} is not empty. `),
        button('Put it over what is there', () => {
          ask.remove();
          void putFormula(formula, tools, actions, then, true);
        }),
        button('Leave it', () => ask.remove()),
      );
      for (const old of actions.querySelectorAll('.ask')) old.remove();
      actions.append(ask);
      ask.querySelector('button')?.focus();
      return;
    }
    await tools.host.insertFormula(formula);
    tools.say(`Put in ${cell.address}. ${then}`);
  } catch (problem) {
    tools.say(problemWords(problem));
  }
};
