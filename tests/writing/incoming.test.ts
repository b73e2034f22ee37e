/** What comes in from elsewhere is spelled by chord and key as soon as these are known, and equal bars are fingered alike. */
import { describe, expect, it } from 'vitest';
import { midiNumber, ticks } from '../../src/core/base';
import { writeMidi as midiFile, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import { type Lesson, linePiece, setChartText, setKey } from '../../src/core/lesson';
import { performanceOf } from '../../src/core/performance';
import { formatPitch, parseKey } from '../../src/core/theory';
import { toValue, writeMidi } from '../../src/core/writing';
import { lineSheetOf, readBack } from '../exchange/read-back';
import { Hand } from './hand';

/** F and G♯ in every bar, as a MIDI keyboard sends them: numbers without names. */
function playedIn(chart: string, key: string, bars: number): Hand {
  const hand = new Hand(chart, key);
  hand.take(toValue(ticks(1920))(hand.lesson, hand.pencil));
  for (let bar = 0; bar < bars; bar += 1)
    for (const midi of [41, 44]) hand.take(writeMidi(midiNumber(midi))(hand.lesson, hand.pencil));
  return hand;
}

const pieceIn = (lesson: Lesson) => {
  const piece = linePiece(lesson, lesson.pieces[0]?.id ?? '');
  if (piece === null) throw new Error('no line');
  return piece;
};

const names = (lesson: Lesson): readonly string[] =>
  // Behind the last note, a file may have silence.
  pieceIn(lesson)
    .bars.slice(0, 4)
    .map(({ notes, over = [] }) => [...notes, ...over].map(({ pitch }) => formatPitch(pitch)).join(' '));

/** Another chart in the place of what is there, in no chosen key. */
const retyped = (lesson: Lesson, chart: string): Lesson =>
  setChartText(setKey(lesson, pieceIn(lesson).id, null), pieceIn(lesson).id, chart);

const WAYS: readonly { readonly from: string; readonly comesIn: (chart: string, key: string) => Lesson }[] = [
  {
    from: 'a MIDI file',
    comesIn: (chart, key) => {
      const { lesson } = playedIn(chart, key, 4);
      const sheet = lineSheetOf(lesson);
      const performance = performanceOf(pieceIn(lesson), sheet, 'notes');
      return readBack(midiFile({ performance, sheet, title: 'In', parts: new Set(['bass']) })).lesson;
    },
  },
  {
    from: 'MusicXML',
    comesIn: (chart, key) =>
      readBack(writeMusicXml(lineSheetOf(playedIn(chart, key, 4).lesson), 'In')).lesson,
  },
  {
    from: 'text tab',
    comesIn: (chart, key) => readBack(writeTextTab(lineSheetOf(playedIn(chart, key, 4).lesson), 'In')).lesson,
  },
  { from: 'a MIDI keyboard', comesIn: (chart, key) => playedIn(chart, key, 4).lesson },
];

describe.each(WAYS)('what comes in by $from', ({ comesIn }) => {
  it('without chords is spelled by the chord as soon as it is written, bar by bar', () => {
    const lesson = comesIn('| N.C. | N.C. | N.C. | N.C. |', 'E major');
    expect(names(lesson)).toHaveLength(4);
    const chorded = retyped(lesson, '| Fm | E7 | Fm | Bbm7 |');
    expect(names(chorded).map((bar) => bar.split(' ')[1]?.slice(0, 2))).toEqual(['A♭', 'G♯', 'A♭', 'A♭']);
  });

  it('over chords is spelled anew where one is retyped', () => {
    const lesson = comesIn('| C#7 | C#7 | C#7 | C#7 |', 'F# minor');
    expect(names(lesson).map((bar) => bar.split(' ')[1]?.slice(0, 2))).toEqual(Array(4).fill('G♯'));
    const chorded = retyped(lesson, '| C#7 | Db7 | C#7 | Fm |');
    expect(names(chorded).map((bar) => bar.split(' ')[1]?.slice(0, 2))).toEqual(['G♯', 'A♭', 'G♯', 'A♭']);
  });

  it('without chords is spelled by the key as soon as that is chosen', () => {
    const lesson = comesIn('| N.C. | N.C. | N.C. | N.C. |', 'E major');
    const key = parseKey('A♭ major');
    if (!key.ok) throw new Error('no key');
    const keyed = setKey(lesson, pieceIn(lesson).id, key.value);
    expect(names(keyed).map((bar) => bar.split(' ')[1]?.slice(0, 2))).toEqual(Array(4).fill('A♭'));
  });

  it('gets equal fingering in equal bars', () => {
    const { bars } = lineSheetOf(comesIn('| Fm | Fm | Fm | Fm |', 'F minor'));
    const fingerings = bars
      .slice(0, 4)
      .map(({ notes }) =>
        notes.map(({ fingered: at }) => (at === null ? '?' : `${at.string}/${at.fret} ${at.finger}`)).join(),
      );
    expect(fingerings).toHaveLength(4);
    expect(new Set(fingerings).size).toBe(1);
    expect(fingerings[0]).not.toContain('?');
  });
});

it('what is too much in a bar is spelled by its chord, too', () => {
  const { lesson } = playedIn('| E |', 'E major', 1);
  const hand = new Hand('| E |', 'E major');
  hand.lesson = lesson;
  hand.press('End ]');
  expect(names(hand.lesson)[0]).toMatch(/ G♯2 G♯2$/);
  expect(names(retyped(hand.lesson, '| Fm |'))[0]).toMatch(/ A♭2 A♭2$/);
});
