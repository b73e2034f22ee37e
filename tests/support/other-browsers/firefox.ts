import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findExecutable, type Started, start } from './processes';
import type { DrivenBrowser, Skipped } from './types';
import { connectSocket, type TextSocket } from './web-socket';

/** Sound may begin without a person, and the browser asks nothing of the network. */
const PREFERENCES: Readonly<Record<string, boolean | number | string>> = {
  'media.autoplay.default': 0,
  'app.update.enabled': false,
  'browser.aboutwelcome.enabled': false,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'toolkit.telemetry.reportingpolicy.firstRun': false,
};

/** An installed Firefox, driven over WebDriver BiDi (W3C); `FIREFOX_PATH` names another one. */
export async function startFirefox(): Promise<DrivenBrowser | Skipped> {
  const path = findExecutable([
    process.env.FIREFOX_PATH,
    'firefox-esr',
    'firefox',
    '/Applications/Firefox.app/Contents/MacOS/firefox',
  ]);
  if (path === null) return { skipped: 'Firefox: none is installed, and FIREFOX_PATH names none.' };
  const profile = await mkdtemp(join(tmpdir(), 'ground-bass-firefox-'));
  const lines = Object.entries(PREFERENCES).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  await writeFile(join(profile, 'user.js'), lines.join('\n'));
  const started = start(path, [
    '--headless',
    '--no-remote',
    '--profile',
    profile,
    '--remote-debugging-port',
    '0',
  ]);
  const clear = async (): Promise<void> => {
    await started.end();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    return await drive(started, clear);
  } catch (problem) {
    await clear();
    throw problem;
  }
}

/** Longest wait for an answer of the browser, in milliseconds. */
const ANSWER_MS = 30_000;

interface Answer {
  readonly id?: number;
  readonly type: 'success' | 'error' | 'event';
  readonly result?: unknown;
  readonly message?: string;
  readonly method?: string;
  readonly params?: unknown;
}

/** A member of what came as JSON. */
const member = (of: unknown, name: string): unknown =>
  typeof of === 'object' && of !== null ? Reflect.get(of, name) : undefined;

async function drive(started: Started, clear: () => Promise<void>): Promise<DrivenBrowser> {
  const address = await started.says(/WebDriver BiDi listening on (ws:\/\/\S+)/, 60);
  const complaints: string[] = [];
  const waiting = new Map<number, (answer: Answer) => void>();
  const socket: TextSocket = await connectSocket(`${address}/session`, (text) => {
    const answer: Answer = JSON.parse(text);
    if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
    if (answer.method === 'log.entryAdded' && member(answer.params, 'level') === 'error')
      complaints.push(String(member(answer.params, 'text')));
  });
  let count = 0;
  const command = (method: string, params: object): Promise<unknown> => {
    count += 1;
    const id = count;
    socket.send(JSON.stringify({ id, method, params }));
    return new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`${method} had no answer.`)), ANSWER_MS);
      waiting.set(id, (answer) => {
        clearTimeout(late);
        waiting.delete(id);
        if (answer.type === 'error') reject(new Error(`${method}: ${answer.message}`));
        else resolve(answer.result);
      });
    });
  };
  const session = await command('session.new', { capabilities: {} });
  await command('session.subscribe', { events: ['log.entryAdded'] });
  const tree = await command('browsingContext.getTree', {});
  const context = member(member(member(tree, 'contexts'), '0'), 'context');
  return {
    name: `Firefox ${String(member(member(session, 'capabilities'), 'browserVersion'))}`,
    complaints,
    async open(url, viewport) {
      await command('browsingContext.setViewport', { context, viewport });
      await command('browsingContext.navigate', { context, url, wait: 'complete' });
    },
    async evaluate(expression) {
      const answer = await command('script.evaluate', {
        expression: `(async () => JSON.stringify((await (${expression})) ?? null))()`,
        target: { context },
        awaitPromise: true,
        userActivation: false,
      });
      if (member(answer, 'type') !== 'success')
        throw new Error(`${expression}: ${String(member(member(answer, 'exceptionDetails'), 'text'))}`);
      return JSON.parse(String(member(member(answer, 'result'), 'value')));
    },
    async act(source) {
      await command('input.performActions', { context, actions: [source] });
    },
    async picture() {
      const taken = await command('browsingContext.captureScreenshot', { context });
      return Buffer.from(String(member(taken, 'data')), 'base64');
    },
    async close() {
      socket.close();
      await clear();
    },
  };
}
