/**
 * What an independent reader finds in the exported MusicXML: Verovio (RISM Digital Center, LGPL-3.0, version 6.3),
 * which turns it into MEI and, with the repeats unfolded, into MIDI.
 */
import { Midi } from '@tonejs/midi';
import { enableLog, LOG_OFF, VerovioToolkit } from 'verovio/esm';
import createVerovioModule from 'verovio/wasm';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, type LineSheet, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { heardLine } from '../exchange/expected';
import { randomSheets } from '../exchange/random-sheets';
import { waySheets } from '../exchange/way-sheets';

let reader: VerovioToolkit;
beforeAll(async () => {
  const library = await createVerovioModule();
  enableLog(LOG_OFF, library);
  reader = new VerovioToolkit(library);
});

const sheets: readonly LineSheet[] = [
  ...SAMPLE_TITLES.flatMap((_, index) => deriveSheets(sampleLesson(index, 'sample'))).flatMap((sheet) =>
    sheet.kind === 'line' ? [sheet] : [],
  ),
  ...randomSheets(30),
];

/** What it reads in each of the sheets whose way leads back and on. */
const WAYS: readonly (readonly string[])[] = [
  ['segno', 'tocoda', 'dalsegno', 'coda'],
  ['fine', 'dacapo'],
  ['fine', 'dacapo'],
  ['segno', 'tocoda', 'dalsegno', 'coda'],
];

interface Reading {
  readonly name: string;
  readonly sheet: LineSheet;
  readonly mei: () => string;
  readonly heard: () => Midi;
}

const cases: readonly Reading[] = sheets.map((sheet, index) => {
  let read: { readonly mei: string; readonly heard: Midi } | null = null;
  const reading = (): { readonly mei: string; readonly heard: Midi } => {
    if (read !== null) return read;
    expect(Boolean(reader.loadData(writeMusicXml(sheet, 'Lesson')))).toBe(true);
    read = { mei: reader.getMEI({}), heard: new Midi(Buffer.from(reader.renderToMIDI(), 'base64')) };
    return read;
  };
  return { name: `line ${index}`, sheet, mei: () => reading().mei, heard: () => reading().heard };
});

/** Attributes of every element of a name, in the order of the document. */
const elements = (xml: string, name: string): readonly ReadonlyMap<string, string>[] =>
  [...xml.matchAll(new RegExp(`<${name}( [^>]*?)?/?>`, 'g'))].map(
    ([, attributes = '']) =>
      new Map(
        [...attributes.matchAll(/([\w.:-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
      ),
  );

/** Its MIDI counts 120 ticks a quarter, rounds thirds down, and lets every note go a tick early. */
const TICK = 8;

/** Verovio 6.3 strikes a note again that is tied into an ending which is played more than once. */
const tiedIntoSharedEnding = ({ bars }: LineSheet): boolean =>
  bars.some(
    (bar, index) =>
      (bar.written.ending?.length ?? 0) > 1 && bars[index - 1]?.notes.at(-1)?.note.tiedOn === true,
  );

describe('Verovio hears the line as it is written, repeats unfolded', () => {
  it.each(cases.filter(({ sheet }) => !tiedIntoSharedEnding(sheet)))('$name', ({ sheet, heard: read }) => {
    const track = read().tracks.find(({ name }) => name === 'Bass');
    const expected = heardLine(sheet);
    const heard = [...(track?.notes ?? [])].sort((one, other) => one.ticks - other.ticks);
    expect(heard.map(({ midi: pitch }) => pitch)).toEqual(expected.map(({ midi: pitch }) => pitch));
    const wrong = expected.filter((note, index) => {
      const found = heard[index];
      if (!found) return true;
      const startsOff = Math.abs(found.ticks * TICK - note.start) > TICK;
      const endsOff = Math.abs((found.durationTicks + 1) * TICK - note.duration) > TICK;
      return startsOff || (endsOff && !note.staccato && !note.tiePassedBy);
    });
    expect(wrong).toEqual([]);
  });
});

describe('Verovio reads where the way leads', () => {
  const kinds = (mei: string): readonly string[] =>
    [...mei.matchAll(/<(?:repeatMark|dir) [^>]*(?:func|type)="(\w+)"/g)].map(([, kind = '']) => kind);
  it.each(waySheets.map((sheet, index) => ({ sheet, kinds: WAYS[index], name: `way ${index}` })))(
    '$name: $kinds',
    ({ sheet, kinds: expected }) => {
      expect(Boolean(reader.loadData(writeMusicXml(sheet, 'Lesson')))).toBe(true);
      expect(kinds(reader.getMEI({}))).toEqual(expected);
    },
  );
});

describe('Verovio reads the places of the tab', () => {
  it.each(cases)('$name', ({ sheet, mei }) => {
    const places = elements(mei(), 'note')
      .filter((note) => note.has('tab.fret'))
      .map((note) => `${note.get('tab.course')}/${note.get('tab.fret')}`);
    const struck = sheet.bars.flatMap((bar) =>
      bar.notes.flatMap(({ fingered }) => (fingered ? [`${fingered.string}/${fingered.fret}`] : [])),
    );
    expect(withoutRepetition(places)).toEqual(withoutRepetition(struck));
  });
});

/** A note written in several tied pieces has its place at each of them. */
const withoutRepetition = (places: readonly string[]): readonly string[] =>
  places.filter((place, index) => place !== places[index - 1]);

describe('Verovio reads chord symbols, sections and repeats', () => {
  it.each(cases)('$name', ({ sheet, mei: read }) => {
    const mei = read();
    const symbols = sheet.bars.flatMap((bar) =>
      bar.written.spans.flatMap(({ harmony }) =>
        harmony.kind === 'unknown' ? [] : [harmony.kind === 'chord' ? harmony.chord.symbol : 'C'],
      ),
    );
    const found = [...mei.matchAll(/<harm [^>]*>([^<]*)/g)].map(([, text = '']) => text);
    // It adds the degrees in brackets, though they are marked as not to be printed, and names the root of N.C.,
    // which by the standard has no meaning.
    expect(found.map((text, index) => text.slice(0, symbols[index]?.length))).toEqual(symbols);
    const named = sheet.chart.sections.filter((section) => section.name !== null && section.length > 0);
    expect(elements(mei, 'reh')).toHaveLength(named.length);
    expect(elements(mei, 'measure')).toHaveLength(sheet.bars.length);
    const ends = elements(mei, 'measure').filter((measure) =>
      /^rpt(end|both)$/.test(measure.get('right') ?? ''),
    );
    expect(ends).toHaveLength(sheet.bars.filter((bar) => bar.written.repeatEnd !== null).length);
  });
});
