// The add-in on this computer, for trying it in a spreadsheet while working on it: `npm run dev`, or `node src/build/dev.mjs --port 3001`.
//
// Builds, serves dist/ over https on localhost alone, builds again after each change of a source, and says how to load the add-in.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, statSync, watch } from 'node:fs';
import { createServer } from 'node:https';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = resolve(import.meta.dirname, '../..');

/** Where the addresses of the manifest lead. */
export const PORT = 3000;

/** Days that a certificate of ours holds. What the maker of the certificates takes if nothing is said. */
const CERTIFICATE_DAYS = 30;
const DAY_MS = 86_400_000;

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/** The file of a folder behind a path, or undefined. No step leads out of the folder, and nothing hidden is handed out. */
export function fileFor(path, folder) {
  let name;
  try {
    name = decodeURIComponent(path);
  } catch {
    return undefined;
  }
  if (!name.startsWith('/') || name.includes('\0') || name.includes('\\')) return undefined;
  if (name.split('/').some((part) => part.startsWith('.'))) return undefined;
  const file = resolve(folder, `.${name}`);
  if (!file.startsWith(resolve(folder) + sep) || !Object.hasOwn(TYPES, extname(file))) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** Hands out a folder. The spreadsheet on the web reads functions.json from a page of its own, so any page may read it. */
function answer(request, response, folder) {
  const say = (status, text) => {
    response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
    response.end(`${text}\n`);
  };
  if (request.method !== 'GET' && request.method !== 'HEAD') return say(405, 'This server only hands out files.');
  const path = (request.url ?? '/').split(/[?#]/)[0];
  const file = fileFor(path, folder);
  if (file === undefined) return say(404, 'There is no such file here.');
  const bytes = readFileSync(file);
  const kind = extname(file);
  response.writeHead(200, {
    'Content-Type': TYPES[kind],
    'Content-Length': bytes.length,
    'X-Content-Type-Options': 'nosniff',
    // Pictures must not be kept from being stored: the ribbon would stay without them.
    'Cache-Control': kind === '.png' ? 'max-age=60' : 'no-cache',
    ...(path === '/functions.json' ? { 'Access-Control-Allow-Origin': '*' } : {}),
  });
  response.end(request.method === 'HEAD' ? undefined : bytes);
}

/** Serves a folder on this computer alone. */
export function serve({ folder, port = PORT, certificate }) {
  const server = createServer(certificate, (request, response) => answer(request, response, folder));
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, 'localhost', () => {
      const at = server.address().port;
      const close = () =>
        new Promise((end) => {
          server.close(end);
          server.closeAllConnections();
        });
      done({ port: at, address: `https://localhost:${at}`, close });
    });
  });
}

/** Certificates of our own in a folder, made again before they run out. Nobody trusts them yet. */
export async function ownCertificate(folder, { generateCertificates, now = Date.now() }) {
  const [ca, cert, key] = ['ca.crt', 'localhost.crt', 'localhost.key'].map((name) => join(folder, name));
  const made = statSync(cert, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (!(existsSync(ca) && existsSync(key) && now - made < (CERTIFICATE_DAYS - 1) * DAY_MS)) {
    mkdirSync(folder, { recursive: true });
    await generateCertificates(ca, cert, key, CERTIFICATE_DAYS, ['localhost', '127.0.0.1']);
  }
  return { ca: readFileSync(ca), cert: readFileSync(cert), key: readFileSync(key), trust: ca };
}

/**
 * A certificate that this computer trusts; where that cannot be had, one of our own with the way to trust it. The system may ask people
 * before it trusts anything new.
 */
export async function certificateFor(folder, makers) {
  try {
    return await makers.getHttpsServerOptions();
  } catch {
    return ownCertificate(folder, makers);
  }
}

/** How to trust a certificate of our own. */
export const trustWords = (
  file,
) => `This computer does not trust the certificate yet. Trust this file once, then restart the spreadsheet or browser:
  ${file}
  Windows  double-click it, Install Certificate, Current User, Trusted Root Certification Authorities
  Mac      double-click it, then set it to Always Trust in Keychain Access
  Browser  or open the address once and accept the warning
It is made on this computer, for localhost alone, and runs out after ${CERTIFICATE_DAYS} days.`;

/** How to load the add-in. The steps are those of the spreadsheets as they stood when this was written. */
export const loadWords = (address, manifest) => `The add-in is at ${address}

Load it into a spreadsheet with this file:
  ${manifest}
  Web      open a workbook, Home > Add-ins > More Add-ins > My Add-ins > Upload My Add-in, choose the file
  Windows  share the folder of the file, add the share under File > Options > Trust Center > Trust Center Settings
           > Trusted Add-in Catalogs, restart, then Home > Add-ins > Advanced > Shared Folder
  Mac      copy the file into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef, restart, then Home > Add-ins
Then type =JACKET. in a cell, or choose Storage jackets on the Home tab.
After a change reload the pane. Stop with Ctrl+C.`;

/** Builds the add-in in a process of its own. True if that went well; what is wrong is on the screen. */
const build = (address) =>
  new Promise((done) => {
    const args = [join(import.meta.dirname, 'build.mjs'), '--only', 'functions', '--base-url', address];
    spawn(process.execPath, args, { cwd: root, stdio: 'inherit' }).on('close', (status) => done(status === 0));
  });

/** How long changes are gathered before the next build [ms]. Our own choice: an editor writes several files at once. */
const GATHER_MS = 300;

/** Calls `work` after changes in a folder, one call at a time; changes meanwhile make one more call. */
export function onChanges(folder, work, wait = GATHER_MS) {
  let timer;
  let busy = false;
  let again = false;
  const run = async () => {
    if (busy) {
      again = true;
      return;
    }
    busy = true;
    await work();
    busy = false;
    if (again) {
      again = false;
      run();
    }
  };
  const watcher = watch(folder, { recursive: true }, () => {
    clearTimeout(timer);
    timer = setTimeout(run, wait);
  });
  return () => {
    clearTimeout(timer);
    watcher.close();
  };
}

async function main() {
  const { values } = parseArgs({ options: { port: { type: 'string', default: String(PORT) } } });
  const port = Number(values.port);
  if (!(Number.isInteger(port) && port > 0 && port < 65_536))
    throw new Error('The port is a whole number from 1 to 65535.');
  const address = `https://localhost:${port}`;
  console.log('Building, this takes a few seconds…');
  if (!(await build(address))) throw new Error('The add-in could not be built; the reason stands above.');
  const makers = await import('office-addin-dev-certs');
  const certificate = await certificateFor(join(root, 'node_modules/.cache/jacket-certificates'), makers.default);
  const dist = join(root, 'dist');
  try {
    await serve({ folder: dist, port, certificate });
  } catch (error) {
    if (error.code !== 'EADDRINUSE') throw error;
    throw new Error(`Port ${port} is taken. Name another: npm run dev -- --port ${port + 1}`);
  }
  console.log(loadWords(address, join(dist, 'manifest.xml')));
  if (certificate.trust) console.log(`\n${trustWords(certificate.trust)}`);
  onChanges(join(root, 'src'), async () => {
    console.log('Something changed, building again…');
    if (await build(address)) console.log('Built. Reload the pane.');
  });
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    await main();
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
