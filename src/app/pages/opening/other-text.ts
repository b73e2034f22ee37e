/** A line of tab: a string's name, perhaps a bar line, and dashes. */
const TAB_LINE = /^[A-Ga-gHh][#b♯♭]?\s{0,4}[|:]?-{2}/;
const NOT_LESSON = 'Nothing was changed.';
const READ_HERE = 'Open reads lesson files, practice pages, MusicXML, MIDI and text tab.';

/** Whether a text begins as a page does: our own practice page holds its lesson. */
export const isPage = (text: string): boolean => /^\s*<(?:!doctype html|html)/i.test(text);

/**
 * Why a file that holds no lesson is not opened, by what it seems to be: what a teacher may well have at hand, and what
 * can be done with it instead.
 */
export function whyNoLesson(bytes: Uint8Array): string {
  const text = new TextDecoder().decode(bytes.subarray(0, 20_000));
  if (text.startsWith('%PDF')) {
    return `This is a PDF: it shows a sheet but does not say its notes. ${READ_HERE} ${NOT_LESSON}`;
  }
  if (isPage(text)) {
    return `This page holds no lesson: it is no practice page of Ground Bass. ${READ_HERE} ${NOT_LESSON}`;
  }
  if (text.includes('\u0000') || text.includes('\uFFFD')) {
    return `This file is neither text nor music that can be read here. ${READ_HERE} ${NOT_LESSON}`;
  }
  if (text.split('\n').some((line) => TAB_LINE.test(line.trimStart()))) {
    return `This is tab as text, but no line of it has four to six strings one under the other, so it is not read. ${NOT_LESSON}`;
  }
  if (text.trimStart().startsWith('{')) {
    return `This file begins like a lesson file, but is cut off or damaged, so it cannot be read. ${NOT_LESSON}`;
  }
  return text.trim() === ''
    ? `This file is empty. ${NOT_LESSON}`
    : `This is text and no lesson. If it holds chords, copy them into the chord chart. ${READ_HERE} ${NOT_LESSON}`;
}
