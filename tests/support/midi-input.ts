/** MIDI inputs on the page that nobody has to plug in. */
import type { Page } from 'playwright-core';

/** Puts inputs in the place of the browser's own, before the page is loaded; there are none at first. */
export const withInputs = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    interface Input {
      readonly id: string;
      readonly name: string;
      state: 'connected' | 'disconnected';
      onmidimessage: ((event: object) => void) | null;
    }
    const access = { inputs: new Map<string, Input>(), onstatechange: () => {} };
    Reflect.set(window, 'midiInputs', {
      plugIn(name: string) {
        access.inputs.set(name, { id: name, name, state: 'connected', onmidimessage: null });
        access.onstatechange?.();
      },
      pullOut(name: string) {
        const input = access.inputs.get(name);
        if (input) input.state = 'disconnected';
        access.onstatechange?.();
      },
      send(name: string, messages: readonly (readonly number[])[]) {
        for (const message of messages)
          access.inputs.get(name)?.onmidimessage?.({
            data: new Uint8Array(message),
            timeStamp: performance.now(),
          });
      },
    });
    Reflect.set(navigator, 'requestMIDIAccess', async () => access);
  });

const call = (page: Page, what: string, ...given: readonly unknown[]): Promise<void> =>
  page.evaluate(
    ([name, args]) => {
      Reflect.get(window, 'midiInputs')[name](...args);
    },
    [what, given] as const,
  );

export const plugIn = (page: Page, name: string): Promise<void> => call(page, 'plugIn', name);
export const pullOut = (page: Page, name: string): Promise<void> => call(page, 'pullOut', name);

/** Messages at one moment: keys struck together are several. */
export async function send(
  page: Page,
  name: string,
  ...messages: readonly (readonly number[])[]
): Promise<void> {
  // Nobody strikes two keys one after the other as fast as a test does.
  await page.waitForTimeout(60);
  await call(page, 'send', name, messages);
}
