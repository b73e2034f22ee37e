import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { lineComposed, type OpenPage, openApp } from '../support/browser';

const WIDTHS = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

/** Opens the app and waits until the sample's score is drawn. */
async function openDrawn(options: Parameters<typeof openApp>[0] = {}): Promise<OpenPage> {
  const opened = await openApp(options);
  await opened.page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  return opened;
}

/** Where the note pad is folded away, opens it. */
async function withPad(page: Page): Promise<void> {
  const opener = button(page, 'Chart and aims');
  if ((await opener.count()) > 0 && (await opener.getAttribute('aria-expanded')) === 'false')
    await opener.click();
}

async function withoutPad(page: Page): Promise<void> {
  const back = button(page, 'Back to the sheet');
  if ((await back.count()) > 0) await back.click();
}

const barNames = async (page: Page): Promise<string[]> =>
  page
    .getByRole('figure', { name: 'Score', exact: true })
    .getByRole('button', { name: /^Bar \d/ })
    .evaluateAll((bars) => bars.map((bar) => bar.getAttribute('aria-label') ?? ''));

/** Degrees and beats of a bar; where the hand plays them depends on the bars around it. */
const notesOf = async (page: Page, bar: string): Promise<string[]> =>
  ((await button(page, bar).getAttribute('aria-description')) ?? '')
    .split('; ')
    .map((note) => note.replace(/,.*/, ''));

const ideasFor = (page: Page, bar: number): Locator =>
  page.getByRole('list', { name: `Ideas for bar ${bar}`, exact: true });

const takeButtons = (ideas: Locator): Locator =>
  ideas.getByRole('button', { name: /^(chord tones|scale steps|space|octave|approach note|anticipation)/i });

const saved = (page: Page) => page.getByText(/^saved/).waitFor();

describe.each(WIDTHS)('the writing page at $width pixels', ({ width, height }) => {
  test('leads from a typed chart to a line that is read, chosen, heard and handed out', async () => {
    const { page, expectClean } = await openDrawn({ width, height });
    await withPad(page);
    await page
      .getByRole('textbox', { name: 'Chord chart' })
      .fill('| Gm | Cm | D7 | Gm |\n| Eb | F7 | Bb D7 | Gm |');
    await page.getByRole('combobox', { name: 'Feel' }).selectOption({ label: 'One drop' });
    await page.getByRole('spinbutton', { name: 'Tempo', exact: true }).fill('132');
    await button(page, 'Compose line').click();
    await withoutPad(page);
    await lineComposed(page);
    await page
      .getByText(/G minor: two flats \(B♭, E♭\)/)
      .first()
      .waitFor();
    await expect
      .poll(() => barNames(page))
      .toEqual([
        'Bar 1, Gm',
        'Bar 2, Cm',
        'Bar 3, D7',
        'Bar 4, Gm',
        'Bar 5, E♭',
        'Bar 6, F7',
        'Bar 7, B♭ D7',
        'Bar 8, Gm',
      ]);

    await button(page, 'Bar 2, Cm').click();
    expect(await button(page, 'Bar 2, Cm').getAttribute('aria-pressed')).toBe('true');
    const takes = takeButtons(ideasFor(page, 2));
    await expect.poll(() => takes.count()).toBeGreaterThanOrEqual(6);
    const before = await notesOf(page, 'Bar 2, Cm');
    await takes.and(page.locator('[aria-pressed="false"]')).first().click();
    await expect.poll(() => notesOf(page, 'Bar 2, Cm')).not.toEqual(before);
    const taken = await notesOf(page, 'Bar 2, Cm');
    await page.getByRole('checkbox', { name: 'Keep this bar' }).check();
    await page.keyboard.press('Escape');
    await expect.poll(() => ideasFor(page, 2).count()).toBe(0);

    await withPad(page);
    await button(page, 'Another take').click();
    await withoutPad(page);
    await lineComposed(page);
    await expect.poll(() => notesOf(page, 'Bar 2, Cm')).toEqual(taken);

    const status = page.getByRole('status', { name: 'Playback' });
    expect(await status.textContent()).toBe('Stopped');
    await button(page, 'Play').click();
    await expect.poll(() => status.textContent(), { timeout: 30_000 }).toMatch(/^Playing bar \d+$/);
    await button(page, 'Stop').click();
    expect(await status.textContent()).toBe('Stopped');

    await button(page, 'Export').click();
    const download = page.waitForEvent('download');
    await page.getByRole('menuitem', { name: 'Handout (PDF)', exact: true }).click();
    const file = await (await download).path();
    const pdf = await readFile(file);
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect((await download).suggestedFilename()).toBe('ferry-queue-week-3-g-minor-132-bpm.pdf');
    expectClean();
  });

  test('never scrolls sideways', async () => {
    const { page } = await openDrawn({ width, height });
    await button(page, /^Bar 3, /).click();
    await ideasFor(page, 3).waitFor();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
  });
});

test('what was set stands in its field at once, also while the sheet is behind with a typed chart', async () => {
  const { page } = await openDrawn();
  await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
  // Within one task, so that nothing of the sheet is rendered between typing and choosing.
  const shown = await page.evaluate(async () => {
    const put = (field: Element | null, text: string, event: string) => {
      if (field === null) throw new Error('The field is there.');
      Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value')?.set?.call(field, text);
      field.dispatchEvent(new Event(event, { bubbles: true }));
    };
    const [feel, tempo] = [
      document.querySelector<HTMLSelectElement>('#note-pad select'),
      document.querySelector<HTMLInputElement>('#note-pad input[type="number"]'),
    ];
    put(
      document.querySelector('#note-pad textarea'),
      '| Gm | Cm | D7 | Gm |\n| Eb | F7 | Bb D7 | Gm |',
      'input',
    );
    put(feel, 'one-drop', 'change');
    await Promise.resolve();
    const felt = [feel?.value, tempo?.value];
    put(tempo, '132', 'input');
    await Promise.resolve();
    return [...felt, tempo?.value];
  });
  expect(shown).toEqual(['one-drop', '138', '132']);
});

describe('the document', () => {
  test('is there again after a reload, as it was', async () => {
    const { page } = await openDrawn();
    await page.getByRole('textbox', { name: 'Chord chart' }).fill('| Am | Dm | E7 | Am |');
    await page.getByRole('textbox', { name: 'Lesson title' }).fill('Thursday, first lesson');
    await button(page, 'Compose line').click();
    await lineComposed(page);
    await page.getByRole('switch', { name: 'Loop' }).click();
    await saved(page);
    const description = await button(page, 'Bar 2, Dm').getAttribute('aria-description');
    await page.reload();
    await button(page, 'Bar 2, Dm').waitFor();
    expect(await page.getByRole('textbox', { name: 'Lesson title' }).inputValue()).toBe(
      'Thursday, first lesson',
    );
    expect(await page.getByRole('textbox', { name: 'Chord chart' }).inputValue()).toBe(
      '| Am | Dm | E7 | Am |',
    );
    expect(await page.getByRole('switch', { name: 'Loop' }).getAttribute('aria-checked')).toBe('true');
    expect(await button(page, 'Bar 2, Dm').getAttribute('aria-description')).toBe(description);
  });

  test('goes back and forth with Undo and Redo, by button and by key', async () => {
    const { page } = await openDrawn();
    const chart = page.getByRole('textbox', { name: 'Chord chart' });
    const first = await chart.inputValue();
    expect(await button(page, 'Undo').count()).toBe(0);
    await chart.fill('| C | F | G7 | C |');
    await page.getByRole('combobox', { name: 'Level' }).selectOption({ index: 0 });
    await button(page, 'Undo').click();
    await button(page, 'Undo').click();
    expect(await chart.inputValue()).toBe(first);
    expect(await button(page, 'Undo').count()).toBe(0);
    await button(page, 'Redo').click();
    expect(await chart.inputValue()).toBe('| C | F | G7 | C |');
    await chart.press('Control+z');
    expect(await chart.inputValue()).toBe(first);
    await chart.press('Control+Shift+z');
    expect(await chart.inputValue()).toBe('| C | F | G7 | C |');
  });

  test('is saved as a file that opens again', async () => {
    const { page } = await openDrawn();
    await page.getByRole('textbox', { name: 'Lesson title' }).fill('To be sent');
    await button(page, 'Export').click();
    const download = page.waitForEvent('download');
    await page.getByRole('menuitem', { name: 'Lesson file' }).click();
    const text = await readFile(await (await download).path());
    await button(page, 'Lessons').click();
    await page.getByRole('menuitem', { name: 'New lesson' }).click();
    await expect.poll(() => page.getByRole('textbox', { name: 'Chord chart' }).inputValue()).toBe('');
    await openFile(page, 'to-be-sent.lesson.json', text);
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue())
      .toBe('To be sent');
    await button(page, /^Bar 1, F$/).waitFor();
  });

  test.each([
    ['a photograph', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]), /neither text nor music/],
    [
      'another program’s file',
      Buffer.from('{"format":"something else","version":1}'),
      /not a lesson of Ground Bass/,
    ],
    [
      'a lesson of a newer version',
      Buffer.from('{"format":"ground-bass-lesson","version":999}'),
      /saved by a newer Ground Bass/,
    ],
    ['a damaged lesson', Buffer.from('{"format":"ground-bass-lesson","version":1,"title":5}'), /is damaged/],
  ])('is left alone by %s, with a sentence', async (_what, content, sentence) => {
    const { page, expectClean } = await openDrawn();
    const before = await page.getByRole('textbox', { name: 'Chord chart' }).inputValue();
    await openFile(page, 'chosen.json', content);
    await page.getByRole('alert').filter({ hasText: sentence }).waitFor();
    expect(await page.getByRole('alert').first().textContent()).toContain('Nothing was changed');
    expect(await page.getByRole('textbox', { name: 'Chord chart' }).inputValue()).toBe(before);
    expectClean();
  });
});

async function openFile(page: Page, name: string, buffer: Buffer): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await button(page, 'Open').click();
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer });
}

describe('what is handed out', () => {
  test.each([
    ['MusicXML', 'ferry-queue-week-3-f-major-126-bpm.musicxml', '<?xml'],
    ['MusicXML, compressed', 'ferry-queue-week-3-f-major-126-bpm.mxl', 'PK'],
    ['MIDI', 'ferry-queue-week-3-f-major-126-bpm.mid', 'MThd'],
    ['Text tab', 'ferry-queue-week-3-f-major-126-bpm.txt', 'Ferry queue'],
    ['Audio (WAV)', 'ferry-queue-week-3-f-major-126-bpm.wav', 'RIFF'],
  ])('%s is a file with a telling name', async (item, name, beginning) => {
    const { page, expectClean } = await openDrawn();
    await button(page, 'Export').click();
    const download = page.waitForEvent('download', { timeout: 60_000 });
    await page.getByRole('menuitem', { name: item, exact: true }).click();
    expect((await download).suggestedFilename()).toBe(name);
    const content = await readFile(await (await download).path());
    expect(content.subarray(0, 200).toString('latin1')).toContain(beginning);
    expectClean();
  });

  test('a browser that does not copy gets a sentence that names another way', async () => {
    const { page, expectClean } = await openDrawn();
    await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
    await button(page, 'Export').click();
    await page.getByRole('menuitem', { name: 'Copy a link' }).click();
    await page.getByText(/does not let the page copy the link\. Send the lesson file/).waitFor();
    expectClean();
  });

  test('a copied link opens the lesson as a copy, and only once', async () => {
    const permissions = ['clipboard-read', 'clipboard-write'];
    const { page, address } = await openDrawn({ context: { permissions } });
    await page.getByRole('textbox', { name: 'Lesson title' }).fill('By link');
    await button(page, 'Export').click();
    await page.getByRole('menuitem', { name: 'Copy a link' }).click();
    await page.getByText('The link is copied.').waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link.startsWith(`${address}#lesson=`)).toBe(true);
    const { page: other, expectClean } = await openDrawn({ path: link.slice(address.length) });
    expect(await other.getByRole('textbox', { name: 'Lesson title' }).inputValue()).toBe('By link');
    expect(new URL(other.url()).hash).toBe('');
    await other.getByRole('textbox', { name: 'Lesson title' }).fill('My own copy');
    await saved(other);
    await other.reload();
    await expect
      .poll(() => other.getByRole('textbox', { name: 'Lesson title' }).inputValue())
      .toBe('My own copy');
    expectClean();
  });

  test('a broken link gets a sentence and changes nothing', async () => {
    const { page, expectClean } = await openDrawn({ path: '#lesson=AAAA' });
    await page.getByRole('alert').filter({ hasText: /link/ }).waitFor();
    expect(await page.getByRole('textbox', { name: 'Lesson title' }).inputValue()).toBe(
      'Ferry queue, week 3',
    );
    expectClean();
  });
});

describe('the sheet', () => {
  test('takes, copies, orders and removes pieces', async () => {
    const { page } = await openDrawn();
    const names = () =>
      page
        .getByRole('textbox', { name: /^Name of piece/ })
        .evaluateAll((fields) =>
          fields.map((field) => (field instanceof HTMLInputElement ? field.value : '')),
        );
    await expect.poll(names).toEqual(['Ferry queue', 'Your own line']);
    await button(page, 'Copy or move Ferry queue').click();
    await page.getByRole('menuitem', { name: 'Copy' }).click();
    await expect.poll(names).toEqual(['Ferry queue', 'Ferry queue 2', 'Your own line']);
    await button(page, 'Copy or move Ferry queue 2').click();
    await page.getByRole('menuitem', { name: 'Move down' }).click();
    await expect.poll(names).toEqual(['Ferry queue', 'Your own line', 'Ferry queue 2']);
    await button(page, 'blank bars').click();
    await expect.poll(names).toEqual(['Ferry queue', 'Your own line', 'Ferry queue 2', 'Your own line 2']);
    await button(page, 'Copy or move Your own line').click();
    await page.getByRole('menuitem', { name: 'Remove from the sheet' }).click();
    await expect.poll(names).toEqual(['Ferry queue', 'Ferry queue 2', 'Your own line 2']);
    await button(page, 'Work on Ferry queue 2').click();
    await page.getByRole('textbox', { name: 'Chord chart' }).fill('| C | G7 |');
    await expect.poll(() => barNames(page)).toEqual(['Bar 1, C', 'Bar 2, G7']);
  });

  test('shows on the neck where the chosen bar is played', async () => {
    const { page, expectClean } = await openDrawn();
    await button(page, 'Fretboard').click();
    const neck = page.getByRole('region', { name: 'Fretboard' });
    await neck.getByText('Bar 1, F').waitFor();
    await button(page, 'Bar 4, C7').click();
    await neck.getByText('Bar 4, C7').waitFor();
    await expect.poll(() => neck.getByRole('img').getAttribute('aria-label')).toContain('Bar 4, C7');
    await button(page, 'Fretboard').click();
    expect(await neck.count()).toBe(0);
    expectClean();
  });

  test('lists what cannot be read in the chart and keeps the rest', async () => {
    const { page } = await openDrawn();
    await page.getByRole('textbox', { name: 'Chord chart' }).fill('| F | Qx | Gm | C7 |');
    const problems = page.getByRole('list', { name: 'Chart problems' });
    await problems.getByText(/Line 1, column 7/).waitFor();
    await expect.poll(async () => (await barNames(page)).length).toBe(4);
    await problems.getByRole('button').first().click();
    const chosen = await page
      .getByRole('textbox', { name: 'Chord chart' })
      .evaluate((field) =>
        field instanceof HTMLTextAreaElement
          ? field.value.slice(field.selectionStart, field.selectionEnd)
          : '',
      );
    expect(chosen).toBe('Qx');
  });

  test('begins with the first idea for another bar, however far one had looked on', async () => {
    const { page, expectClean } = await openDrawn({ width: 390, height: 844 });
    const drawer = page.locator('.drawer');
    await button(page, /^Bar 1, /).click();
    await ideasFor(page, 1).waitFor();
    await drawer.evaluate((element) => element.scrollTo(0, 100));
    expect(await drawer.evaluate(({ scrollTop }) => scrollTop)).toBe(100);
    await button(page, /^Bar 2, /).click();
    await ideasFor(page, 2).waitFor();
    expect(await drawer.evaluate(({ scrollTop }) => scrollTop)).toBe(0);
    expectClean();
  });

  test('tells on one line which bar the ideas are for, on a telephone held sideways too', async () => {
    const { page } = await openDrawn({ width: 844, height: 390 });
    // The pad beside it leaves the sheet half of the width.
    await withPad(page);
    await button(page, /^Bar 1, /).click();
    const title = page.getByRole('heading', { name: /^Ideas for bar 1 / });
    await ideasFor(page, 1).waitFor();
    const { height, line } = await title.evaluate((element) => ({
      height: element.getBoundingClientRect().height,
      line: Number.parseFloat(getComputedStyle(element).lineHeight),
    }));
    expect(height).toBeLessThan(1.5 * line);
  });

  test('shows typed text as text, never as markup', async () => {
    const { page, expectClean } = await openDrawn();
    const text = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
    await page.getByRole('textbox', { name: 'Lesson title' }).fill(text);
    await page.getByRole('textbox', { name: 'Name of piece 1' }).fill(text);
    await page.getByRole('textbox', { name: 'Notes for the student' }).fill(text);
    await page.getByRole('textbox', { name: 'Chord chart' }).fill(`| F | ${text} | Gm |\n${text}:\n| C |`);
    await page.getByRole('list', { name: 'Chart problems' }).waitFor();
    await saved(page);
    await page.reload();
    await page.getByRole('textbox', { name: 'Lesson title' }).waitFor();
    await page.waitForTimeout(2500);
    expect(await page.evaluate(() => Reflect.has(window, 'hit'))).toBe(false);
    expectClean();
  });
});
