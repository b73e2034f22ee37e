/**
 * What a second independent reader finds in the exported MusicXML: OpenSheetMusicDisplay 2.1 (BSD-3-Clause), which
 * needs a browser. It reads the staff part's sound, so a written octave too many or too few would show.
 */
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { midiOf, pitchClassOf, sameName } from '../../src/core/base';
import { writeMusicXml } from '../../src/core/exchange';
import { deriveSheets, type LineSheet, SAMPLE_TITLES, sampleLesson } from '../../src/core/lesson';
import { notateBar } from '../../src/core/notation';
import { randomSheets } from '../exchange/random-sheets';
import { openBench } from '../support/browser';

const library = createRequire(import.meta.url).resolve('opensheetmusicdisplay');

/** The few parts of the library's model that are read here. */
interface Reader {
  load(document: string): Promise<unknown>;
  readonly Sheet: {
    readonly SourceMeasures: readonly {
      readonly VerticalSourceStaffEntryContainers: readonly {
        readonly StaffEntries: readonly (
          | {
              readonly ChordContainers: readonly {
                readonly RootPitch?: { getHalfTone(): number };
                readonly BassPitch?: { getHalfTone(): number };
              }[];
              readonly VoiceEntries: readonly {
                readonly Notes: readonly {
                  readonly halfTone: number;
                  readonly Length: { readonly RealValue: number };
                  readonly isRest: () => boolean;
                  readonly fretNumber?: number;
                  readonly stringNumberTab?: number;
                }[];
              }[];
            }
          | undefined
        )[];
      }[];
    }[];
  };
}

interface FoundBar {
  /** `pitch:ticks`, `rest:ticks`, of the staff. */
  readonly staff: readonly string[];
  /** `string/fret`, of the tab. */
  readonly tab: readonly string[];
  /** Pitch classes of root and slash bass of every chord symbol: `2`, `2/6`; `0` for N.C. */
  readonly chords: readonly string[];
}

/** What must be found: every sign of a bar, pitches as the staff part writes them (an octave above the sound). */
const expectedOf = (sheet: LineSheet): readonly FoundBar[] =>
  sheet.bars.map((bar) => {
    const { events } = notateBar(
      bar.notes.map(({ note }) => note),
      bar.written.metre,
    );
    const signs = events.map((event) => ({ event, note: bar.notes[event.note ?? -1] ?? null }));
    return {
      staff: signs.map(({ event, note }) =>
        note === null ? `rest:${event.duration}` : `${midiOf(note.note.pitch) + 12}:${event.duration}`,
      ),
      tab: signs.flatMap(({ note }) =>
        note?.fingered ? [`${note.fingered.string}/${note.fingered.fret}`] : [],
      ),
      chords: bar.written.spans.flatMap(({ harmony }) => {
        // The reader has no sign for N.C. and gives it the root C.
        if (harmony.kind !== 'chord') return harmony.kind === 'no chord' ? ['0'] : [];
        const { root, bass } = harmony.chord;
        return [
          sameName(root, bass) ? `${pitchClassOf(root)}` : `${pitchClassOf(root)}/${pitchClassOf(bass)}`,
        ];
      }),
    };
  });

const sheets: readonly LineSheet[] = [
  ...SAMPLE_TITLES.flatMap((_, index) => deriveSheets(sampleLesson(index, 'sample'))).flatMap((sheet) =>
    sheet.kind === 'line' ? [sheet] : [],
  ),
  ...randomSheets(12),
];

test('OpenSheetMusicDisplay reads the notes, lengths, chords and places of a line', async () => {
  // The library is put into the page as a script of its own, which the app's policy would not let in.
  const { page } = await openBench({ context: { bypassCSP: true } });
  await page.addScriptTag({ path: library });
  for (const sheet of sheets) {
    const found = await page.evaluate(
      async (xml) => {
        const home = document.createElement('div');
        document.body.append(home);
        const { OpenSheetMusicDisplay } = Reflect.get(window, 'opensheetmusicdisplay');
        const reader: Reader = new OpenSheetMusicDisplay(home, { autoResize: false });
        await reader.load(xml);
        const bars = reader.Sheet.SourceMeasures.map((measure): FoundBar => {
          const entries = (staff: number) =>
            measure.VerticalSourceStaffEntryContainers.flatMap(
              (container) => container.StaffEntries[staff] ?? [],
            );
          const notes = (staff: number) =>
            entries(staff).flatMap((entry) => entry.VoiceEntries.flatMap((voice) => voice.Notes));
          return {
            staff: notes(0).map((note) => {
              const length = Math.round(note.Length.RealValue * 3840);
              return `${note.isRest() ? 'rest' : note.halfTone + 12}:${length}`;
            }),
            tab: notes(1).flatMap((note) =>
              note.fretNumber === undefined || note.isRest()
                ? []
                : [`${note.stringNumberTab}/${note.fretNumber}`],
            ),
            chords: entries(0).flatMap((entry) =>
              entry.ChordContainers.flatMap(({ RootPitch, BassPitch }) => {
                if (RootPitch === undefined) return [];
                const [root, bass] = [RootPitch, BassPitch].map((pitch) =>
                  pitch === undefined ? null : ((pitch.getHalfTone() % 12) + 12) % 12,
                );
                return [bass === null ? `${root}` : `${root}/${bass}`];
              }),
            ),
          };
        });
        home.remove();
        return bars;
      },
      writeMusicXml(sheet, 'Lesson'),
    );
    expect(found).toEqual(expectedOf(sheet));
  }
});
