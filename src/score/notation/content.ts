import { barTicks, midiOf, type Sign } from '../../core/base';
import { beginsBar } from '../../core/chart';
import { romanNumeral } from '../../core/fretboard';
import {
  type BlankSheet,
  exitsOf,
  isHeldOver,
  type LineSheet,
  tiesOverBarLines,
  UNTIED,
} from '../../core/lesson';
import { swingsEighths } from '../../core/playing';
import { Recent } from '../recent';
import type { Steps } from '../steps';
import type { Engravable } from '../types';
import { signsKey, signsOf } from './events';
import { chartFacts, keysOf } from './facts';
import { keyboardContent, partContent } from './part-content';
import { lineAccidentals } from './signatures';
import type { BarFacts, Content, ContentBar, ContentExit, DynamicMark, Hairpin } from './types';

interface ContentWishes {
  /** Whether the chords' Roman numerals are worked out. */
  readonly numerals?: boolean;
  /** Of a line, its rhythm alone. */
  readonly rhythm?: boolean;
}

/**
 * What a sheet says, as signs in order, in steps of a bar; where they stand is for the layout.
 */
export function* contentOf(sheet: Engravable, { numerals, rhythm }: ContentWishes): Steps<Content> {
  if (sheet.kind === 'part') return yield* partContent(sheet);
  if (sheet.kind === 'keyboard') return yield* keyboardContent(sheet);
  if (sheet.kind === 'blank') return blankContent(sheet);
  const content = yield* lineContent(sheet, numerals === true);
  return rhythm === true ? rhythmOf(content) : content;
}

/** The rhythm of a line alone: nothing of its pitches, and nothing of where they are played. */
const rhythmOf = (content: Content): Content => ({ ...content, bars: content.bars.map(rhythmBar) });

const rhythmBar = (bar: ContentBar): ContentBar => ({
  ...bar,
  key: `rhythm ${bar.key}`,
  staff: 'rhythm',
  signature: null,
  changesSignature: null,
  chords: [],
  dynamics: [],
  hairpin: null,
  entered: null,
  words: null,
  events: bar.events.map((event) => ({
    ...event,
    height: 0,
    accidental: null,
    signs: event.signs.filter((sign) => CLAPPED.has(sign)),
    exit: null,
    fret: null,
    degree: '',
    finger: '',
    position: '',
  })),
});

/** What can be clapped of what stands at a note. */
const CLAPPED: ReadonlySet<Sign> = new Set<Sign>(['accent', 'strong accent', 'fermata']);

function blankContent(sheet: BlankSheet): Content {
  const bars = Array.from(
    { length: sheet.bars },
    (_, index): ContentBar => ({
      staff: 'bass',
      key: `blank ${index === 0} ${index === sheet.bars - 1} in ${sheet.metre.count}/${sheet.metre.unit}`,
      length: barTicks(sheet.metre),
      metre: sheet.metre,
      countedFrom: 0,
      showsMetre: index === 0,
      signature: null,
      changesSignature: null,
      blank: true,
      events: [],
      beams: [],
      triplets: [],
      chords: [],
      counts: [],
      startsSection: false,
      pickup: false,
      section: null,
      repeatStart: false,
      end: index === sheet.bars - 1 ? 'final' : 'single',
      times: null,
      ending: null,
      waySigns: [],
      wayWords: [],
      leadsToCoda: false,
      dynamics: [],
      hairpin: null,
      entered: null,
      words: null,
    }),
  );
  return {
    bars,
    numbers: bars.map((_, index) => index + 1),
    strings: sheet.instrument.openStrings.length,
    feel: null,
  };
}

/** Nothing in a bar, not even a rest: it is to be written in. */
const EMPTY = { blank: true, events: [], beams: [], triplets: [], counts: [] } as const;

const recentBars = new Recent<ContentBar>(2500);

function* lineContent(sheet: LineSheet, numerals: boolean): Steps<Content> {
  const facts = chartFacts(sheet, 'bass', numerals);
  const ties = tiesOverBarLines(sheet);
  const keys = keysOf(sheet);
  const accidentals = lineAccidentals(
    sheet.bars.map(({ notes }, bar) => {
      const held = isHeldOver(ties[bar] ?? UNTIED);
      return notes.map(({ note }, index) => ({ pitch: note.pitch, continued: index === 0 && held }));
    }),
    keys,
  );
  const positions = newPositions(sheet);
  const exits = contentExits(sheet);
  const dynamics = dynamicsOf(sheet);
  const hairpins = hairpinsInto(dynamics);
  const strings = sheet.instrument.openStrings.length;
  const bars: ContentBar[] = [];
  for (const [index, { written: bar, notes, words = null }] of sheet.bars.entries()) {
    yield;
    const ofChart = facts[index];
    if (ofChart === undefined) break;
    if (sheet.toWrite?.includes(index) === true) {
      bars.push({ ...ofChart, ...EMPTY, key: `to write ${JSON.stringify(ofChart)}` });
      continue;
    }
    const own: BarFacts = {
      ...ofChart,
      dynamics: dynamics[index] ?? [],
      hairpin: hairpins[index] ?? null,
      entered: leadingInto(exits[index - 1]),
      words,
    };
    const barNotes = {
      notes,
      accidentals: accidentals[index] ?? [],
      positions: positions[index] ?? [],
      exits: exits[index] ?? [],
      strings,
      ties: ties[index] ?? UNTIED,
      cutOff: sheet.excerpt === true && index === sheet.bars.length - 1,
      metre: bar.metre,
      countedIn: own.metre,
      countedFrom: own.countedFrom,
    };
    const key = JSON.stringify(own) + signsKey(barNotes);
    bars.push(recentBars.of(key, () => ({ ...own, ...signsOf(barNotes), key })));
  }
  return {
    bars,
    numbers: sheet.bars.map(({ written }) => written.number),
    strings,
    feel: swingsEighths(sheet) ? 'Swing eighths' : null,
  };
}

/** How the notes are left, as it is drawn. */
const contentExits = ({ bars }: LineSheet): readonly (readonly (ContentExit | null)[])[] =>
  exitsOf(bars).map((exits, bar) =>
    exits.map((exit, index) => {
      if (exit === null) return null;
      const from = bars[bar]?.notes[index]?.note;
      const to = exit.to && bars[exit.to.bar]?.notes[exit.to.note]?.note;
      const up = from && to ? Math.sign(midiOf(to.pitch) - midiOf(from.pitch)) : 0;
      return { sign: exit.sign, leads: exit.to !== null, rises: up > 0 ? 1 : up < 0 ? -1 : 0 };
    }),
  );

/** The last note's way out of a bar, where it leads into the next one. */
function leadingInto(before: readonly (ContentExit | null)[] | undefined): ContentExit | null {
  const last = before?.at(-1) ?? null;
  return last?.leads === true ? last : null;
}

/**
 * The dynamics of each bar where they are drawn. How loud it is from a bar's end on is said of what follows, and stands
 * under that (E. Gould, "Behind Bars", 2011, dynamics, from memory), unless something else stands there or the music
 * goes back from here.
 */
function dynamicsOf({ bars }: LineSheet): readonly (readonly DynamicMark[])[] {
  const drawn = bars.map(({ dynamics = [], written }): DynamicMark[] =>
    dynamics.map(({ at, level, hairpin }) => ({
      tick: Math.min(at, barTicks(written.metre)),
      level: level ?? null,
      hairpin: hairpin ?? null,
    })),
  );
  for (const [index, { written }] of bars.entries()) {
    const [here, next] = [drawn[index], drawn[index + 1]];
    const last = here?.at(-1);
    if (here === undefined || next === undefined || last === undefined) continue;
    const overLine = last.tick === barTicks(written.metre) && last.level !== null && next[0]?.tick !== 0;
    if (!overLine || written.repeatEnd !== null || written.navigation?.some((sign) => !beginsBar(sign)))
      continue;
    here.pop();
    next.unshift({ ...last, tick: 0 });
  }
  return drawn;
}

/** The hairpin that is open where each bar begins. */
function hairpinsInto(dynamics: readonly (readonly DynamicMark[])[]): readonly (Hairpin | null)[] {
  let open: Hairpin | null = null;
  return dynamics.map((marks) => {
    const into = open;
    const last = marks.at(-1);
    if (last) open = last.hairpin;
    return into;
  });
}

/** Where the hand takes another position: its numeral at the first fretted note there, '' at every other note. */
function newPositions(sheet: LineSheet): readonly (readonly string[])[] {
  let hand: number | null = null;
  return sheet.bars.map(({ notes }) =>
    notes.map(({ fingered }) => {
      if (fingered === null || fingered.fret === 0 || fingered.position === hand) return '';
      hand = fingered.position;
      return romanNumeral(hand);
    }),
  );
}
