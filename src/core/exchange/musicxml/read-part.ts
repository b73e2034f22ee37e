import { TICKS_PER_QUARTER } from '../../base';
import type { Navigation } from '../../chart';
import type { Interval } from '../../theory';
import type { FoundMetre } from '../reading/found';
import { metreTicks } from '../reading/metres';
import { timesPlayed } from '../reading/passages';
import type { RawExtra, RawHarmony, RawKey, RawMeasure, RawNote, RawStaff, RawTempo } from './raw';
import { readKey, readMetre, readTranspose, readTuning } from './read-attributes';
import { readDirection } from './read-direction';
import { isAt, type ReadDynamics, readDynamics, readLevels, type StressAt, stressed } from './read-dynamics';
import { readNote } from './read-note';
import { extrasOf, slursOf } from './read-signs';
import { childOf, childrenOf, numberOf, readNumber, textOf, type XmlNode } from './xml-tree';

const UNTRANSPOSED: Interval = { steps: 0, halfSteps: 0 };
const COMMON: FoundMetre = { count: 4, unit: 4 };
/** No bar is longer, in ticks; a duration beyond it is a fault of the file. */
const LONGEST = TICKS_PER_QUARTER * 256;
const MOST_ENDINGS = 20;
/** Signs of a measure that stand for notes. */
const REPEAT_SIGNS = ['measure-repeat', 'beat-repeat', 'slash'] as const;

/** What a measure is filled with while it is read. */
interface Filling {
  readonly notes: RawNote[];
  readonly extras: RawExtra[];
  readonly harmonies: RawHarmony[];
  readonly dynamics: RawMeasure['dynamics'][number][];
  readonly stresses: StressAt[];
  readonly words: string[];
  readonly tempi: RawTempo[];
  readonly remarks: Set<string>;
  rehearsal: string | null;
  swing: number | null;
  readonly navigation: Set<Navigation>;
  forward: boolean;
  backward: number | null;
  endsEnding: boolean;
  length: number;
  /** What the measure keeps while a change at its end is for the next one. */
  metre: FoundMetre | null;
  key: RawKey | null;
}

/** Reads the measures of one part in order; what holds until it is changed is kept between them. */
export class PartReader {
  readonly staves = new Map<number, RawStaff>();
  private divisions = 1;
  private readonly intervals = new Map<number, Interval>();
  private wholePart = UNTRANSPOSED;
  private metre = COMMON;
  private key: RawKey | null = null;
  private ending: readonly number[] | null = null;
  private cursor = 0;
  private lastStart = 0;
  /** Numbers of the slurs that are open, by voice. */
  private readonly slurs = new Set<string>();

  readMeasure(measure: XmlNode): RawMeasure {
    const filling: Filling = {
      notes: [],
      extras: [],
      harmonies: [],
      dynamics: [],
      stresses: [],
      words: [],
      tempi: [],
      remarks: new Set(),
      rehearsal: null,
      swing: null,
      navigation: new Set(),
      forward: false,
      backward: null,
      endsEnding: false,
      length: 0,
      metre: null,
      key: null,
    };
    this.cursor = 0;
    this.lastStart = 0;
    for (const node of measure.children) this.readChild(node, filling);
    const { ending } = this;
    if (filling.endsEnding) this.ending = null;
    const { remarks, navigation, stresses, endsEnding: _, ...read } = filling;
    for (const { at, staff } of stresses)
      if (!filling.notes.some((note) => note.staff === staff && isAt(note, at)))
        filling.extras.push({ staff, voice: '', what: 'accents where no note begins' });
    return {
      ...read,
      notes: filling.notes.map((note) => stressed(note, stresses)),
      navigation: [...navigation],
      remarks: [...remarks],
      implicit: measure.attributes.implicit === 'yes' || measure.attributes.number === '0',
      metre: filling.metre ?? this.metre,
      key: filling.key ?? this.key,
      ending,
    };
  }

  private readChild(node: XmlNode, filling: Filling): void {
    switch (node.name) {
      case 'note':
        this.readNote(node, filling);
        break;
      case 'backup':
        this.moveTo(this.cursor - this.durationOf(node), filling);
        break;
      case 'forward':
        this.moveTo(this.cursor + this.durationOf(node), filling);
        break;
      case 'attributes':
        this.readAttributes(node, filling);
        break;
      case 'direction':
      case 'sound':
        this.readDirection(node, filling);
        break;
      case 'harmony':
        filling.harmonies.push({
          at: Math.max(0, this.cursor + this.ticksOf(numberOf(node, 'offset'))),
          node,
          interval: this.intervalOf(1),
        });
        break;
      case 'barline':
        this.readBarline(node, filling);
        break;
    }
  }

  private ticksOf(divisions: number | null): number {
    return ((divisions ?? 0) * TICKS_PER_QUARTER) / this.divisions;
  }

  private durationOf(node: XmlNode): number {
    return Math.min(LONGEST, Math.max(0, this.ticksOf(numberOf(node, 'duration'))));
  }

  private moveTo(tick: number, filling: Filling): void {
    this.cursor = Math.min(LONGEST, Math.max(0, tick));
    filling.length = Math.max(filling.length, this.cursor);
  }

  private intervalOf(staff: number): Interval {
    return this.intervals.get(staff) ?? this.wholePart;
  }

  private readNote(node: XmlNode, filling: Filling): void {
    const staff = numberOf(node, 'staff') ?? 1;
    const voice = textOf(node, 'voice') ?? '1';
    const extra = (what: string): number => filling.extras.push({ staff, voice, what });
    if (childOf(node, 'grace') !== undefined) {
      extra('grace notes');
      return;
    }
    const inChord = childOf(node, 'chord') !== undefined;
    const duration = this.durationOf(node);
    const start = inChord ? this.lastStart : this.cursor;
    this.lastStart = start;
    if (!inChord) this.moveTo(this.cursor + duration, filling);
    if (childOf(node, 'rest') !== undefined) return;
    if (childOf(node, 'cue') !== undefined) {
      extra('cue notes');
      return;
    }
    for (const what of new Set(extrasOf(node))) extra(what);
    this.addDynamics(
      readLevels(
        childrenOf(node, 'notations').flatMap((notations) => childrenOf(notations, 'dynamics')),
        start,
      ),
      staff,
      filling,
    );
    const slurred = this.slurredAt(node, voice);
    const note = readNote(node, {
      start,
      duration,
      staff,
      voice,
      interval: this.intervalOf(staff),
      slurred,
    });
    if (note !== null && duration > 0) filling.notes.push(note);
    else
      extra(
        childOf(node, 'unpitched') === undefined
          ? 'notes without a readable pitch or length'
          : 'unpitched notes',
      );
  }

  /** Whether a slur leads on from a note: it does from each but the last under it. */
  private slurredAt(node: XmlNode, voice: string): boolean {
    const { starts, stops } = slursOf(node);
    for (const number of stops) this.slurs.delete(`${voice} ${number}`);
    for (const number of starts) this.slurs.add(`${voice} ${number}`);
    return [...this.slurs].some((open) => open.startsWith(`${voice} `));
  }

  private addDynamics({ signs, stresses, others }: ReadDynamics, staff: number, filling: Filling): void {
    filling.dynamics.push(...signs.map((sign) => ({ ...sign, staff })));
    filling.stresses.push(...stresses.map((stress) => ({ ...stress, staff })));
    if (stresses.length > 0)
      filling.remarks.add(
        'Signs like sf are read as accents, and what goes on softly, as after fp, as p or pp',
      );
    if (others) filling.extras.push({ staff, voice: '', what: 'dynamics other than ppp to fff' });
  }

  private readAttributes(node: XmlNode, filling: Filling): void {
    const divisions = numberOf(node, 'divisions');
    if (divisions !== null && divisions > 0) this.divisions = divisions;
    for (const transpose of childrenOf(node, 'transpose')) {
      const interval = readTranspose(transpose);
      const staff = readNumber(transpose.attributes.number);
      if (interval === null) filling.remarks.add('A transposition that makes no sense is left out');
      else if (staff === null) this.wholePart = interval;
      else this.intervals.set(staff, interval);
    }
    if (
      childrenOf(node, 'measure-style').some((style) => REPEAT_SIGNS.some((sign) => childOf(style, sign)))
    ) {
      filling.remarks.add(
        'A sign that repeats beats or bars is left out, and only notes that stand there are read',
      );
    }
    this.readTime(childOf(node, 'time'), filling);
    this.readKeySignature(childOf(node, 'key'), filling);
    this.readStaves(node);
  }

  /** A signature behind the last note warns of the next bar, in which it holds. */
  private atEnd(): boolean {
    return this.cursor > 0 && this.cursor >= metreTicks(this.metre) - 1;
  }

  private readTime(time: XmlNode | undefined, filling: Filling): void {
    if (time === undefined) return;
    const metre = readMetre(time);
    if (metre === null) filling.remarks.add('A time signature without plain beats is left out');
    else if (this.atEnd()) filling.metre ??= this.metre;
    else if (this.cursor > 0)
      filling.remarks.add('A metre that changes within the bar holds for the whole bar');
    this.metre = metre ?? this.metre;
  }

  private readKeySignature(key: XmlNode | undefined, filling: Filling): void {
    if (key === undefined) return;
    const read = readKey(key, this.intervalOf(1));
    if (read === null) filling.remarks.add('A key signature that is not one of the usual ones is left out');
    else if (this.atEnd()) filling.key ??= this.key;
    else if (this.cursor > 0 && this.key !== null) {
      filling.remarks.add('A key that changes within the bar holds for the whole bar');
    }
    this.key = read ?? this.key;
  }

  private readStaves(node: XmlNode): void {
    const change = (staff: number, facts: Partial<RawStaff>): void => {
      const known = this.staves.get(staff) ?? { clef: '', tuning: null, capo: false };
      this.staves.set(staff, { ...known, ...facts });
    };
    for (const clef of childrenOf(node, 'clef')) {
      const staff = readNumber(clef.attributes.number) ?? 1;
      // A part is known by the clef it begins in.
      if ((this.staves.get(staff)?.clef ?? '') === '') change(staff, { clef: textOf(clef, 'sign') ?? '' });
    }
    for (const details of childrenOf(node, 'staff-details')) {
      const staff = readNumber(details.attributes.number) ?? 1;
      const lines = readTuning(details);
      const capo = numberOf(details, 'capo') ?? 0;
      if (lines !== null) change(staff, { tuning: { lines } });
      if (capo > 0) change(staff, { capo: true });
    }
  }

  private readDirection(node: XmlNode, filling: Filling): void {
    const { tempo, swing, rehearsal, words, navigation } = readDirection(node, this.cursor === 0);
    if (tempo !== null) filling.tempi.push({ at: this.cursor, quarters: tempo });
    filling.swing = swing ?? filling.swing;
    filling.rehearsal ??= rehearsal;
    filling.words.push(...words);
    if (navigation !== null) filling.navigation.add(navigation);
    const at = Math.max(0, this.cursor + this.ticksOf(numberOf(node, 'offset')));
    this.addDynamics(readDynamics(node, at), numberOf(node, 'staff') ?? 1, filling);
  }

  private readBarline(node: XmlNode, filling: Filling): void {
    const repeat = childOf(node, 'repeat');
    if (node.attributes.location === 'middle' && repeat !== undefined) {
      filling.remarks.add('A repeat within the bar is left out');
    } else if (repeat?.attributes.direction === 'forward') filling.forward = true;
    else if (repeat?.attributes.direction === 'backward') {
      filling.backward = timesPlayed(readNumber(repeat.attributes.times) ?? 2);
    }
    for (const ending of childrenOf(node, 'ending')) {
      if (ending.attributes.type === 'start') {
        const numbers = endingNumbers(ending);
        if (numbers.length === 0) filling.remarks.add('An ending without a number is left out');
        this.ending = numbers.length === 0 ? null : numbers;
      } else filling.endsEnding = true;
    }
  }
}

function endingNumbers(ending: XmlNode): readonly number[] {
  const said = [ending.attributes.number ?? '', ending.text].find((text) => /\d/.test(text)) ?? '';
  const numbers = [...said.matchAll(/\d{1,2}/g)].map(([digits]) => Number(digits));
  return [...new Set(numbers)]
    .filter((number) => number >= 1 && number <= MOST_ENDINGS)
    .sort((a, b) => a - b);
}
