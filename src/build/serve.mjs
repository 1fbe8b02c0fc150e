// Serves the workbench on this computer alone: `npm start`, or `node src/build/serve.mjs --port 4000 --no-open`.
//
// Prints the address at once, builds what is missing while the browser waits, and opens the browser where there is one. Only files that the
// page needs can be had, under the names it uses; there is no folder listing, and no name leads out of the folders below.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = resolve(import.meta.dirname, '../..');

/** Where the server listens if nobody says otherwise. */
export const PORT = 4170;

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/**
 * What the page may load and do. The grid writes style elements of its own while it runs, hence 'unsafe-inline' for styles; scripts come from
 * files of ours only. `data:` is for the small pictures inside style sheets.
 */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Help pages are read in a window of their own: scripts and styles from files of ours only. */
const HELP_POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; base-uri 'none'; form-action 'none'";

/** A file name without any step: letters, digits, dots, hyphens and underscores, not beginning with a dot. */
const PLAIN_NAME = /^[\p{L}\p{N}_][\p{L}\p{N}_.-]*$/u;

/** Folders whose files can be had, each with its kinds of files. */
const FOLDERS = {
  '': { folder: (dist) => dist, kinds: ['.js', '.css'] },
  samples: { folder: (_, samples) => samples, kinds: ['.xlsx'] },
  help: { folder: (dist) => join(dist, 'help'), kinds: ['.html', '.css', '.js'] },
};

/** The file behind an address, or undefined. `dist` is the folder of the bundles, `samples` that of the sample workbooks. */
export function fileFor(path, dist, samples) {
  let name;
  try {
    name = decodeURIComponent(path);
  } catch {
    return undefined;
  }
  if (name === '/') return join(root, 'src/workbench/index.html');
  const [, folder, file, more] = name.includes('/', 1) ? name.split('/') : ['', '', name.slice(1)];
  if (more !== undefined || !Object.hasOwn(FOLDERS, folder) || !PLAIN_NAME.test(file)) return undefined;
  const place = FOLDERS[folder];
  if (!place.kinds.includes(extname(file))) return undefined;
  const found = join(place.folder(dist, samples), file);
  return statSync(found, { throwIfNoEntry: false })?.isFile() ? found : undefined;
}

/** Only our own names for this computer: another name that leads here is somebody else's page asking. */
const isOurHost = (host, port) => [`localhost:${port}`, `127.0.0.1:${port}`].includes(host ?? '');

/**
 * Starts the server. `ready` is awaited before bundles are sent, so that the page may be asked for while they are built.
 */
export function serve({
  port = PORT,
  dist = join(root, 'dist'),
  samples = join(root, 'sample-workbooks'),
  ready = Promise.resolve(),
} = {}) {
  const server = createServer(async (request, response) => {
    const refuse = (status, text) => {
      response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', 'X-Content-Type-Options': 'nosniff' });
      response.end(`${text}\n`);
    };
    if (!isOurHost(request.headers.host, server.address().port)) return refuse(403, 'Open this page as localhost.');
    if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, 'This server only hands out files.');
    // What stands after the ? is for the page. The path is taken as it was sent: a parser would resolve its dots.
    const path = (request.url ?? '/').split(/[?#]/)[0];
    if (path !== '/') {
      try {
        await ready;
      } catch (error) {
        return refuse(500, `The workbench could not be built: ${error.message}`);
      }
    }
    const file = fileFor(path, dist, samples);
    if (file === undefined) return refuse(404, 'There is no such page here.');
    const bytes = readFileSync(file);
    response.writeHead(200, {
      'Content-Type': TYPES[extname(file)],
      'Content-Length': bytes.length,
      'Content-Security-Policy': path.startsWith('/help/') ? HELP_POLICY : POLICY,
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Referrer-Policy': 'no-referrer',
      'X-Content-Type-Options': 'nosniff',
      'Cache-Control': 'no-cache',
    });
    response.end(request.method === 'HEAD' ? undefined : bytes);
  });
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, '127.0.0.1', () => {
      const at = server.address().port;
      done({
        server,
        port: at,
        address: `http://localhost:${at}/`,
        close: () => new Promise((end) => server.close(end)),
      });
    });
  });
}

/** Builds the bundles that are not there. */
async function buildMissing(dist) {
  const missing = ['workbench.js', 'workbench.css', 'help/index.html'].some((name) => !existsSync(join(dist, name)));
  if (!missing) return;
  process.stdout.write('Building the workbench, this takes about half a minute…\n');
  // In a process of its own, so that the page answers meanwhile.
  const builder = join(import.meta.dirname, 'build.mjs');
  const status = await new Promise((done) => {
    spawn(process.execPath, [builder, '--only', 'workbench'], { cwd: root, stdio: 'inherit' }).on('close', done);
  });
  if (status !== 0) throw new Error('see the messages of npm start');
  process.stdout.write('Built.\n');
}

/** Asks the system to show an address. Where there is no browser nothing happens. */
function openBrowser(address) {
  const commands = { darwin: ['open', [address]], win32: ['cmd', ['/c', 'start', '', address]] };
  const [command, args] = commands[process.platform] ?? ['xdg-open', [address]];
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}

const USAGE = `npm start -- [--port NUMBER] [--no-open]

Shows the workbench in the browser. Stop it with Ctrl+C.`;

async function main() {
  let options;
  try {
    options = parseArgs({
      options: { port: { type: 'string' }, 'no-open': { type: 'boolean' }, help: { type: 'boolean' } },
    }).values;
  } catch (error) {
    process.stderr.write(`${error.message}\n\n${USAGE}\n`);
    process.exit(2);
  }
  if (options.help) return void process.stdout.write(`${USAGE}\n`);
  const port = options.port === undefined ? PORT : Number(options.port);
  if (!(Number.isInteger(port) && port >= 0 && port < 65_536)) {
    process.stderr.write('The port is a whole number from 0 to 65535.\n');
    process.exit(2);
  }
  const dist = join(root, 'dist');
  let start = () => undefined;
  const ready = new Promise((done) => {
    start = done;
  }).then(() => buildMissing(dist));
  ready.catch((error) => process.stderr.write(`The workbench could not be built:\n${error.message}\n`));
  let running;
  try {
    running = await serve({ port, dist, ready });
  } catch (error) {
    const why =
      error.code === 'EADDRINUSE'
        ? `Port ${port} is taken. Name another: npm start -- --port ${port + 1}`
        : error.message;
    process.stderr.write(`${why}\n`);
    process.exit(1);
  }
  process.stdout.write(`The workbench is at ${running.address}\n`);
  if (!options['no-open']) openBrowser(running.address);
  start();
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) await main();
