import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, beatTicks, type LineNote, midiOf, ticks } from '../../src/core/base';
import { playOrder } from '../../src/core/chart';
import { FEELS, rhythmsIn } from '../../src/core/feel';
import {
  analyseLine,
  type LineNotes,
  type LineRequest,
  explainToStudent as sentencesFor,
} from '../../src/core/line';
import { composedWide } from './composed';
import { line, request } from './notation';
import { randomLines } from './random-lines';
import { wideWishes } from './wide-charts';

/**
 * What a student is told, read as a student reads it and held against the notes as they are stored and the chart as it is
 * parsed; nothing of what made the sentences is asked again. A sentence of a kind that is not here fails.
 */
interface Case {
  readonly asked: LineRequest;
  readonly bars: LineNotes;
}

const classOf = (name: Pick<LineNote['pitch'], 'letter' | 'alteration'>) =>
  midiOf({ ...name, octave: 2 }) % 12;

function chordAt({ asked }: Case, bar: number, start: number) {
  const span = (asked.chart.bars[bar]?.spans ?? []).findLast((each) => each.start <= start);
  return span?.harmony.kind === 'chord' ? span.harmony.chord : null;
}

function isMember(at: Case, bar: number, note: LineNote): boolean {
  const chord = chordAt(at, bar, note.start);
  const names = chord === null ? [] : [...chord.tones.map(({ name }) => name), chord.bass];
  return names.some((name) => classOf(name) === midiOf(note.pitch) % 12);
}

const notesOf = ({ bars }: Case, bar: number): readonly LineNote[] => bars[bar] ?? [];
const isPickup = ({ asked }: Case, bar: number): boolean => asked.chart.bars[bar]?.pickup === true;
const ticksOf = ({ asked }: Case, bar: number): number =>
  barTicks(asked.chart.bars[bar]?.metre ?? asked.chart.metre);

/** Bars heard just before or just after one, in the order of playing, round and round. */
function besides({ asked }: Case, bar: number, by: 1 | -1): readonly number[] {
  const order = playOrder(asked.chart);
  return order.flatMap((each, place) =>
    each === bar ? (order[(place + order.length + by) % order.length] ?? []) : [],
  );
}

/** Whether the bar's first note goes on from some bar before it. */
const isHeld = (at: Case, bar: number): boolean =>
  besides(at, bar, -1).some((before) => {
    const [last, first] = [notesOf(at, before).at(-1), notesOf(at, bar)[0]];
    return last?.tiedOn === true && first?.start === 0 && midiOf(last.pitch) === midiOf(first.pitch);
  });

/** Anything that sounds. */
const SOUND: LineNote = {
  start: ticks(0),
  duration: ticks(1),
  pitch: { letter: 'C', alteration: 0, octave: 2 },
};

const struckOf = (at: Case, bar: number): readonly LineNote[] =>
  notesOf(at, bar).slice(isHeld(at, bar) ? 1 : 0);
const rhythmOf = (at: Case, bar: number): string =>
  [ticksOf(at, bar), ...struckOf(at, bar).map(({ start }) => start)].join(' ');

function longestSilence(at: Case, bar: number): number {
  let [from, longest] = [0, 0];
  for (const note of [...notesOf(at, bar), { start: ticksOf(at, bar), duration: 0 }]) {
    longest = Math.max(longest, note.start - from);
    from = Math.max(from, note.start + note.duration);
  }
  return longest;
}

const hasSilentOne = (at: Case, bar: number): boolean =>
  !isPickup(at, bar) && (notesOf(at, bar)[0]?.start ?? 0) > 0 && chordAt(at, bar, 0) !== null;

const hasRootOnOne = (at: Case, bar: number): boolean => {
  const [first] = struckOf(at, bar);
  const chord = chordAt(at, bar, 0);
  return (
    !isPickup(at, bar) &&
    first?.start === 0 &&
    chord !== null &&
    classOf(chord.root) === midiOf(first.pitch) % 12
  );
};

const leapsAnOctave = (at: Case, bar: number): boolean =>
  notesOf(at, bar).some((note, index, notes) => {
    const before = notes[index - 1];
    return before !== undefined && Math.abs(midiOf(note.pitch) - midiOf(before.pitch)) === 12;
  });

const isArpeggio = (at: Case, bar: number): boolean =>
  (at.asked.chart.bars[bar]?.spans ?? []).some(({ start, harmony }, index, spans) => {
    if (harmony.kind !== 'chord') return false;
    const end = spans[index + 1]?.start ?? ticksOf(at, bar);
    const heights = notesOf(at, bar)
      .filter((note) => note.start >= start && note.start < end && isMember(at, bar, note))
      .map(({ pitch }) => (midiOf(pitch) - classOf(harmony.chord.root) + 120) % 12);
    return new Set(heights).size > 2 && heights.includes(0) && (heights.includes(3) || heights.includes(4));
  });

const outsideChord = (at: Case, bar: number): boolean =>
  notesOf(at, bar).some((note) => chordAt(at, bar, note.start) !== null && !isMember(at, bar, note));

/** The last note, in the last beat, is the bass note of the chord that every next bar begins with. */
const comesEarly = (at: Case, bar: number): boolean => {
  const last = notesOf(at, bar).at(-1);
  const beat = beatTicks(at.asked.chart.bars[bar]?.metre ?? at.asked.chart.metre);
  return (
    last !== undefined &&
    last.start >= ticksOf(at, bar) - beat &&
    besides(at, bar, 1).every((next) => {
      const chord = chordAt(at, next, 0);
      return chord !== null && classOf(chord.bass) === midiOf(last.pitch) % 12;
    })
  );
};

/** The bars that a name means, by their indices: `every bar`, `bars 1–3 and 5`, `the pickup and bar 1`. */
function named(at: Case, text: string): readonly number[] {
  const { bars } = at.asked.chart;
  const [, but] = /every bar but (.+)$/i.exec(text) ?? [];
  if (but !== undefined) {
    const left = named(at, but);
    return bars.flatMap(({ pickup }, index) => (pickup || left.includes(index) ? [] : [index]));
  }
  const numbers = new Set<number>();
  if (/\bpickup\b/.test(text)) numbers.add(0);
  const single = text.replace(
    /every (\w+) bar from bar (\d+) to bar (\d+)/gi,
    (_, name: string, from: string, to: string) => {
      const distance = ['', '', 'second', 'third', 'fourth', '', '', '', 'eighth'].indexOf(name);
      for (let number = Number(from); number <= Number(to); number += distance) numbers.add(number);
      return '';
    },
  );
  if (/every bar/i.test(single)) {
    for (const { number, pickup } of bars) if (!pickup) numbers.add(number);
  } else {
    for (const [, from, to] of single.matchAll(/(\d+)(?:–(\d+))?/g))
      for (let number = Number(from); number <= Number(to ?? from); number += 1) numbers.add(number);
  }
  const found = bars.flatMap(({ number }, index) => (numbers.has(number) ? [index] : []));
  if (found.length === 0) throw new Error(`No bar is named in: ${text}`);
  return found;
}

type Check = (at: Case, text: string, rest: string) => boolean;

const all =
  (holds: (at: Case, bar: number) => boolean): Check =>
  (at, text) =>
    named(at, text).every((bar) => holds(at, bar));

/** These bars and no others. */
const exactly =
  (holds: (at: Case, bar: number) => boolean): Check =>
  (at, text) => {
    const bars = at.bars.flatMap((_, bar) => (holds(at, bar) ? [bar] : []));
    return JSON.stringify(named(at, text)) === JSON.stringify(bars);
  };

/** Whether the sentence gives the beat to the chops just where their grid has a stroke over a chord in every one of the gaps. */
function carriers(at: Case, bars: readonly number[], rest: string, least: (bar: number) => number): boolean {
  const struck = bars.every((bar) => {
    const metre = at.asked.chart.bars[bar]?.metre ?? at.asked.chart.metre;
    const grid = rhythmsIn(at.asked.feel, metre)?.chops.grid ?? '';
    const ends = [...notesOf(at, bar), { start: ticksOf(at, bar), duration: 0 }];
    return ends.every(({ start: to }, index) => {
      const from = Math.max(0, ...ends.slice(0, index).map(({ start, duration }) => start + duration));
      if (to - from < least(bar)) return true;
      return [...grid].some((sign, step) => {
        const place = (step * ticksOf(at, bar)) / grid.length;
        return /[xXsog]/.test(sign) && place >= from && place < to && chordAt(at, bar, place) !== null;
      });
    });
  });
  return rest.startsWith(struck ? 'drums and chops carry' : 'the drums carry');
}

const halfOf = (at: Case) => (bar: number) => ticksOf(at, bar) / 2;

/** The motif is what most bars share: no rhythm is in more of them. */
function isMotif(at: Case, text: string): boolean {
  const bars = named(at, text).filter((bar) => notesOf(at, bar).length > 0);
  return bars.length > 1 && new Set(bars.map((bar) => rhythmOf(at, bar))).size === 1;
}

const KINDS: readonly (readonly [RegExp, Check])[] = [
  [
    /^Chord tones in (.+?): notes that belong to the chord\.(.+)$/,
    (at, text, rest) => {
      const spelled = named(at, text).filter((bar) => isArpeggio(at, bar));
      const where = /In (.+) they spell/.exec(rest)?.[1];
      const said = rest.includes('There they spell') ? named(at, text) : where ? named(at, where) : [];
      return (
        all((each, bar) => notesOf(each, bar).some((note) => isMember(each, bar, note)))(at, text, '') &&
        JSON.stringify(said) === JSON.stringify(spelled)
      );
    },
  ],
  [/^Scale steps in (.+?): notes of the scale between those of the chord\./, all(outsideChord)],
  [
    /^No note on beat one in (.+?): (.+?) the beat through the gap\./,
    (at, text, rest) =>
      exactly(hasSilentOne)(at, text, rest) &&
      // Only the silence on beat one is spoken of.
      carriers(
        {
          ...at,
          bars: at.bars.map((notes, bar) => {
            const start = notes[0]?.start ?? ticks(0);
            return [{ ...SOUND, start, duration: ticks(ticksOf(at, bar) - start) }];
          }),
        },
        named(at, text),
        rest,
        () => 1,
      ),
  ],
  [
    /^A long silence in (.+?): (.+?) the beat through the gap\./,
    (at, text, rest) =>
      exactly(
        (each, bar) =>
          !isPickup(each, bar) &&
          notesOf(each, bar).length > 0 &&
          longestSilence(each, bar) * 2 >= ticksOf(each, bar),
      )(at, text, rest) && carriers(at, named(at, text), rest, halfOf(at)),
  ],
  [
    /^No note at all in (.+?): (.+?) the beat through the gap\./,
    (at, text, rest) =>
      exactly((each, bar) => !isPickup(each, bar) && notesOf(each, bar).length === 0)(at, text, rest) &&
      carriers(at, named(at, text), rest, halfOf(at)),
  ],
  [/^An octave in (.+?): the same note, higher or lower\. Two strings up/, exactly(leapsAnOctave)],
  [/^An approach note in (.+?): a note that does not belong to its chord/, all(outsideChord)],
  [
    /^An anticipation in (.+?): the next bar’s bass note comes before its bar begins\./,
    all((at, bar) => comesEarly(at, bar) && outsideChord(at, bar)),
  ],
  [/^(.+) (?:has|have) the same rhythm: learn it once/, isMotif],
  [/^(.+) answers? it, like someone who replies: the rest before/, all(hasRestOnOne)],
  [
    /^(.+) (?:has|have) another rhythm: a phrase ends there\.$/,
    // Only ends of phrases have it: no bar within a phrase.
    all((at, bar) =>
      at.bars.every(
        (_, other) =>
          endsPhrase(at, other) ||
          struckOf(at, other).length === 0 ||
          rhythmOf(at, other) !== rhythmOf(at, bar),
      ),
    ),
  ],
  [
    /^The end of (.+) leads back to the beginning, so/,
    (at, text) => {
      const order = playOrder(at.asked.chart);
      const [last, first] = [order.at(-1) ?? 0, order[0] ?? 0];
      const [from, to] = [notesOf(at, last).at(-1), notesOf(at, first)[0]];
      const distance = from && to ? midiOf(to.pitch) - midiOf(from.pitch) : 99;
      return named(at, text)[0] === last && [-2, -1, 1, 2, 5, -7].includes(distance);
    },
  ],
  [
    /^(.+) ends on the root, the note that the chord is named after(.*)\.$/,
    (at, text, rest) => {
      const [bar = 0] = named(at, text);
      const last = notesOf(at, bar).at(-1);
      const chord = last ? chordAt(at, bar, last.start) : null;
      const key = at.asked.chart.bars[bar]?.key ?? at.asked.key;
      const height = last ? midiOf(last.pitch) % 12 : -1;
      const finished = height === classOf(key.tonic);
      return (
        bar === playOrder(at.asked.chart).at(-1) &&
        chord !== null &&
        height === classOf(chord.root) &&
        finished === rest.includes('sounds finished')
      );
    },
  ],
  [/^Listen to beat one of (.+): the bass is silent there, and the beat/, exactly(hasSilentOne)],
  [/^Listen to beat one of (.+): the bass plays the root, the note/, exactly(hasRootOnOne)],
  [/^Listen for the root on beat one of (.+)\.$/, exactly(hasRootOnOne)],
];

function hasRestOnOne(at: Case, bar: number): boolean {
  return (notesOf(at, bar)[0]?.start ?? 0) > 0 && !isPickup(at, bar);
}

function endsPhrase(at: Case, bar: number): boolean {
  const { bars } = at.asked.chart;
  const section = bars[bar]?.section;
  const whole = bars.flatMap((each, index) => (each.section === section && !each.pickup ? [index] : []));
  return bar === whole.at(-1) || (whole.indexOf(bar) + 1) % at.asked.feel.phraseLength === 0;
}

/** Sentences that are not true of the notes, or of no known kind. */
function untrue(at: Case, sentences: readonly string[]): readonly string[] {
  return sentences.filter((sentence) => {
    const kind = KINDS.find(([pattern]) => pattern.test(sentence));
    const [, text = '', rest = ''] = kind?.[0].exec(sentence) ?? [];
    return kind === undefined || !kind[1](at, text, rest);
  });
}

const explainToStudent = (...asked: Parameters<typeof sentencesFor>): readonly string[] =>
  sentencesFor(...asked).map(({ sentence }) => sentence);

/** On the page, then on paper. */
const told = ({ asked, bars }: Case): readonly string[] => [
  ...explainToStudent(asked, bars),
  ...explainToStudent(asked, bars, { brief: true }),
];

describe('what a student is told', () => {
  test('is true of composed lines, on the page and on paper', () => {
    fc.assert(
      fc.property(wideWishes, (wish) => {
        const { asked, line: composed } = composedWide(wish);
        const at = { asked, bars: composed.bars };
        expect(untrue(at, told(at))).toEqual([]);
      }),
      { numRuns: 6, seed: 18 },
    );
  });

  test('is true of any notes over any chart', () => {
    fc.assert(
      fc.property(randomLines, (at) => {
        expect(untrue(at, told(at))).toEqual([]);
        expect(told(at).join(' ')).not.toMatch(/\d bars of \d|––/);
        const analyses = analyseLine(at.asked, at.bars);
        expect(explainToStudent(at.asked, at.bars, { analyses })).toEqual(
          explainToStudent(at.asked, at.bars),
        );
      }),
      { numRuns: 150, seed: 18 },
    );
  });

  test('is found untrue where the notes say otherwise', () => {
    const at = { asked: request('| F | C7 |'), bars: line('F1 . - - - - - - | - - C2 . - - - -') };
    const [first] = told(at);
    expect(first).toMatch(/^Chord tones in every bar/);
    expect(
      untrue(at, [
        'No note on beat one in bar 1: drums and chops carry the beat through the gap.',
        'Listen for the root on beat one of every bar.',
        'Bar 2 ends on the root, the note that the chord is named after: it sounds finished.',
        'Every bar has the same rhythm: learn it once, clap it, then play it.',
        'Something else.',
      ]),
    ).toHaveLength(5);
  });

  test('every pattern of the drums has a stroke on every beat, so they are said to carry any gap', () => {
    for (const { id, metres } of FEELS)
      for (const { metre, drums, ways, variants } of metres)
        for (const rows of [
          drums,
          ...(ways?.others ?? []).map((way) => way.drums),
          // They take the place of hats and ride alone.
          ...(variants?.hats ?? []).map((hats) => [
            ...drums.filter(({ sound }) => !/hat|ride/.test(sound)),
            ...hats,
          ]),
        ])
          for (let beat = 0; beat < barTicks(metre); beat += beatTicks(metre)) {
            const struck = rows.some(({ grid }) =>
              /[xXsgo]/.test(grid[(beat * grid.length) / barTicks(metre)] ?? ''),
            );
            expect([id, metre, beat, struck]).toEqual([id, metre, beat, true]);
          }
  });

  test('chops carry only the gap that they are struck in, a bar without a note is told, and a rhythm within a phrase ends none', () => {
    // The chops of a walking bass fall on beat one and before beat three.
    const walking = 'C2 . E2 . G2 . A2 . | C2 . E2 . - - - - | C2 . E2 . G2 . A2 . | C2 . E2 . G2 . A2 .';
    const swing = explainToStudent(request('| C | C | C | C |', { feel: 'walking-swing' }), line(walking));
    expect(swing.join(' ')).toContain('A long silence in bar 2: the drums carry the beat through the gap.');
    const silent = line('C2 . . . - - - - | - - - - - - - - | C2 . . . - - - - | C2 . . . - - - -');
    const told = explainToStudent(request('| C | N.C. | C | C |'), silent).join(' ');
    expect(told).toContain('No note at all in bar 2: the drums carry the beat through the gap.');
    const alternating = line(
      'C2 . E2 . G2 . . . | C2 . E2 . G2 . A2 . | C2 . E2 . G2 . . . | C2 . E2 . G2 . A2 .',
    );
    expect(explainToStudent(request('| C | C | C | C |'), alternating).join(' ')).not.toContain(
      'another rhythm',
    );
    // The verb agrees with how the bars are named.
    const phrase = `${'C2 . E2 . G2 . . . | '.repeat(3)}C2 . . . - - - -`;
    const sixteen = line([phrase, phrase, phrase, phrase].join(' | '));
    expect(explainToStudent(request(`${'| C '.repeat(16)}|`), sixteen).join(' ')).toContain(
      'Every fourth bar from bar 4 to bar 16 has another rhythm',
    );
    // Many bars are told by what is left out of them, or by how regularly they come.
    const told16 = explainToStudent(request(`${'| C '.repeat(16)}|`), sixteen).join(' ');
    expect(told16).toContain('Every bar but every fourth bar from bar 4 to bar 16 has the same rhythm');
    expect(told16).not.toMatch(/(\d+(–\d+)?, ){4}/);
    // Single bars beside regular ones are several.
    const shared = new Set([1, 4, 6, 8, 10, 14]);
    const own = ['C2 . . . E2 . . .', 'C2 . E2 . G2 . . .', 'C2 . . . . . G2 .', 'C2 . . . E2 . G2 .'];
    const mixed = Array.from({ length: 14 }, (_, index) =>
      shared.has(index + 1) ? 'C2 . E2 . G2 . A2 .' : (own[index % 4] ?? ''),
    );
    expect(explainToStudent(request(`${'| C '.repeat(14)}|`), line(mixed.join(' | '))).join(' ')).toContain(
      'Bar 1, every second bar from bar 4 to bar 10 and bar 14 have the same rhythm',
    );
  });

  test('says nobody carries the beat who does not play, and no shape of the hand that the tuning has not', () => {
    const notes = line('F1 . - - - - - - | - - C2 . C3 . - -');
    const said = (asked: LineRequest, drums: boolean, chops: boolean) =>
      explainToStudent(asked, notes, { carriers: { drums, chops } }).join(' ');
    const asked = request('| F | C7 |');
    expect(said(asked, true, false)).toContain('the drums carry the beat through the gap');
    expect(said(asked, false, false)).toContain('you carry the beat through the gap yourself');
    expect(said(asked, true, true)).toContain('Two strings up and two frets up');
    const { instrument } = asked;
    const openStrings = instrument.openStrings.map((open, index, { length }) =>
      index === length - 1 ? ({ ...open, letter: 'D' } as const) : open,
    );
    expect(said({ ...asked, instrument: { ...instrument, openStrings } }, true, true)).not.toContain(
      'Two strings up',
    );
  });
});
