/** Where a command writes: results, and lines for people beside them. */
export interface Output {
  /** One or more lines of results. */
  out(text: string): void;
  /** One or more lines that explain. */
  error(text: string): void;
  /** A line that replaces itself while something takes long; nothing where nobody watches. */
  progress(text: string): void;
}

const CLEAR_LINE = '\r\u001B[2K';

/** The shell's own. */
export function terminal(): Output {
  let shown = false;
  const clear = (): void => {
    if (shown) process.stderr.write(CLEAR_LINE);
    shown = false;
  };
  return {
    out(text) {
      clear();
      process.stdout.write(`${text}\n`);
    },
    error(text) {
      clear();
      process.stderr.write(`${text}\n`);
    },
    progress(text) {
      if (!process.stderr.isTTY) return;
      process.stderr.write(`${CLEAR_LINE}${text}`);
      shown = true;
    },
  };
}
