/**
 * Files that other programs wrote, read here and by Verovio (RISM Digital Center, LGPL-3.0, version 6.3): lead sheets
 * of OpenEWLD (github.com/00sapo/OpenEWLD, doi 10.5281/zenodo.4332855), songs of OpenScore (CC0, by way of
 * github.com/MarkGotham/When-in-Rome), and the examples of the W3C's MusicXML 4.0 documentation.
 */
import { Midi } from '@tonejs/midi';
import { strFromU8 } from 'fflate';
import { enableLog, LOG_OFF, VerovioToolkit } from 'verovio/esm';
import createVerovioModule from 'verovio/wasm';
import { beforeAll, expect, it } from 'vitest';
import { unpackMxl } from '../../src/core/exchange/musicxml/unpack-mxl';
import { heardLine } from '../exchange/expected';
import { lineSheetOf, readBack, refusal } from '../exchange/read-back';
import { describeWithReferenceData } from '../support/reference-data';

const ROOT = 'musicxml-files';

/** Sentences about notes that this reader leaves out or changes on purpose: such files sound otherwise by intent. */
const OTHER_NOTES =
  /grace|cue|sound together|One voice|cut off|Jumps|without a repeat|never ends|no room|bracket stops|no ending is named/;

/** Verovio 6.3 goes on with the first transposition where an instrument changes; by the standard the new one holds. */
const HEARD_OTHERWISE = [
  'instrument-change-element.musicxml',
  // The pickup stands within the repeat and the last bar has all its beats: Verovio plays the pickup again as a short
  // bar between two whole ones, here the beat goes on (common practice, no source). One note fewer a repeat.
  'Yankee_Doodle_Boy.musicxml',
  'Reichardt_Louise_Zw_lf_Ges_nge_07_Volkslied.mxl',
];

let reader: VerovioToolkit;
beforeAll(async () => {
  const library = await createVerovioModule();
  enableLog(LOG_OFF, library);
  reader = new VerovioToolkit(library);
});

describeWithReferenceData('MusicXML files of others', 70, (_, data) => {
  const files = ['openewld', 'lieder', 'w3c', 'w3c/fragments'].flatMap((folder) =>
    data
      .names(`${ROOT}/${folder}`)
      .filter((name) => /\.(xml|musicxml|mxl)$/.test(name))
      .map((name) => `${ROOT}/${folder}/${name}`),
  );
  const scores = files.filter((path) => refusal(data.bytes(path)) === null);

  it('are read, or refused with a sentence that is meant for them', () => {
    const refused = files.flatMap((path) => refusal(data.bytes(path)) ?? []);
    // Fragments, a list of measures, percussion, and a score without a part.
    const meant = /not a MusicXML score|score-timewise|no part with notes/;
    expect(refused.filter((sentence) => !meant.test(sentence))).toEqual([]);
    expect(scores.filter((path) => !path.includes('/w3c/'))).toHaveLength(
      files.filter((path) => !path.includes('/w3c/')).length,
    );
    process.stdout.write(
      `${scores.length} of ${files.length} MusicXML files are scores with notes and read.\n`,
    );
  });

  let compared = 0;
  it.each(scores.filter((path) => !HEARD_OTHERWISE.some((name) => path.endsWith(name))))(
    '%s sounds as Verovio hears it',
    (path) => {
      const bytes = data.bytes(path);
      const xml = path.endsWith('.mxl') ? unpackMxl(bytes) : { ok: true as const, value: strFromU8(bytes) };
      if (!xml.ok) throw new Error(xml.problem.message);
      expect(Boolean(reader.loadData(xml.value))).toBe(true);
      const tracks = new Midi(Buffer.from(reader.renderToMIDI(), 'base64')).tracks.filter(
        ({ notes }) => notes.length > 0,
      );
      for (const part of readBack(bytes).parts.all) {
        const read = readBack(bytes, part.id);
        const others = tracks.map(({ notes }) =>
          [...notes].sort((one, other) => one.ticks - other.ticks).map(({ midi }) => midi),
        );
        const own = heardLine(lineSheetOf(read.lesson)).map(({ midi }) => midi);
        if (read.sentences.some((sentence) => OTHER_NOTES.test(sentence))) continue;
        compared += 1;
        expect(others.map(String)).toContain(String(own));
      }
    },
  );

  it('are compared note by note for the most part', () => {
    process.stdout.write(`${compared} parts are compared note by note.\n`);
    expect(compared).toBeGreaterThan(30);
  });
});
