import fc from 'fast-check';
import {
  type Alteration,
  barTicks,
  LETTERS,
  type LineNote,
  type NoteMarks,
  type SpelledPitch,
  samePitch,
  TICKS_PER_QUARTER,
  ticks,
} from '../../src/core/base';
import type { LineNotes, LineRequest } from '../../src/core/line';
import { type WideWish, wideRequest, wideWishes } from './wide-charts';

/** Notes as a file of another program may hold them: pitches all over the neck's low half, starts on each sixteenth, ties over bar lines, marks. */
interface Drawn {
  readonly gap: number;
  readonly length: number;
  readonly letter: number;
  readonly alteration: Alteration;
  readonly octave: number;
  readonly marks: NoteMarks | null;
}

const SIXTEENTH = TICKS_PER_QUARTER / 4;

const drawn: fc.Arbitrary<Drawn> = fc.record({
  gap: fc.constantFrom(0, 0, 0, 1, 2, 4),
  length: fc.constantFrom(1, 2, 2, 4, 4, 6, 8),
  letter: fc.nat(6),
  alteration: fc.constantFrom<Alteration>(0, 0, 0, -1, 1),
  octave: fc.constantFrom(1, 2, 2),
  marks: fc.constantFrom<NoteMarks | null>(null, null, null, { length: 'staccato' }, { damping: 'ghost' }),
});

const pitchOf = ({ letter, alteration, octave }: Drawn): SpelledPitch => {
  const name = LETTERS[letter] ?? 'A';
  // Nothing below the open E string.
  const low = octave === 1 && (name === 'C' || name === 'D' || (name === 'E' && alteration < 0));
  return { letter: name, alteration, octave: low ? 2 : octave };
};

function barOf(notes: readonly Drawn[], length: number): readonly LineNote[] {
  const bar: LineNote[] = [];
  let at = 0;
  for (const note of notes) {
    const start = at + note.gap * SIXTEENTH;
    const duration = Math.min(note.length * SIXTEENTH, length - start);
    if (duration <= 0) break;
    bar.push({
      start: ticks(start),
      duration: ticks(duration),
      pitch: pitchOf(note),
      ...(note.marks === null ? {} : { marks: note.marks }),
    });
    at = start + duration;
  }
  return bar;
}

/** Every third bar line that can be tied over is. */
function tied(bars: LineNotes, lengths: readonly number[]): LineNotes {
  return bars.map((notes, index) => {
    const [last, next] = [notes.at(-1), bars[index + 1]?.[0]];
    if (index % 3 !== 0 || !last || next?.start !== 0 || last.start + last.duration !== lengths[index])
      return notes;
    return samePitch(last.pitch, next.pitch) ? [...notes.slice(0, -1), { ...last, tiedOn: true }] : notes;
  });
}

interface RandomLine {
  readonly asked: LineRequest;
  readonly bars: LineNotes;
}

/** Any notes over any chart. */
export const randomLines: fc.Arbitrary<RandomLine & { readonly wish: WideWish }> = fc
  .tuple(
    wideWishes,
    fc.array(fc.array(drawn, { maxLength: 8 }), { minLength: 4, maxLength: 24 }),
    fc.boolean(),
  )
  .map(([wish, drawnBars, alike]) => {
    const asked = wideRequest({ ...wish, aims: [] });
    const lengths = asked.chart.bars.map(({ metre }) => barTicks(metre));
    const bars = lengths.map((length, index) => barOf(drawnBars[index % drawnBars.length] ?? [], length));
    // Pitches alike over a bar line, so that ties have something to join.
    const joined = bars.map((notes, index) => {
      const [before, first] = [bars[index - 1]?.at(-1), notes[0]];
      return alike && before && first?.start === 0
        ? [{ ...first, pitch: before.pitch }, ...notes.slice(1)]
        : notes;
    });
    return { wish, asked, bars: tied(joined, lengths) };
  });
