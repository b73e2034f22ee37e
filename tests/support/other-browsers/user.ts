import type { DrivenBrowser, InputAction } from './types';

/** Keys by the code points that WebDriver has for them. */
const KEYS = { Control: '\uE009', Delete: '\uE017', Escape: '\uE00C' } as const;

/** Longest wait for anything on the page, in seconds. */
const PATIENCE = 60;

/**
 * Finds the visible element of a role and name, and where to press it: its middle, once it is in view. Names are read as
 * far as the page gives them: by label, or by text.
 */
const FIND = `(selector, wanted) => {
  const worded = (text) => (text ?? '').replace(/\\s+/g, ' ').trim();
  const nameOf = (element) => {
    const by = element.getAttribute('aria-labelledby');
    if (by !== null) return worded(by.split(/\\s+/).map((id) => document.getElementById(id)?.textContent ?? '').join(' '));
    const own = element.getAttribute('aria-label');
    if (own !== null) return worded(own);
    return worded(element.labels?.[0]?.textContent ?? element.textContent);
  };
  const found = [...document.querySelectorAll(selector)].find(
    (element) => new RegExp(wanted).test(nameOf(element)) && element.getClientRects().length > 0,
  );
  if (found === undefined) return null;
  found.scrollIntoView({ block: 'center', behavior: 'instant' });
  const { left, top, width, height } = found.getBoundingClientRect();
  const [x, y] = [Math.round(left + width / 2), Math.round(top + height / 2)];
  const hit = document.elementFromPoint(x, y);
  return { x, y, hit: hit !== null && (found.contains(hit) || hit.contains(found)), busy: found.ariaBusy === 'true' };
}`;

const SELECTORS = {
  button: 'button, [role="button"], summary',
  textbox: 'textarea, input:not([type]), input[type="text"]',
  menuitem: '[role="menuitem"]',
  switch: '[role="switch"]',
} as const;

/** What a person does in a browser that is driven from outside. */
export interface User {
  /** Presses what has a role and a name, once it is there and nothing lies over it. */
  press(role: keyof typeof SELECTORS, name: RegExp): Promise<void>;
  /** Types over what the field at hand holds. */
  typeOver(text: string): Promise<void>;
  /** Waits until an expression of the page is true. */
  until(what: string, expression: string): Promise<void>;
}

export function userOf(browser: DrivenBrowser): User {
  const until = async (what: string, expression: string): Promise<void> => {
    for (let turn = 0; turn < PATIENCE * 5; turn += 1) {
      if ((await browser.evaluate(expression)) === true) return;
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
    throw new Error(`${browser.name}: ${what} did not come about in ${PATIENCE} seconds.`);
  };
  const keys = (actions: readonly InputAction[]): Promise<void> =>
    browser.act({ type: 'key', id: 'keys', actions });
  const typed = (text: string): InputAction[] =>
    [...text].flatMap((value): InputAction[] => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
  return {
    until,
    async press(role, name) {
      const find = `(${FIND})(${JSON.stringify(SELECTORS[role])}, ${JSON.stringify(name.source)})`;
      await until(`${role} ${name.source}`, `(${find})?.hit === true`);
      const place = await browser.evaluate(find);
      const at = (axis: 'x' | 'y'): number =>
        typeof place === 'object' && place !== null ? Number(Reflect.get(place, axis)) : 0;
      await browser.act({
        type: 'pointer',
        id: 'mouse',
        actions: [
          { type: 'pointerMove', x: at('x'), y: at('y'), duration: 0, origin: 'viewport' },
          { type: 'pointerDown', button: 0 },
          { type: 'pointerUp', button: 0 },
        ],
      });
    },
    async typeOver(text) {
      await keys([
        { type: 'keyDown', value: KEYS.Control },
        ...typed('a'),
        { type: 'keyUp', value: KEYS.Control },
        ...typed(KEYS.Delete),
      ]);
      await keys(typed(text));
    },
  };
}
