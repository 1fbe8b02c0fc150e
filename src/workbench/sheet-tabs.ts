/** The tabs of the sheets: plain buttons, so that keys and screen readers find them. Sheets are chosen here, not changed. */

import type { FUniver } from '@univerjs/core/facade';
import { element } from './element.ts';

/** Keeps the tabs in step with the workbook in the grid. Answers a function that draws them anew. */
export function setUpTabs(api: FUniver, place: HTMLElement): () => void {
  const draw = (): void => {
    const book = api.getActiveWorkbook();
    const active = book?.getActiveSheet().getSheetId();
    const sheets = book?.getSheets().filter((sheet) => !sheet.isSheetHidden()) ?? [];
    const focused = place.contains(document.activeElement);
    place.replaceChildren(
      ...sheets.map((sheet) => {
        const tab = element('button', { type: 'button', class: 'bench-tab' }, sheet.getSheetName());
        if (sheet.getSheetId() === active) tab.setAttribute('aria-current', 'true');
        tab.addEventListener('click', () => book?.setActiveSheet(sheet));
        return tab;
      }),
    );
    const current = place.querySelector<HTMLElement>('[aria-current]');
    current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    if (focused) current?.focus();
  };
  api.addEvent(api.Event.ActiveSheetChanged, draw);
  place.addEventListener('keydown', (event) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step === undefined) return;
    const tabs = [...place.querySelectorAll<HTMLElement>('button')];
    tabs[tabs.indexOf(document.activeElement as HTMLElement) + step]?.focus();
    event.preventDefault();
  });
  return draw;
}
