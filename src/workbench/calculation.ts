/** Whether the engine is at work, and when it has come to rest. */

import { ICommandService, type Injector } from '@univerjs/core';
import {
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { FormulaCalculationSessionService } from '@univerjs/sheets-formula';

/** The engine gathers changes for so long before it begins, milliseconds. */
const GATHERED = 130;
/** The longest that anything waits for a calculation, milliseconds. */
const LONGEST = 60_000;

export interface Calculation {
  /** Calls back each time results have reached the cells. */
  onResults(listener: () => void): void;
  /** Done when all changes up to now are calculated. */
  settled(): Promise<void>;
}

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Watches the engine. Call it after the first workbook was created. */
export function watchCalculation(injector: Injector): Calculation {
  const listeners: (() => void)[] = [];
  let running = false;
  let lastChange = 0;
  injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
    if (id === SetFormulaCalculationStartMutation.id) running = true;
    else if (id === SetFormulaCalculationNotificationMutation.id) {
      if ((params as { functionsExecutedState?: number }).functionsExecutedState !== undefined) running = false;
    } else if (
      id === SetTriggerFormulaCalculationStartMutation.id ||
      (id.includes('.mutation.') && !options?.onlyLocal)
    )
      lastChange = performance.now();
  });
  injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(() => {
    for (const listener of listeners) listener();
  });
  return {
    onResults: (listener) => {
      listeners.push(listener);
    },
    async settled() {
      const begun = performance.now();
      // A change may be on its way from the keyboard to the cells.
      await pause(GATHERED);
      while (performance.now() - begun < LONGEST) {
        const rest = GATHERED - (performance.now() - lastChange);
        if (rest > 0) await pause(rest);
        else if (running) await pause(10);
        else return;
      }
    },
  };
}
