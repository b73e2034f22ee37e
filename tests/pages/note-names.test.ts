import { describe, expect, it } from 'vitest';
import { tuningOptions } from '../../src/app/pages/aims/tunings';
import { placesText } from '../../src/app/pages/fingering/bar-on-neck';
import { ideaNames } from '../../src/app/pages/ideas/names';
import { neckPicture } from '../../src/app/pages/neck/picture';
import { chordsOf, describeFacts, describePiece, describeScore } from '../../src/app/pages/words/describe';
import { type LineNote, midiNumber, type SpelledPitch, TICKS_PER_QUARTER, ticks } from '../../src/core/base';
import { barSignature, chordFunctions, signatureText } from '../../src/core/chart';
import { checkLesson, composePiece, explainPiece, ideaOfferFor } from '../../src/core/composing';
import { exportName, writeMidi, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import { GERMAN_NAMES } from '../../src/core/exchange/tab/write';
import { TUNINGS } from '../../src/core/fretboard';
import {
  aimWords,
  changeBars,
  describeBar,
  type Lesson,
  markTechnique,
  neckShapes,
  setAim,
  setHandout,
  setInstrument,
  setLevel,
  setNoteNames,
  waysToPlay,
} from '../../src/core/lesson';
import { TECHNIQUES } from '../../src/core/line';
import { performanceOf } from '../../src/core/performance';
import { PARTS } from '../../src/core/playing';
import { NAMINGS, type Naming } from '../../src/core/theory';
import { layoutFretboard } from '../../src/score/neck/layout';
import { layOutForPrint } from '../handout/drawn';
import { lessonOf, lineOf } from './lines';

const PIECE = 'piece-1';

/** B and B♭ side by side, as chords, keys, basses, strings and notes. */
const CHART = `Verse:
| Bb | Eb F7 | Bm7b5 E7 | Am D7/F# | Gm | Ebmaj7/Bb | F7 | Bb |
Bridge:
| B | C#m7 F#7 | B/D# | E Emaj7 | G#m | C#7 | F#7 | B |`;

const pitch = (letter: SpelledPitch['letter'], alteration: SpelledPitch['alteration'], octave: number) => ({
  letter,
  alteration,
  octave,
});

/** Wrong notes that the check has something to say about: a spelling, a clash, a note below the neck. */
const WRONG: ReadonlyMap<number, SpelledPitch> = new Map([
  [0, pitch('A', 1, 1)],
  [4, pitch('B', 0, 1)],
  [7, pitch('B', 0, 1)],
  [8, pitch('B', -1, 1)],
  [15, pitch('B', 0, 0)],
]);

const withPitch = (note: LineNote, wrong: SpelledPitch): LineNote => ({ ...note, pitch: wrong });

function composed(tuningId: string): Lesson {
  const tuning = TUNINGS.find(({ id }) => id === tuningId);
  const empty = setInstrument(setLevel(lessonOf({ chart: CHART }), PIECE, 5), {
    openStrings: tuning?.openStrings ?? [],
  });
  const taught = TECHNIQUES.reduce((lesson, each) => markTechnique(lesson, PIECE, each, 'shown'), empty);
  const wished = setAim(taught, PIECE, { kind: 'line' }, { lowest: midiNumber(34), highest: midiNumber(46) });
  return composePiece(
    setHandout(wished, {
      degrees: true,
      fingers: true,
      numerals: true,
      blocks: ['facts', 'chart', 'shapes', 'rhythm', 'music', 'practice', 'cautions'],
    }),
    PIECE,
  ).lesson;
}

/** Where the wrong note is held for two beats, as one that passes by contradicts no chord. */
const HELD = 4;

const withFaults = (lesson: Lesson): Lesson =>
  changeBars(lesson, PIECE, (bar, index) => {
    const wrong = WRONG.get(index);
    if (wrong === undefined) return bar;
    const notes =
      index === HELD
        ? [{ start: ticks(0), duration: ticks(2 * TICKS_PER_QUARTER), pitch: wrong }]
        : bar.notes;
    return { ...bar, notes: notes.map((note) => withPitch(note, wrong)) };
  });

/** Bars that are opened, by index: in B♭ and B major, with one chord and with two. */
const LOOKED_AT = [0, 5, 8, 11];

/** All that the page says of a lesson, sentence by sentence, in an order that its names do not change. */
function saidOn(lesson: Lesson): readonly string[] {
  const { piece, sheet } = lineOf(lesson);
  const { noteNames: naming = 'letters' } = sheet;
  const { instrument } = lesson;
  const [line] = piece.aims;
  return [
    describePiece(sheet),
    describeFacts(sheet),
    describeScore(sheet),
    ...sheet.keyGuesses.map(({ reason }) => reason),
    ...chordFunctions(sheet.chart, sheet.key, [], sheet.noteNames).flatMap((bar) =>
      bar.flatMap((each) => each?.sentence ?? []),
    ),
    ...explainPiece(piece, sheet, instrument),
    ...checkLesson(lesson).flatMap(({ message, repair }) => [message, repair?.()?.label ?? '']),
    ...aimWords(line ?? {}, { key: sheet.key, naming }),
    ...tuningOptions(instrument, naming).map(({ label }) => label),
    ...sheet.chart.bars.map((bar) => signatureText(barSignature(bar), naming)),
    ...sheet.bars.flatMap((bar) => [
      chordsOf(bar.written, sheet.noteNames),
      describeBar(sheet, bar),
      bar.analysis.reason,
    ]),
    ...LOOKED_AT.flatMap((index) => {
      const bar = sheet.bars[index];
      if (bar === undefined) return [];
      const { ideas, remark } = ideaOfferFor(piece, instrument, index, sheet.noteNames);
      const views = neckShapes(sheet, bar, piece.hand);
      const pictures = [undefined, ...views].flatMap((view) => {
        const picture = neckPicture(sheet, index, view, bar.notes[0] ?? null);
        const layout = picture && layoutFretboard({ ...picture, show: 'name', width: 390 });
        const marks = layout?.marks.flatMap((mark) => (mark.kind === 'line' ? [] : [mark.text])) ?? [];
        return [view?.title ?? '', layout?.description ?? '', ...marks];
      });
      return [
        ...ideas.map(({ analysis }) => analysis.reason),
        remark ?? '',
        ...ideaNames(ideas, bar.written.metre, sheet.noteNames),
        ...pictures,
        ...waysToPlay(piece, instrument, { kind: 'bar', bar: index }).flatMap(({ way, places }) => [
          way.description,
          placesText(sheet, places),
        ]),
      ];
    }),
  ];
}

/** What is written on paper and into files that people read; where its lines break may depend on the names. */
function writtenFrom(lesson: Lesson): readonly string[] {
  const { sheet } = lineOf(lesson);
  const { pages, scores } = layOutForPrint(lesson);
  const printed = pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => {
      if (mark.kind === 'text') return [mark.text];
      if (mark.kind !== 'neck') return [];
      const { marks: drawn, description } = layoutFretboard(mark.request);
      return [description, ...drawn.flatMap((each) => (each.kind === 'text' ? [each.text] : []))];
    }),
  );
  const engraved = scores.flatMap(({ systems }) =>
    systems.flatMap(({ ink }) => ink.flatMap((each) => (each.kind === 'text' ? [each.text] : []))),
  );
  // A tab in German names says so in a line that the others do not have.
  const tab = writeTextTab(sheet, lesson.title).replace(`${GERMAN_NAMES}\n`, '');
  return [...printed, ...engraved, tab, exportName(sheet, lesson.title)];
}

const NATURAL: Readonly<Record<Naming, string>> = {
  letters: 'C D E F G A B',
  german: 'C D E F G A H',
  'fixed do': 'Do Re Mi Fa Sol La Si',
};

/** A name as a musician of the country writes it, told apart from the program's own table (see the sources there). */
function translated(letter: string, sign: string, naming: Naming): string {
  const name = NATURAL[naming].split(' ')['CDEFGAB'.indexOf(letter)] ?? '';
  if (naming !== 'german') return name + sign;
  const times = sign.startsWith(' ') ? 1 : sign.length;
  if (/[♯#]|sharp/.test(sign)) return name + 'is'.repeat(times);
  if (times === 0) return name;
  if (letter === 'B' && times === 1) return 'B';
  return (/[AE]/.test(letter) ? `${letter}s` : `${name}es`) + (times === 2 ? 'es' : '');
}

/** A note name in letters, alone or at the head of a symbol, an octave or a tab string; never the head of a word. */
const NAME =
  /(?<![\p{L}\d♭♯])([A-G])(♭♭|♯♯|♭|♯|b|#| flat| sharp|)(?=(?:m|maj|dim|aug|sus)?(?:[^\p{L}♭♯]|$))/gu;

const inNames = (text: string, naming: Naming): string =>
  text.replace(NAME, (_, letter: string, sign: string) => translated(letter, sign, naming));

/** The article of `A whole step down` is no note. */
const withoutArticles = (text: string): string => text.replace(/\b(?:A|La) (?=whole|note|bar|chord)/g, '');

const words = (texts: readonly string[]): readonly string[] =>
  [...new Set(texts.flatMap((text) => text.split(/[\s|:-]+/)))].sort();

describe('a lesson full of B and B♭', () => {
  const standard = composed('standard');
  const lessons = [standard, withFaults(standard), withFaults(composed('six-strings'))];

  const saidInLetters = lessons.map(saidOn);

  it.each(['german', 'fixed do'] as const)('says every name in %s and no other', (naming) => {
    for (const [index, lesson] of lessons.entries()) {
      const expected = saidInLetters[index]?.map((text) => withoutArticles(inNames(text, naming)));
      const said = saidOn(setNoteNames(lesson, naming)).map(withoutArticles);
      expect(said).toEqual(expected);
      expect(words(said)).toContain(naming === 'german' ? 'H' : 'Si');
    }
  });

  it.each(['german', 'fixed do'] as const)('prints and writes every name in %s and no other', (naming) => {
    for (const lesson of lessons) {
      const expected = words(writtenFrom(lesson).map((text) => inNames(text, naming)));
      expect(words(writtenFrom(setNoteNames(lesson, naming)))).toEqual(expected);
    }
  });

  it('has faults in it that name notes', () => {
    const messages = lessons.flatMap((lesson) =>
      checkLesson(setNoteNames(lesson, 'german')).map(({ message }) => message),
    );
    const wanted = [
      /Ais is written where B has B\. Write B; it sounds the same\.$/,
      /H contradicts \S+\. Play B,/,
      /H0 does not lie on this instrument\.$/,
      /gets neither its root nor its fifth\. Play H/,
    ];
    for (const message of wanted) expect(messages.some((each) => message.test(each))).toBe(true);
  });

  it('is the same music in standard files and in the hand, however its notes are named', () => {
    for (const lesson of lessons) {
      const music = NAMINGS.map((naming) => {
        const { piece, sheet } = lineOf(setNoteNames(lesson, naming));
        const performance = performanceOf(piece, sheet, 'notes');
        return {
          xml: writeMusicXml(sheet, lesson.title),
          midi: writeMidi({ performance, sheet, title: lesson.title, parts: new Set(PARTS) }),
          fingering: sheet.fingering,
          chart: piece.chartText,
        };
      });
      expect(music[1]).toEqual(music[0]);
      expect(music[2]).toEqual(music[0]);
    }
  });
});
