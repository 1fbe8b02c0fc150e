/** Where the page of the add-in begins: the functions first, then the pane. */
import { mountPane } from '../taskpane/pane.ts';
import { absentHost } from './absent-host.ts';
import { associateAll } from './functions.ts';
import { officeHost } from './office-host.ts';
import { hostAnswer, NOTICES } from './start-up.ts';

if (typeof CustomFunctions !== 'undefined') associateAll(CustomFunctions);

const start = async (): Promise<void> => {
  const place = document.getElementById('pane')!;
  const answer = await hostAnswer(typeof Office === 'undefined' ? undefined : Office);
  const here = answer === 'workbook';
  mountPane(place, here ? officeHost() : absentHost(), here ? {} : { notice: NOTICES[answer] });
};

void start();
