export const PORT: number;

export interface Certificate {
  readonly ca: Buffer;
  readonly cert: Buffer;
  readonly key: Buffer;
  /** The file that has to be trusted, where it is one of our own. */
  readonly trust?: string;
}

export interface CertificateMakers {
  getHttpsServerOptions(): Promise<Certificate>;
  generateCertificates(ca: string, cert: string, key: string, days: number, names: string[]): Promise<void>;
  now?: number;
}

export function fileFor(path: string, folder: string): string | undefined;
export function serve(options: {
  folder: string;
  port?: number;
  certificate: Certificate;
}): Promise<{ port: number; address: string; close(): Promise<void> }>;
export function ownCertificate(
  folder: string,
  makers: Pick<CertificateMakers, 'generateCertificates' | 'now'>,
): Promise<Certificate>;
export function certificateFor(folder: string, makers: CertificateMakers): Promise<Certificate>;
export function trustWords(file: string): string;
export function loadWords(address: string, manifest: string): string;
export function onChanges(folder: string, work: () => Promise<void>, wait?: number): () => void;
