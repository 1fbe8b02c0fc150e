/** Whether two paths lead to one file, also by way of links. */

import { realpathSync, statSync } from 'node:fs';
import { resolve } from 'node:path';

export function isSameFile(a: string, b: string): boolean {
  const first = statSync(a, { throwIfNoEntry: false });
  const second = statSync(b, { throwIfNoEntry: false });
  if (first === undefined || second === undefined) return resolve(a) === resolve(b);
  return (first.dev === second.dev && first.ino === second.ino) || realpathSync(a) === realpathSync(b);
}
