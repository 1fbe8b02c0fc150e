/** A file that cannot be read or written. The message is one plain line for people, and names the file where it is known. */
export class WorkbookError extends Error {
  override readonly name = 'WorkbookError';
}
