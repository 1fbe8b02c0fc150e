import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generateCertificates } from 'office-addin-dev-certs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type Certificate,
  certificateFor,
  fileFor,
  loadWords,
  onChanges,
  ownCertificate,
  serve,
  trustWords,
} from '../../src/build/dev.mjs';

const folder = mkdtempSync(join(tmpdir(), 'jacket-dev-'));
const site = join(folder, 'site');
let certificate: Certificate;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(site, 'icons'), { recursive: true });
  writeFileSync(join(site, 'functions.json'), '{}');
  writeFileSync(join(site, 'taskpane.html'), '<p>pane</p>');
  writeFileSync(join(site, 'icons/icon-16.png'), 'png');
  writeFileSync(join(site, '.hidden.json'), '{}');
  writeFileSync(join(site, 'key.pem'), 'secret');
  writeFileSync(join(folder, 'outside.json'), '{}');
  certificate = await ownCertificate(join(folder, 'certificates'), { generateCertificates });
  server = await serve({ folder: site, port: 0, certificate });
});
afterAll(async () => {
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Reply {
  readonly status: number;
  readonly headers: Record<string, unknown>;
  readonly text: string;
}

/** Asks for a path exactly as written, trusting only the certificate that was made. */
const get = (path: string, method = 'GET'): Promise<Reply> =>
  new Promise((done, fail) => {
    const asked = request(
      { host: 'localhost', port: server.port, path, method, ca: certificate.ca, agent: false },
      (response) => {
        let text = '';
        response.on('data', (more) => {
          text += more;
        });
        response.on('end', () => done({ status: response.statusCode!, headers: response.headers, text }));
      },
    );
    asked.on('error', fail);
    asked.end();
  });

describe('the server', () => {
  it('hands out files over https, with a certificate that can be trusted', async () => {
    const reply = await get('/taskpane.html?_host_Info=x');
    expect(reply).toMatchObject({ status: 200, text: '<p>pane</p>' });
    expect(reply.headers['content-type']).toBe('text/html; charset=utf-8');
  });

  it('lets any page read functions.json, and no other file', async () => {
    expect((await get('/functions.json')).headers['access-control-allow-origin']).toBe('*');
    expect((await get('/taskpane.html')).headers['access-control-allow-origin']).toBeUndefined();
  });

  it('lets icons be stored', async () => {
    expect((await get('/icons/icon-16.png')).headers['cache-control']).not.toMatch(/no-cache|no-store/);
  });

  it.each([
    '/../outside.json',
    '/..%2foutside.json',
    '/%2e%2e/outside.json',
    '/icons/../../outside.json',
    '/..\\outside.json',
    '/%00.json',
    '/%E0%A4%A',
    '/.hidden.json',
    '/key.pem',
    '/icons',
    '/icons/',
    '/',
    '/nothing.html',
  ])('refuses %s', async (path) => {
    expect((await get(path)).status).toBe(404);
  });

  it('takes nothing in', async () => {
    expect((await get('/functions.json', 'POST')).status).toBe(405);
    expect(await get('/functions.json', 'HEAD')).toMatchObject({ status: 200, text: '' });
  });

  it('listens on this computer alone', () => {
    expect(server.address).toBe(`https://localhost:${server.port}`);
  });
});

describe('files', () => {
  it('are found inside of the folder only', () => {
    expect(fileFor('/functions.json', site)).toBe(join(site, 'functions.json'));
    expect(fileFor('functions.json', site)).toBeUndefined();
  });
});

describe('certificates', () => {
  const ownFolder = join(folder, 'own');

  it('of the computer are taken where it gives them', async () => {
    const trusted = { ca: Buffer.from('a'), cert: Buffer.from('b'), key: Buffer.from('c') };
    const makers = { getHttpsServerOptions: async () => trusted, generateCertificates };
    expect(await certificateFor(ownFolder, makers)).toBe(trusted);
  });

  it('are made where it does not, once, and again before they run out', async () => {
    let made = 0;
    const makers = {
      getHttpsServerOptions: () => Promise.reject(new Error('sudo: not found')),
      generateCertificates: async (...files: unknown[]) => {
        made += 1;
        for (const file of files.slice(0, 3)) writeFileSync(file as string, 'x');
      },
    };
    const own = await certificateFor(ownFolder, makers);
    expect(own.trust).toBe(join(ownFolder, 'ca.crt'));
    await certificateFor(ownFolder, makers);
    expect(made).toBe(1);
    const thirtyDays = 30 * 86_400_000;
    await certificateFor(ownFolder, { ...makers, now: Date.now() + thirtyDays });
    expect(made).toBe(2);
  });

  it('of our own come with the way to trust them', () => {
    expect(trustWords('/somewhere/ca.crt')).toContain('/somewhere/ca.crt');
  });
});

describe('changes', () => {
  it('make one piece of work, and one more if something changes meanwhile', async () => {
    const watched = join(folder, 'watched');
    mkdirSync(join(watched, 'deep'), { recursive: true });
    let works = 0;
    let finish = (): void => undefined;
    const stop = onChanges(
      watched,
      () => {
        works += 1;
        return new Promise((done) => {
          finish = done;
        });
      },
      20,
    );
    writeFileSync(join(watched, 'a.ts'), '1');
    writeFileSync(join(watched, 'deep/b.ts'), '1');
    await expect.poll(() => works).toBe(1);
    writeFileSync(join(watched, 'a.ts'), '2');
    await new Promise((done) => setTimeout(done, 150));
    expect(works).toBe(1);
    finish();
    await expect.poll(() => works).toBe(2);
    finish();
    stop();
  });
});

it('says how to load the add-in on each platform', () => {
  const words = loadWords('https://localhost:3000', '/site/manifest.xml');
  for (const place of ['Web', 'Windows', 'Mac', '/site/manifest.xml']) expect(words).toContain(place);
});
