import { type Browser, chromium } from 'playwright-core';
import { findTestBrowser } from './chromium';

/**
 * Starts the browser of the tests, silent towards the network and allowed to sound; who starts it closes it.
 * @param more - further arguments, for a test that needs a browser of its own
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  const { executablePath, environment } = await findTestBrowser();
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--font-render-hinting=none',
      '--autoplay-policy=no-user-gesture-required',
      ...more,
    ],
    env: { ...definedOf(process.env), ...environment },
  });
}

const definedOf = (variables: NodeJS.ProcessEnv): Record<string, string> =>
  Object.fromEntries(
    Object.entries(variables).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
