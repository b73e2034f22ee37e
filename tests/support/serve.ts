/**
 * Set-up of the browser tests: builds the app exactly as it ships and the bench beside it, and serves both
 * from folders below the root of a host, where an absolute address would find nothing.
 */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Addresses of the served pages. */
    site: { readonly app: string; readonly bench: string };
    /** What the browser of a project's tests is started with beside the usual. */
    browserArguments?: string[];
  }
}

const projectRoot = fileURLToPath(new URL('../../', import.meta.url));
const benchRoot = join(projectRoot, 'tests', 'support');

const contentTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.otf': 'font/otf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

interface Site {
  readonly host: string;
  close(): Promise<void>;
}

/** Where the site stands that all projects of one run share: each of them loads this file for itself. */
const SHARED = Symbol.for('ground-bass.test-site');
const held = process as NodeJS.Process & { [SHARED]?: { readonly site: Promise<Site>; users: number } };

/** Builds and serves the site for the first project that asks, and takes it down after the last. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  held[SHARED] ??= { site: openSite(), users: 0 };
  const shared = held[SHARED];
  shared.users += 1;
  const { host, close } = await shared.site;
  project.provide('site', { app: `${host}/some/where/`, bench: `${host}/bench/bench.html` });
  return async () => {
    shared.users -= 1;
    if (shared.users > 0) return;
    delete held[SHARED];
    await close();
  };
}

async function openSite(): Promise<Site> {
  const folder = await mkdtemp(join(tmpdir(), 'ground-bass-site-'));
  await buildSite(folder);
  const server = await serve(folder);
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The test server has no port.');
  return {
    host: `http://127.0.0.1:${address.port}`,
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await rm(folder, { recursive: true });
    },
  };
}

/** Both builds at once: the app has a process of its own. */
async function buildSite(folder: string): Promise<void> {
  // The tests of single rooms go on when the app cannot be built; those of the app then fail, each by itself.
  const app = buildApp(join(folder, 'some', 'where')).catch((problem: unknown) =>
    process.stderr.write(`The app could not be built. ${String(problem)}\n`),
  );
  const bench = build({
    configFile: join(projectRoot, 'vite.config.ts'),
    logLevel: 'error',
    root: benchRoot,
    publicDir: join(projectRoot, 'public'),
    build: {
      outDir: join(folder, 'bench'),
      emptyOutDir: true,
      // One unfinished room must not take the bench from the others: the compiler reports what is missing.
      rolldownOptions: { input: join(benchRoot, 'bench.html'), shimMissingExports: true },
    },
  });
  await Promise.all([app, bench]);
}

/** In a process of its own: in this one `NODE_ENV` says `test`, and the libraries would be built for that. */
async function buildApp(folder: string): Promise<void> {
  const vite = join(projectRoot, 'node_modules', 'vite', 'bin', 'vite.js');
  await promisify(execFile)(
    process.execPath,
    [vite, 'build', '--logLevel', 'error', '--outDir', folder, '--emptyOutDir'],
    { cwd: projectRoot, env: { ...process.env, NODE_ENV: 'production' } },
  );
}

/**
 * A plain static host on a free port of this machine: files as they lie, `index.html` for a folder, else 404. Each page
 * asks for more than a hundred files, the same for every test: they are read once.
 */
async function serve(folder: string): Promise<Server> {
  const read = new Map<string, Buffer>();
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    const inside = file.startsWith(folder + sep);
    const content = inside ? (read.get(file) ?? (await readFile(file).catch(() => undefined))) : undefined;
    if (content === undefined) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
      return;
    }
    read.set(file, content);
    const type = contentTypes[extname(file)] ?? 'application/octet-stream';
    response.writeHead(200, { 'content-type': type, 'x-content-type-options': 'nosniff' }).end(content);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return server;
}
