import { readdirSync } from 'node:fs';
import { findExecutable, type Started, start } from './processes';
import type { DrivenBrowser, Skipped } from './types';

/** Where distributions put the small browser of WebKitGTK. */
const LIBRARIES = [
  '/usr/lib',
  '/usr/lib64',
  '/usr/libexec',
  '/usr/lib/x86_64-linux-gnu',
  '/usr/lib/aarch64-linux-gnu',
];

function smallBrowsers(): string[] {
  return LIBRARIES.flatMap((folder) => {
    try {
      const names = readdirSync(folder).filter((name) => name.startsWith('webkit'));
      return names.sort().map((name) => `${folder}/${name}/MiniBrowser`);
    } catch {
      return [];
    }
  });
}

/**
 * The small browser of an installed WebKitGTK, driven over WebDriver (W3C); `WEBKIT_DRIVER_PATH` and
 * `WEBKIT_BROWSER_PATH` name others. Without a screen it has one of Xvfb's.
 */
export async function startWebKit(): Promise<DrivenBrowser | Skipped> {
  const driver = findExecutable([process.env.WEBKIT_DRIVER_PATH, 'WebKitWebDriver']);
  if (driver === null)
    return { skipped: 'WebKitGTK: its driver is not installed, and WEBKIT_DRIVER_PATH names none.' };
  const browser = findExecutable([process.env.WEBKIT_BROWSER_PATH, ...smallBrowsers(), 'MiniBrowser']);
  if (browser === null)
    return { skipped: 'WebKitGTK: its small browser is not installed, and WEBKIT_BROWSER_PATH names none.' };
  const screens = process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY ?? '';
  const xvfb = findExecutable(['Xvfb']);
  if (screens === '' && xvfb === null)
    return { skipped: 'WebKitGTK: there is no screen, and no Xvfb to stand in for one.' };
  const started: Started[] = [];
  const clear = async (): Promise<void> => {
    for (const each of started.splice(0).reverse()) await each.end();
  };
  try {
    let environment = {};
    if (screens === '' && xvfb !== null) {
      // It says the number of the free screen that it took on the file that it is told to.
      const screen = start(xvfb, ['-displayfd', '1', '-screen', '0', '1600x1200x24', '-nolisten', 'tcp']);
      started.push(screen);
      environment = { DISPLAY: `:${await screen.says(/^(\d+)\n/m, 30)}` };
    }
    const port = 20_000 + (process.pid % 20_000);
    const service = start(driver, [`--port=${port}`, '--host=127.0.0.1'], environment);
    started.push(service);
    return await drive(`http://127.0.0.1:${port}`, browser, clear);
  } catch (problem) {
    await clear();
    throw problem;
  }
}

/** A member of what came as JSON. */
const member = (of: unknown, name: string): unknown =>
  typeof of === 'object' && of !== null ? Reflect.get(of, name) : undefined;

async function command(address: string, method: 'GET' | 'POST' | 'DELETE', body?: object): Promise<unknown> {
  const response = await fetch(address, {
    method,
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const value = member(await response.json(), 'value');
  if (!response.ok) throw new Error(`${address}: ${String(member(value, 'message'))}`);
  return value;
}

/** Waits until the driver answers. */
async function ready(host: string): Promise<void> {
  for (let turn = 0; turn < 100; turn += 1) {
    const there = await command(`${host}/status`, 'GET').catch(() => null);
    if (there !== null) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('The driver of WebKitGTK did not answer.');
}

async function drive(host: string, binary: string, clear: () => Promise<void>): Promise<DrivenBrowser> {
  await ready(host);
  const made = await command(`${host}/session`, 'POST', {
    capabilities: {
      alwaysMatch: { 'webkitgtk:browserOptions': { binary, args: ['--automation'] } },
    },
  });
  const session = `${host}/session/${String(member(made, 'sessionId'))}`;
  const version = String(member(member(made, 'capabilities'), 'browserVersion'));
  const run = (script: string): Promise<unknown> =>
    command(`${session}/execute/sync`, 'POST', { script, args: [] });
  return {
    name: `WebKitGTK ${version}`,
    // Classic WebDriver hands nothing of the console on.
    complaints: [],
    async open(url, { width, height }) {
      await command(`${session}/window/rect`, 'POST', { x: 0, y: 0, width, height });
      await command(`${session}/url`, 'POST', { url });
      // A window is larger than its content: by what is missing it is made larger still.
      const inner = await run('return [innerWidth, innerHeight]');
      const [innerWidth, innerHeight] = Array.isArray(inner) ? inner.map(Number) : [];
      await command(`${session}/window/rect`, 'POST', {
        x: 0,
        y: 0,
        width: width + width - (innerWidth ?? width),
        height: height + height - (innerHeight ?? height),
      });
    },
    async evaluate(expression) {
      return JSON.parse(String(await run(`return JSON.stringify((${expression}) ?? null)`)));
    },
    async act(source) {
      await command(`${session}/actions`, 'POST', { actions: [source] });
    },
    async picture() {
      return Buffer.from(String(await command(`${session}/screenshot`, 'GET')), 'base64');
    },
    async close() {
      await command(session, 'DELETE').catch(() => null);
      await clear();
    },
  };
}
