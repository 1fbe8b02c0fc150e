// `npm run bench`: one table a topic, all beside the yardstick of this run. Recorded in RECORD.md by hand, never asserted in a test.
import { cpus } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { alone, build, root } from '../../src/build/build.mjs';
import { addIn } from './add-in.mjs';
import { commands } from './commands.mjs';
import { core } from './core.mjs';
import { feet } from './feet.mjs';
import { jobs } from './jobs.mjs';
import { print, yardstick } from './table.mjs';
import { workbench } from './workbench.mjs';

const compiled = (path) => import(pathToFileURL(join(root, 'build', path)).href);

await alone(() => build([]));
console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0].model}`);
print('yardstick', [['a step of additions and roots', yardstick().toFixed(2), 'ns', '']]);
print('calculation', await core(compiled));
print('feet and other searches', await feet(compiled));
print('whole jobs', await jobs(compiled));
print('commands', await commands());
print('add-in, through the host’s own scripts', await addIn());
print('workbench', await workbench(compiled));
process.exit(0);
