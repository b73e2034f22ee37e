/** Lead sheets and scores for others: what is asked of them, and what a bass player gets. */
import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { harmonyText } from '../../src/core/chart';
import { writeMidi } from '../../src/core/exchange';
import type { Lesson, LinePiece } from '../../src/core/lesson';
import { buildPerformance } from '../../src/core/performance';
import { PARTS, type Part } from '../../src/core/playing';
import { formatPitch } from '../../src/core/theory';
import { describeWithReferenceData } from '../support/reference-data';
import { sheetOf } from '../support/score-sheets';
import { lineSheetOf, readBack } from './read-back';

const note = (pitch: string, duration: number, more = ''): string => {
  const before = more.includes('<chord/>') ? '<chord/>' : '';
  return `<note>${before}<pitch><step>${pitch[0]}</step><octave>${pitch[1]}</octave></pitch><duration>${duration}</duration>${more.replace('<chord/>', '')}</note>`;
};
const chord = (duration: number, ...pitches: readonly string[]): string =>
  pitches.map((pitch, index) => note(pitch, duration, index === 0 ? '' : '<chord/>')).join('');
const harmony = (root: string): string =>
  `<harmony><root><root-step>${root}</root-step></root><kind>major</kind></harmony>`;
const head = (clef: string): string =>
  `<attributes><divisions>1</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>${clef}</sign></clef></attributes>`;

const score = (...parts: readonly (readonly [name: string, ...measures: readonly string[]])[]): string =>
  `<score-partwise><part-list>${parts
    .map(([name], index) => `<score-part id="P${index + 1}"><part-name>${name}</part-name></score-part>`)
    .join('')}</part-list>${parts
    .map(
      ([, ...measures], index) =>
        `<part id="P${index + 1}">${measures.map((each, bar) => `<measure number="${bar + 1}">${each}</measure>`).join('')}</part>`,
    )
    .join('')}</score-partwise>`;

const lead = score([
  'Voice',
  head('G') + harmony('C') + note('E5', 2) + note('G5', 2),
  harmony('G') +
    note('D5', 4) +
    '<backup><duration>4</duration></backup>' +
    note('B4', 4, '<voice>2</voice>'),
]);

const pitches = (lesson: Lesson): readonly string[] =>
  lineSheetOf(lesson).bars.flatMap(({ notes }) => notes.map((each) => formatPitch(each.note.pitch)));
const chords = (lesson: Lesson): readonly string[] =>
  lineSheetOf(lesson).bars.map(({ written }) =>
    written.spans.map((span) => harmonyText(span.harmony)).join(' '),
  );
const pieceOf = ({ pieces: [piece] }: Lesson): LinePiece => {
  if (piece?.kind !== 'line') throw new Error('A file that was read is a line.');
  return piece;
};
const LIKELY = {};

describe('a lead sheet', () => {
  it('comes with its tune where a bass can play it, in one step for the whole line', () => {
    const { lesson, facts, sentences } = readBack(lead, null, LIKELY);
    expect(pitches(lesson)).toEqual(['E3', 'G3', 'D3']);
    expect(facts).toMatchObject({ lowered: 2, notes: 3, chords: 2, feel: null, own: false });
    expect(facts.range && [formatPitch(facts.range.lowest), formatPitch(facts.range.highest)]).toEqual([
      'D5',
      'G5',
    ]);
    expect(facts.octaves).toEqual([
      { octaves: 0, playable: 0 },
      { octaves: 1, playable: 1 },
      { octaves: 2, playable: 3 },
      { octaves: 3, playable: 3 },
      { octaves: 4, playable: 2 },
    ]);
    expect(sentences).toContain('The notes are written two octaves lower than in the file.');
    expect(pitches(readBack(lead, null, { octaves: 3 }).lesson)).toEqual(['E2', 'G2', 'D2']);
    // An octave that is not offered is not taken.
    expect(pitches(readBack(lead, null, { octaves: 9 }).lesson)).toEqual(['E3', 'G3', 'D3']);
  });

  it('gives its chords only, for a line that is yet to be composed', () => {
    const { lesson, sentences } = readBack(lead, null, { take: 'chords', feel: 'one-drop' });
    expect(chords(lesson)).toEqual(['C', 'G']);
    expect(pitches(lesson)).toEqual([]);
    const { feel, bars, level } = pieceOf(lesson);
    expect([feel, bars.length, level < 5]).toEqual(['one-drop', 2, true]);
    expect(sentences.join('\n')).toContain('Only the chords are taken; the notes stay in the file.');
    // Nothing is said of notes that no one wants.
    expect(sentences.join('\n')).not.toMatch(/voice|neck|lower/);
  });

  it('lets its voice be chosen, and of chords their highest or lowest notes', () => {
    const { voices } = readBack(lead, null, LIKELY);
    expect(voices.all.map(({ name }) => name)).toEqual(['Voice 1 (3 notes)', 'Voice 2 (1 note)']);
    expect(pitches(readBack(lead, null, { voice: voices.all[1]?.id ?? null, octaves: 2 }).lesson)).toEqual([
      'B2',
    ]);
    const hands = score(['Piano', head('G') + chord(4, 'C4', 'E4', 'G4')]);
    const { voices: ends, lesson } = readBack(hands, null, { octaves: 1 });
    expect(ends.all.map(({ name }) => name)).toEqual(['Voice 1, highest notes', 'Voice 1, lowest notes']);
    expect(pitches(lesson)).toEqual(['G3']);
    expect(pitches(readBack(hands, null, { octaves: 1, voice: ends.all[1]?.id ?? null }).lesson)).toEqual([
      'C3',
    ]);
  });

  it('takes the chords from another part where it has no symbols, and from symbols where it has', () => {
    const song = (symbol: string) =>
      score(
        ['Voice', head('G') + symbol + note('E5', 4), note('F5', 4)],
        [
          'Piano',
          head('G') + chord(4, 'C4', 'E4', 'G4'),
          chord(2, 'C4', 'F4', 'A4') + chord(2, 'B3', 'D4', 'G4'),
        ],
      );
    const own = readBack(song(''), 'P1 1', LIKELY);
    expect(chords(own.lesson)).toEqual(['C', 'F G']);
    expect(own.sentences.join('\n')).toContain(
      'The chords are read from the notes of the part “Piano”: look them over.',
    );
    const symbols = readBack(song(harmony('A')), 'P1 1', LIKELY);
    expect(chords(symbols.lesson)).toEqual(['A', 'A']);
    expect(symbols.chords.all.map(({ name }) => name)).toEqual([
      'Symbols over “Voice”',
      'Triads of “Piano”',
      'Triads of all parts together',
    ]);
    expect(chords(readBack(song(harmony('A')), 'P1 1', { chords: 'P2 triads' }).lesson)).toEqual([
      'C',
      'F G',
    ]);
  });

  it('leaves a line for a bass where it stands', () => {
    const high = score(['Bass', head('F') + note('G3', 4)]);
    expect(readBack(high, null, LIKELY).facts.lowered).toBe(0);
  });
});

it('a MIDI file without chord symbols has the chords of the part that plays them, and its feel if it is ours', () => {
  const sheet = sheetOf({
    chart: '| F | Dm | Gm C7 | F |',
    notes: 'F1/4 | D2/4 | G1/2 C2/2 | F1/4',
    key: 'F',
    feel: 'rocksteady',
  });
  const file = writeMidi({
    performance: buildPerformance(sheet, { tempo: sheet.tempo, countIn: 0, passage: null }),
    sheet,
    title: 'Ferry queue',
    parts: new Set<Part>(PARTS),
  });
  const { lesson, facts } = readBack(file, null, LIKELY);
  expect(chords(lesson)).toEqual(['F', 'Dm', 'Gm C7', 'F']);
  expect(facts).toMatchObject({ own: true, feel: 'rocksteady', lowered: 0 });
  expect(pieceOf(lesson).feel).toBe('rocksteady');
});

/** Lead sheets of OpenEWLD (github.com/00sapo/OpenEWLD, doi 10.5281/zenodo.4332855), all in the treble clef. */
describeWithReferenceData('lead sheets of others', 1, (_, data) => {
  it('can be played on four strings once their tune has gone down by octaves', () => {
    const names = data.names('musicxml-files/openewld').filter((name) => name.endsWith('.musicxml'));
    const playable = names.filter((name) => {
      const { facts, lesson } = readBack(data.bytes(`musicxml-files/openewld/${name}`), null, LIKELY);
      const midis = lineSheetOf(lesson).bars.flatMap(({ notes }) =>
        notes.map((each) => midiOf(each.note.pitch)),
      );
      // From the open E string to the twentieth fret of the G string: MIDI 28 to 63.
      return facts.lowered <= 2 && midis.every((midi) => midi >= 28 && midi <= 63);
    });
    process.stdout.write(
      `${playable.length} of ${names.length} tunes are playable one or two octaves lower.\n`,
    );
    expect(playable.length / names.length).toBeGreaterThan(0.99);
  });
});
