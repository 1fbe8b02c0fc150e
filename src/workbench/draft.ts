/** Unsaved work, kept by the browser: the file as it was opened, and the cells that were changed since. */

/** One changed cell. Without formula it is a value; `null` is an emptied cell. */
export interface DraftCell {
  readonly sheet: number;
  readonly address: string;
  readonly value: number | string | boolean | null;
  readonly formula?: string;
}

export interface DraftFile {
  readonly id: string;
  readonly name: string;
  readonly kind: 'xlsx' | 'csv';
  readonly bytes: Uint8Array;
}

export interface Draft extends DraftFile {
  readonly cells: readonly DraftCell[];
  /** When the last change was made, milliseconds since 1970. */
  readonly when: number;
}

const DATABASE = 'storage-jackets';
const FILES = 'files';
const EDITS = 'edits';

const asked = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });

async function database(): Promise<IDBDatabase> {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => {
    for (const store of [FILES, EDITS]) opening.result.createObjectStore(store, { keyPath: 'id' });
  };
  return asked(opening);
}

/** Runs steps on both stores; done when all of it is written. */
async function within<T>(
  mode: IDBTransactionMode,
  steps: (files: IDBObjectStore, edits: IDBObjectStore) => Promise<T>,
): Promise<T> {
  const open = await database();
  try {
    const transaction = open.transaction([FILES, EDITS], mode);
    const ended = new Promise<void>((done, fail) => {
      transaction.oncomplete = () => done();
      transaction.onerror = () => fail(transaction.error);
      transaction.onabort = () => fail(transaction.error);
    });
    const result = await steps(transaction.objectStore(FILES), transaction.objectStore(EDITS));
    await ended;
    return result;
  } finally {
    open.close();
  }
}

interface Edits {
  readonly id: string;
  readonly when: number;
  readonly cells: readonly DraftCell[];
}

/** Keeps the file of a draft. Its changes follow with `keepCells`. */
export const keepFile = (file: DraftFile): Promise<void> =>
  within('readwrite', async (files) => {
    await asked(files.put(file));
  });

export const keepCells = (id: string, cells: readonly DraftCell[]): Promise<void> =>
  within('readwrite', async (_, edits) => {
    const kept: Edits = { id, when: Date.now(), cells };
    await asked(edits.put(kept));
  });

export const dropDraft = (id: string): Promise<void> =>
  within('readwrite', async (files, edits) => {
    await asked(files.delete(id));
    await asked(edits.delete(id));
  });

/** A draft with changes in it, or nothing. */
export const readDraft = (id: string): Promise<Draft | undefined> =>
  within('readonly', async (files, edits) => {
    const file = (await asked(files.get(id))) as DraftFile | undefined;
    const kept = (await asked(edits.get(id))) as Edits | undefined;
    return file && kept && kept.cells.length > 0 ? { ...file, ...kept } : undefined;
  });

/** Drafts of all tabs, the newest first. */
export const allDrafts = (): Promise<
  readonly { readonly id: string; readonly name: string; readonly when: number }[]
> =>
  within('readonly', async (files, edits) => {
    const kept = (await asked(edits.getAll())) as Edits[];
    const named = (await asked(files.getAll())) as DraftFile[];
    return kept
      .filter(({ cells }) => cells.length > 0)
      .flatMap(({ id, when }) => {
        const file = named.find((one) => one.id === id);
        return file ? [{ id, name: file.name, when }] : [];
      })
      .sort((a, b) => b.when - a.when);
  });

const MINE = 'storage-jackets.draft';

/** Holds a name while this tab is open; false if another tab holds it. */
const hold = (id: string): Promise<boolean> =>
  new Promise((done) => {
    void navigator.locks.request(`draft ${id}`, { ifAvailable: true }, (lock) => {
      done(lock !== null);
      return lock === null ? undefined : new Promise(() => undefined);
    });
  });

/** Names of drafts that an open tab holds. */
const heldNames = async (): Promise<Set<string>> =>
  new Set((await navigator.locks.query()).held?.map(({ name = '' }) => name.replace(/^draft /, '')));

/** This tab's draft: the one it had before a reload, or a new name. A doubled tab gets a name of its own. */
export async function ownDraft(): Promise<string> {
  const before = sessionStorage.getItem(MINE);
  if (before !== null && (await hold(before))) return before;
  const fresh = crypto.randomUUID();
  await hold(fresh);
  sessionStorage.setItem(MINE, fresh);
  return fresh;
}

/** Takes over a draft that no open tab holds. */
export async function takeDraft(id: string): Promise<boolean> {
  if (!(await hold(id))) return false;
  sessionStorage.setItem(MINE, id);
  return true;
}

/** Drafts that were left behind: no open tab holds them. */
export async function leftDrafts(): Promise<Awaited<ReturnType<typeof allDrafts>>> {
  const held = await heldNames();
  return (await allDrafts()).filter(({ id }) => !held.has(id));
}
