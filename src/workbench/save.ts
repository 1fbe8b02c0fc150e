/** Files out of the page: into the file they came from where the browser allows it, else as a download. Nothing is overwritten unasked. */

/** What a browser with access to files offers; others have none of it. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(data: Uint8Array | string): Promise<void>; close(): Promise<void> }>;
  queryPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>;
}

interface PickerWindow {
  showOpenFilePicker?(options: object): Promise<FileHandle[]>;
  showSaveFilePicker?(options: object): Promise<FileHandle>;
}

const pickers = (): PickerWindow => window as unknown as PickerWindow;

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
export const TYPES = { xlsx: XLSX, csv: 'text/csv' } as const;
const OPENED = { [XLSX]: ['.xlsx', '.xlsm'], 'text/csv': ['.csv', '.tsv', '.txt'] };

const isCancel = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';

/** Asks for a file. Undefined where nothing was chosen. */
export async function chooseFile(): Promise<{ file: File; handle?: FileHandle } | undefined> {
  const { showOpenFilePicker } = pickers();
  if (showOpenFilePicker) {
    try {
      const [handle] = await showOpenFilePicker.call(window, {
        types: [{ description: 'Workbooks and tables', accept: OPENED }],
      });
      return handle && { file: await handle.getFile(), handle };
    } catch (error) {
      if (isCancel(error)) return undefined;
    }
  }
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = Object.values(OPENED).flat().join(',');
  return new Promise((done) => {
    input.addEventListener('change', () => done(input.files?.[0] && { file: input.files[0] }));
    input.addEventListener('cancel', () => done(undefined));
    input.click();
  });
}

function download(data: Uint8Array | string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([data as BlobPart], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

async function mayWrite(handle: FileHandle): Promise<boolean> {
  if ((await handle.queryPermission?.({ mode: 'readwrite' })) === 'granted') return true;
  return (await handle.requestPermission?.({ mode: 'readwrite' })) === 'granted';
}

async function writeTo(handle: FileHandle, data: Uint8Array | string): Promise<void> {
  const writable = await handle.createWritable();
  await writable.write(data);
  await writable.close();
}

export interface Saved {
  /** `file`: into a file of the person's choice, `download`: handed to the browser, `none`: called off. */
  readonly where: 'file' | 'download' | 'none';
  readonly name: string;
  readonly handle?: FileHandle;
  /** When the written file was last changed. */
  readonly changed?: number;
}

export interface SaveOptions {
  readonly name: string;
  readonly kind: keyof typeof TYPES;
  /** The file it came from, and when that was last changed as far as the page knows. */
  readonly handle?: FileHandle;
  readonly changed?: number;
  /** Asks whether to write over a file that somebody else changed meanwhile. */
  readonly confirmOverwrite: () => Promise<boolean>;
}

/** Writes a file. */
export async function saveFile(data: Uint8Array | string, options: SaveOptions): Promise<Saved> {
  const { name, kind, handle, changed, confirmOverwrite } = options;
  if (handle && (await mayWrite(handle))) {
    const before = await handle.getFile();
    if (changed !== undefined && before.lastModified !== changed && !(await confirmOverwrite()))
      return { where: 'none', name };
    await writeTo(handle, data);
    return { where: 'file', name: handle.name, handle, changed: (await handle.getFile()).lastModified };
  }
  const { showSaveFilePicker } = pickers();
  if (showSaveFilePicker) {
    try {
      const chosen = await showSaveFilePicker.call(window, {
        suggestedName: name,
        types: [{ accept: { [TYPES[kind]]: [/\.[^.]+$/.exec(name)?.[0] ?? `.${kind}`] } }],
      });
      await writeTo(chosen, data);
      return { where: 'file', name: chosen.name, handle: chosen, changed: (await chosen.getFile()).lastModified };
    } catch (error) {
      if (isCancel(error)) return { where: 'none', name };
    }
  }
  download(data, name, TYPES[kind]);
  return { where: 'download', name };
}
