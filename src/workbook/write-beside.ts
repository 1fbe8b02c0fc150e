/** Writes a file whole or not at all. Node alone. */

import { randomBytes } from 'node:crypto';
import { open, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { WorkbookError } from './workbook-error.ts';

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'the folder does not let anybody write into it. Choose another folder',
  EPERM: 'it is read-only or open in another program. Close it there or choose another name',
  EBUSY: 'it is open in another program. Close it there',
  EROFS: 'the disk is read-only. Choose another folder',
  ENOSPC: 'the disk is full. Make room and try again',
  EDQUOT: 'your share of the disk is full. Make room and try again',
  ENOENT: 'its folder does not exist. Make the folder first',
  ENOTDIR: 'its folder is a file. Choose another folder',
  EISDIR: 'a folder has that name. Choose another name',
};

/** The error of a disk as one plain line about the file that people know. */
const refused =
  (path: string) =>
  (error: unknown): never => {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new WorkbookError(`${basename(path)} could not be written: ${REASONS[code] ?? `the disk answered ${code}`}`);
  };

/** Puts one more piece into the file. */
export type Put = (piece: string | Uint8Array) => Promise<void>;

/**
 * Writes a new file beside `path`, piece by piece, and then gives it that name, so that `path` is the old file or the new one and never half
 * of either. The file's permissions stay. Throws a `WorkbookError` with one plain line where the disk fails; what `write` throws comes through.
 */
export async function writePieces<T>(path: string, write: (put: Put) => Promise<T>): Promise<T> {
  // A link stays a link: the file it points to is replaced.
  const target = await realpath(path).catch(() => path);
  const beside = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.part`);
  const fail = refused(path);
  const mode = await stat(target).then(
    (old) => old.mode & 0o777,
    () => undefined,
  );
  const file = await open(beside, 'wx', mode ?? 0o666).catch(fail);
  try {
    if (mode !== undefined) await file.chmod(mode).catch(fail);
    const answer = await write((piece) => file.appendFile(piece).catch(fail));
    await file.sync().catch(fail);
    await file.close().catch(fail);
    await rename(beside, target).catch(fail);
    return answer;
  } catch (error) {
    await file.close().catch(() => undefined);
    await unlink(beside).catch(() => undefined);
    throw error;
  }
}

/** Writes a file whole, as `writePieces` does. */
export const writeBeside = (path: string, bytes: Uint8Array): Promise<void> => writePieces(path, (put) => put(bytes));
