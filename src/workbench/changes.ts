/** Tells when the selected cell, or what it shows, may have become another. */

import { ICommandService, type Injector } from '@univerjs/core';

/** Runs once in the next frame, however often it is asked to: the grid tells of a change before it can be asked about it, and of one several times. */
export function inNextFrame(run: () => void): () => void {
  let waiting = false;
  return () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      run();
    });
  };
}

/** What selects another cell, shows another sheet, scrolls, or puts something into cells. The grid's own events leave some of them out. */
const CHANGES: ReadonlySet<string> = new Set([
  'sheet.operation.set-selections',
  'sheet.operation.set-worksheet-active',
  'sheet.operation.set-scroll',
  'sheet.mutation.set-range-values',
  'formula.mutation.set-array-formula-data',
]);

/** Calls back a frame after each change. Answers a function that ends the calls. */
export function onChanges(injector: Injector, listener: () => void): () => void {
  const later = inNextFrame(listener);
  const watching = injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (CHANGES.has(id)) later();
  });
  return () => watching.dispose();
}
