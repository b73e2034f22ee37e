/**
 * The browser of the browser tests: one process a test file, a fresh context for every page, closed by itself.
 * A page that was opened here has listened from its first moment for everything that should not happen.
 */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, expect, inject, onTestFailed } from 'vitest';
import { launchBrowser } from './launch';

export interface OpenOptions {
  /** Of the window's content, in CSS pixels. */
  readonly width?: number;
  readonly height?: number;
  /** Another host of the built app, with a slash at its end; the tests' own when left out. */
  readonly host?: string;
  /** After the app's own address: a query or hash, such as `#lesson=…`. */
  readonly path?: string;
  /** Anything else Playwright lets a context have: `reducedMotion`, `colorScheme`, `hasTouch`, `locale`. */
  readonly context?: BrowserContextOptions;
  /** A browser with arguments of its own, which the test starts and closes; the shared one when left out. */
  readonly browser?: Browser;
  /**
   * Leaves the service worker on. Elsewhere the page finds none, as in a private window: fetching the whole app for
   * later would cost every test a second.
   */
  readonly serviceWorker?: boolean;
  /** Runs before the page is loaded: routes, init scripts, stored documents. */
  readonly prepare?: (page: Page) => Promise<void>;
}

export interface OpenPage {
  readonly page: Page;
  /** The address the page was opened at, without `path`. */
  readonly address: string;
  /** What should not have happened so far, a line each. */
  readonly complaints: readonly string[];
  /**
   * Fails when the console had an error or a warning, an exception went uncaught, the Content-Security-Policy
   * stopped something, a file was missing, or a request left the page's own origin.
   */
  expectClean(): void;
}

let shared: Promise<Browser> | undefined;
const opened: OpenPage[] = [];

/** Opens the built app the way a static host serves it, below some folder. */
export const openApp = (options: OpenOptions = {}): Promise<OpenPage> =>
  open(options.host ?? inject('site').app, options);

/**
 * Opens the bench: a page without the app whose `window.rooms` hands out the doors of the rooms that need a
 * browser, for `page.evaluate` (see `bench.ts`).
 */
export const openBench = (options: OpenOptions = {}): Promise<OpenPage> =>
  open(inject('site').bench, options);

/** Waits until no line is being composed, and the sheet shows the one that was. */
export const lineComposed = (page: Page): Promise<void> =>
  page.locator('figure[aria-busy="true"], .sheet[aria-busy="true"]').waitFor({ state: 'detached' });

async function open(address: string, options: OpenOptions): Promise<OpenPage> {
  if (options.browser === undefined) shared ??= launchBrowser(inject('browserArguments'));
  const browser = options.browser ?? (await shared);
  if (browser === undefined) throw new Error('No browser was started.');
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1440, height: options.height ?? 900 },
    ...options.context,
  });
  context.setDefaultTimeout(30_000);
  const page = await context.newPage();
  const complaints: string[] = [];
  await listen(page, new URL(address).origin, complaints);
  if (options.serviceWorker !== true) {
    await page.addInitScript(() =>
      Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined }),
    );
  }
  const result: OpenPage = {
    page,
    address,
    complaints,
    expectClean: () => expect(complaints).toEqual([]),
  };
  opened.push(result);
  onTestFailed(() => {
    if (complaints.length > 0) process.stderr.write(`The page complained:\n${complaints.join('\n')}\n`);
  });
  await options.prepare?.(page);
  const response = await page.goto(address + (options.path ?? ''));
  if (response?.ok() !== true) throw new Error(`${page.url()} did not open: ${complaints.join('; ')}`);
  return result;
}

async function listen(page: Page, origin: string, complaints: string[]): Promise<void> {
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      complaints.push(`console ${message.type()}: ${message.text()}`);
    }
  });
  page.on('pageerror', (problem) => complaints.push(`uncaught: ${problem.stack ?? problem.message}`));
  page.context().on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !/^(data|blob):/.test(url))
      complaints.push(`left the origin: ${url}`);
  });
  page.on('websocket', (socket) => complaints.push(`opened a socket: ${socket.url()}`));
  page.context().on('response', (response) => {
    if (response.status() >= 400) complaints.push(`answered ${response.status()}: ${response.url()}`);
  });
  await page.exposeFunction('reportPolicyViolation', (what: string) => {
    complaints.push(`against the policy: ${what}`);
  });
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (violation) => {
      const report: unknown = Reflect.get(window, 'reportPolicyViolation');
      if (typeof report === 'function') report(`${violation.violatedDirective} ${violation.blockedURI}`);
    });
  });
}

afterEach(async () => {
  await Promise.all(opened.splice(0).map(({ page }) => page.context().close()));
});

afterAll(async () => {
  const browser = await shared;
  shared = undefined;
  await browser?.close();
});
