/**
 * MIDI files that other programs wrote, read here and by midi-file 1.2 and @tonejs/midi 2.0 (MIT): multi-track pieces with bass sounds
 * of Freedoom (BSD-3-Clause, github.com/freedoom/freedoom), test files of music21 (BSD-3-Clause) and of AMADS (MIT),
 * and the example that the Standard MIDI File specification prints.
 */
import { Midi } from '@tonejs/midi';
import { type MidiData, parseMidi } from 'midi-file';
import { expect, it } from 'vitest';
import { heardLine } from '../exchange/expected';
import { lineSheetOf, readBack, refusal } from '../exchange/read-back';
import { describeWithReferenceData } from '../support/reference-data';

const ROOT = 'midi';

/** Sentences about notes that are left out on purpose. */
const OTHER_NOTES = /sound together|no room|at most/;

/** General MIDI programmes of the parts that hold the bass, from 0 (the data's own list, MANIFEST.tsv). */
const BASSES = [32, 33, 34, 35, 36, 37, 38, 39];

/** The keys that are struck on each channel of a track, in order; the lower first of those struck together. */
function strikes(track: MidiData['tracks'][number]): readonly string[] {
  const channels = new Map<number, { readonly at: number; readonly key: number }[]>();
  let now = 0;
  for (const event of track) {
    now += event.deltaTime;
    if (event.type !== 'noteOn' || event.velocity === 0) continue;
    channels.set(event.channel, [...(channels.get(event.channel) ?? []), { at: now, key: event.noteNumber }]);
  }
  return [...channels.values()].map((notes) =>
    notes
      .sort((one, other) => one.at - other.at || one.key - other.key)
      .map(({ key }) => key)
      .join(),
  );
}

/** A note that ends as it begins is none here. */
const WITH_EMPTY_NOTES = ['test16.mid'];

describeWithReferenceData('MIDI files of others', 45, (_, data) => {
  const files = ['freedoom', 'primitives', 'keys-tempo', '.'].flatMap((folder) =>
    data
      .names(`${ROOT}/${folder}`)
      .filter((name) => name.endsWith('.mid'))
      .map((name) => `${ROOT}/${folder}/${name}`),
  );

  it('are read, or refused with a sentence that is meant for them', () => {
    const refused = files.flatMap((path) => refusal(data.bytes(path)) ?? []);
    expect(refused.filter((sentence) => !/in a metre that a lesson cannot have/.test(sentence))).toEqual([]);
    process.stdout.write(`${files.length - refused.length} of ${files.length} MIDI files are read.\n`);
  });

  it.each(files.filter((path) => path.includes('freedoom')))('%s gives a part with a bass sound', (path) => {
    const { lesson } = readBack(data.bytes(path));
    const own = new Set(heardLine(lineSheetOf(lesson)).map(({ midi }) => midi));
    const basses = new Midi(data.bytes(path)).tracks.filter(({ instrument }) =>
      BASSES.includes(instrument.number),
    );
    const heard = basses.map(({ notes }) => new Set(notes.map(({ midi }) => midi)));
    expect(heard.some((pitches) => [...own].every((midi) => pitches.has(midi)))).toBe(true);
  });

  let compared = 0;
  it.each(
    files.filter(
      (path) => refusal(data.bytes(path)) === null && !WITH_EMPTY_NOTES.some((name) => path.endsWith(name)),
    ),
  )('%s has the notes it has for another reader', (path) => {
    const bytes = data.bytes(path);
    const others = parseMidi(bytes).tracks.flatMap(strikes);
    for (const part of readBack(bytes).parts.all) {
      const { lesson, sentences } = readBack(bytes, part.id);
      if (sentences.some((sentence) => OTHER_NOTES.test(sentence))) continue;
      compared += 1;
      const own = heardLine(lineSheetOf(lesson)).map(({ midi }) => midi);
      expect(others).toContain(own.join());
    }
  });

  it('are compared note by note for the most part', () => {
    process.stdout.write(`${compared} parts of MIDI files are compared note by note.\n`);
    expect(compared).toBeGreaterThan(30);
  });
});
