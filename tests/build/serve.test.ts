import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fileFor, serve } from '../../src/build/serve.mjs';

let folder: string;
let dist: string;
let samples: string;
let running: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'jacket-serve-'));
  dist = join(folder, 'dist');
  samples = join(folder, 'samples');
  mkdirSync(join(dist, 'help'), { recursive: true });
  mkdirSync(samples);
  writeFileSync(join(dist, 'workbench.js'), 'script');
  writeFileSync(join(dist, 'functions.json'), '{}');
  writeFileSync(join(dist, 'help', 'area.html'), '<p>area</p>');
  writeFileSync(join(samples, 'rows.xlsx'), 'rows');
  writeFileSync(join(folder, 'secret.js'), 'secret');
  symlinkSync(folder, join(dist, 'away'));
  running = await serve({ port: 0, dist, samples });
});

afterAll(async () => {
  await running.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A request whose path goes out as it is written. */
const get = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  new Promise<{ status: number; headers: Record<string, unknown>; text: string }>((done, fail) => {
    const asked = request({ host: '127.0.0.1', port: running.port, path, method, headers }, (answer) => {
      let text = '';
      answer.on('data', (part: Buffer) => {
        text += part.toString();
      });
      answer.on('end', () => done({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
    });
    asked.on('error', fail);
    asked.end();
  });

describe('files that can be had', () => {
  test.each([
    ['/', 'Storage jackets'],
    ['/workbench.js', 'script'],
    ['/workbench.js?1', 'script'],
    ['/help/area.html', 'area'],
    ['/samples/rows.xlsx', 'rows'],
  ])('%s', async (path, words) => {
    const { status, text } = await get(path);
    expect(status).toBe(200);
    expect(text).toContain(words);
  });
});

describe('nothing else', () => {
  test.each([
    '/secret.js',
    '/../secret.js',
    '/%2e%2e/secret.js',
    '/..%2fsecret.js',
    '/away/secret.js',
    '/help/../workbench.js',
    '/help/..%2f..%2fsecret.js',
    '/samples/',
    '/samples',
    '/help',
    '/functions.json',
    '/samples/rows.js',
    '/constructor/x.js',
    '/__proto__/x.js',
    '/%00.js',
    '/%',
    '//secret.js',
    '/.secret.js',
  ])('%s', async (path) => {
    expect((await get(path)).status).toBe(404);
    expect(fileFor(path, dist, samples)).toBeUndefined();
  });

  test('only reading', async () => {
    expect((await get('/', {}, 'POST')).status).toBe(405);
    expect((await get('/workbench.js', {}, 'HEAD')).text).toBe('');
  });
});

test('another name for this computer is refused', async () => {
  expect((await get('/', { Host: 'jackets.example' })).status).toBe(403);
  expect((await get('/', { Host: `localhost:${running.port}` })).status).toBe(200);
});

test('scripts come from files of ours only, and no other address is asked', async () => {
  const { headers } = await get('/');
  const policy = String(headers['content-security-policy']);
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(policy).toContain("connect-src 'self';");
  expect(policy).not.toContain('unsafe-eval');
  expect(headers['x-content-type-options']).toBe('nosniff');
});

test('nobody outside of this computer can reach it', async () => {
  const { address } = running.server.address() as { address: string };
  expect(address).toBe('127.0.0.1');
  await new Promise<void>((done, fail) => {
    const socket = connect(running.port, '127.0.0.1', () => {
      socket.destroy();
      done();
    });
    socket.on('error', fail);
  });
});
