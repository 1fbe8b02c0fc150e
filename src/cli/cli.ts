/** The commands of the shell: `evaluate` and `fill`. */

import { EVALUATE_USAGE, evaluate } from './evaluate.ts';
import { FILL_USAGE, fill } from './fill.ts';
import { type Output, terminal } from './output.ts';

type Command = (args: readonly string[], output: Output) => Promise<number>;

const COMMANDS: ReadonlyMap<string, Command> = new Map([
  ['evaluate', evaluate],
  ['fill', fill],
]);

/** The engine tells the console about every name it does not know; what people need to know is said by the commands. */
function silenceEngine(): void {
  for (const method of ['log', 'info', 'warn', 'error'] as const) console[method] = () => undefined;
}

/** Runs one command and ends the process with its exit status. */
export async function main(args: readonly string[]): Promise<never> {
  const output = terminal();
  const run = COMMANDS.get(args[0] ?? '');
  if (run === undefined) {
    output.error(`${EVALUATE_USAGE}\n\n${FILL_USAGE}`);
    return end(2);
  }
  silenceEngine();
  // The engine leaves some of its exceptions to nobody.
  process.on('uncaughtException', () => {
    output.error(`${args[0]} could not be finished. Nothing was written.`);
    process.exit(2);
  });
  return end(await run(args.slice(1), output));
}

/** Waits until all is written: the engine keeps timers running, so the process has to be ended. */
function end(status: number): Promise<never> {
  return new Promise(() => {
    process.stdout.write('', () => process.stderr.write('', () => process.exit(status)));
  });
}

// A reader that stops early, such as `head`, is no fault.
process.stdout.on('error', () => process.exit(0));
