/** The main job in the browsers of students that are no Chromium: from a chart to a line that is seen, heard and printed. */
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { ASK_ENCODERS, FEATURES, lackedIn } from '../support/other-browsers/features';
import { startFirefox } from '../support/other-browsers/firefox';
import type { DrivenBrowser, Skipped } from '../support/other-browsers/types';
import { type User, userOf } from '../support/other-browsers/user';
import { startWebKit } from '../support/other-browsers/webkit';
import { tell } from './minutes';

const BROWSERS: readonly (readonly [string, () => Promise<DrivenBrowser | Skipped>])[] = [
  ['Firefox', startFirefox],
  ['WebKitGTK', startWebKit],
];

/** A folder for pictures of what was seen; none is taken where it names none. */
const PICTURES = process.env.OUT ?? '';

const SCORE = 'figure[aria-label="Score"], figure.score';
const PLAYBACK = `[...document.querySelectorAll('[role="status"]')].map((each) => each.textContent ?? '')`;
const says = (pattern: RegExp): string => `${PLAYBACK}.some((text) => ${String(pattern)}.test(text))`;
/** The playhead stands in a later place than at the last look. */
const MOVES = `(() => {
  const head = document.querySelector('.playhead--on');
  const now = head === null ? null : head.getBoundingClientRect().left + 10000 * Number(head.dataset.playhead);
  const before = window.placeBefore ?? null;
  if (now !== null) window.placeBefore = now;
  return now !== null && before !== null && now > before;
})()`;

const GUIDE = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');

/** Whether the machine has anything to sound on: without it some browsers do not begin to play. */
const SOUNDS =
  process.platform !== 'linux' || existsSync('/dev/snd') || (process.env.PULSE_SERVER ?? '') !== '';
const KEPT_SILENT = `document.body.textContent.includes('The browser kept the page silent')`;

/** Plays until the playhead has moved on, and stops; false where there is nothing to play on. */
async function plays(browser: DrivenBrowser, user: User): Promise<boolean> {
  await user.press('button', /^Play$/);
  await user.until('an answer to Play', `${says(/^(Playing|Counting)/)} || ${KEPT_SILENT}`);
  if (!SOUNDS && (await browser.evaluate(KEPT_SILENT)) === true) {
    tell(`${browser.name}: skipped that it plays. This machine has no sound device, and the page says so.`);
    return false;
  }
  await user.until('the line is played', says(/^Playing bar [2-9]/));
  await user.until('the playhead moves', MOVES);
  await user.press('button', /^Stop$/);
  await user.until('the line stops', says(/^Stopped/));
  return true;
}

describe.each(BROWSERS)('%s', (name, startBrowser) => {
  test('a chart becomes a line that is drawn, played, printed, practised and found again', async () => {
    const browser = await startBrowser();
    if ('skipped' in browser) {
      tell(`Skipped. ${browser.skipped}`);
      return;
    }
    const picture = async (what: string): Promise<void> => {
      if (PICTURES === '') return;
      await mkdir(PICTURES, { recursive: true });
      await writeFile(join(PICTURES, `${name} ${what}.png`), await browser.picture());
    };
    try {
      await mainJob(browser, picture);
    } catch (problem) {
      await picture('fault').catch(() => undefined);
      throw problem;
    } finally {
      await browser.close();
    }
  });
});

const BAR_2 = `[...document.querySelectorAll('button')].some((each) => /^Bar 2, Dm7/.test(each.getAttribute('aria-label') ?? ''))`;

async function mainJob(browser: DrivenBrowser, picture: (what: string) => Promise<void>): Promise<void> {
  const { app } = inject('site');
  const user = userOf(browser);
  const lacking: string[] = [];
  await browser.open(app, { width: 1280, height: 900 });
  await browser.evaluate(ASK_ENCODERS);
  await user.until('what is encoded', 'window.encodes.opus === true || !window.AudioEncoder');
  for (const { name, there } of FEATURES) if ((await browser.evaluate(there)) !== true) lacking.push(name);
  tell(`${browser.name} lacks: ${lacking.join(', ') || 'nothing that is asked for'}.`);
  const [brand = ''] = browser.name.split(' ');
  const told = lackedIn(GUIDE).filter(({ browsers }) => browsers.includes(brand));
  expect(lacking.filter((name) => !told.some(({ words }) => words.includes(name)))).toEqual([]);

  await user.press('textbox', /^Chord chart$/);
  await user.typeOver('| Am | Dm7 | E7 | Am |');
  await user.press('button', /^Compose line$/);
  await user.until('the bars of the chart', BAR_2);
  await user.until('the line is composed', `document.querySelector('figure[aria-busy="true"]') === null`);
  await user.until(
    'the score is drawn',
    `document.querySelectorAll('${SCORE.replaceAll('"', '\\"')}')[0]?.querySelector('svg path') !== null`,
  );
  await picture('line');
  // Round and round: a machine that looks seldom still finds it playing.
  await user.press('switch', /^Loop$/);
  tell(`${browser.name}: the line is seen${(await plays(browser, user)) ? ' and heard' : ''}.`);

  await user.press('button', /^Bar 2, Dm7/);
  await user.until('ideas for bar 2', `document.querySelector('[aria-label="Ideas for bar 2"]') !== null`);
  await picture('ideas');

  await user.press('button', /^Handout$/);
  await user.until(
    'the handout',
    `document.querySelector('.preview[aria-busy="false"] svg') !== null && document.querySelector('.preview').textContent.includes('What to practise')`,
  );
  await picture('handout');
  tell(`${browser.name}: the handout is laid out.`);
  await user.press('button', /^Back to the line$/);

  await user.press('button', /^Export$/);
  await user.press('menuitem', /^Look at the practice page/);
  await user.until('the practice page', `document.querySelector('.practice, .practice__explained') !== null`);
  await user.until('its score', `document.querySelector('figure svg path') !== null`);
  await picture('practice');
  await plays(browser, user);
  tell(`${browser.name}: it is practised.`);

  await browser.open(app, { width: 420, height: 844 });
  await user.until('the bars are there again', BAR_2);
  await user.until('the score again', `document.querySelector('figure svg path') !== null`);
  await picture('telephone');
  expect(await browser.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
  expect(browser.complaints).toEqual([]);
}
