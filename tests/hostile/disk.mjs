/**
 * A disk that does what `HOSTILE_DISK` says, for a child process: `node --import ./disk.mjs …`.
 *
 * `kill STEP` ends the process by SIGKILL at one step of a write; `fail STEP CODE` lets that step fail with an error of the system.
 */
import { Buffer } from 'node:buffer';
import promises from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const [, what, step, code] = /^(kill|fail) (.*?)(?: (E[A-Z]+))?$/.exec(process.env.HOSTILE_DISK ?? '') ?? [];

/** Here a process is ended for good, or an error thrown, if this is the step. */
const at = (name, path) => {
  if (name !== step) return;
  if (what === 'kill') process.kill(process.pid, 'SIGKILL');
  throw Object.assign(new Error(`${code}: made by a test`), { code, path });
};

/** Half of what is to be written, then the step `half`. */
const halved = (file, method) => {
  const write = file[method].bind(file);
  file[method] = async (data, ...more) => {
    if (step !== 'half') return write(data, ...more);
    const bytes = Buffer.from(data);
    await file.write(bytes.subarray(0, Math.ceil(bytes.length / 2)));
    return at('half');
  };
};

const { open, rename } = promises;
promises.open = async (path, flags, ...more) => {
  if (flags !== 'wx') return open(path, flags, ...more);
  at('before open', path);
  const file = await open(path, flags, ...more);
  at('after open');
  halved(file, 'writeFile');
  halved(file, 'appendFile');
  const sync = file.sync.bind(file);
  file.sync = async () => {
    at('before sync');
    await sync();
    at('after sync');
  };
  return file;
};
promises.rename = async (from, to) => {
  at('before rename', from);
  await rename(from, to);
  at('after rename');
};
syncBuiltinESMExports();
