import { pitchClassOf, sameName } from '../base';
import { describeKey, formatName, keySignature } from '../theory';
import { type HeardLine, hearLine, struck } from './hearing';
import { notesPerSecond, rhythmLevel } from './level';
import { findBreaches, ruleSentence } from './line-rules';
import { type BarModel, type LineModel, modelOf, type Stretch } from './model';
import type { Tone } from './tones';
import type { LineNotes, LineRequest } from './types';

/** What a careful colleague would point out about the music of a line. */
export interface MusicFinding {
  readonly kind: 'chord' | 'spelling' | 'foundation' | 'level' | 'tempo' | 'rule';
  /** Index of the written bar; null for the whole line. */
  readonly bar: number | null;
  /** One sentence: what stands there and why it matters. */
  readonly message: string;
  /** One sentence: what would mend it. */
  readonly repair: string;
}

/** Accidentals in the signature at each level (common practice, no source). */
const MOST_ACCIDENTALS: readonly number[] = [1, 2, 3, 3, 4, 5];

const numberOf = (model: LineModel, index: number): number =>
  model.request.chart.bars[index]?.number ?? index + 1;

/** Names that fit a chord in its key: its scale, which includes its own tones, and the slash bass. */
const namesOver = (stretch: Stretch) => [
  ...stretch.steps.flatMap((step) => (step ? [step.name] : [])),
  ...(stretch.home ? [stretch.home] : []),
];

/** A note that is spelled unlike the chord's own note of the same sound. */
function spellingFindings(model: LineModel, bar: BarModel, tones: readonly Tone[]): MusicFinding[] {
  return tones.flatMap((tone): MusicFinding[] => {
    if (!tone.stretch?.chord) return [];
    const names = namesOver(tone.stretch).filter((name) => pitchClassOf(name) === pitchClassOf(tone.name));
    const [right] = names;
    if (!right || names.some((name) => sameName(name, tone.name))) return [];
    const [written, meant] = [formatName(tone.name), formatName(right)];
    return [
      {
        kind: 'spelling',
        bar: bar.index,
        message: `Bar ${numberOf(model, bar.index)} writes ${written} where ${tone.stretch.chord.symbol} has ${meant}.`,
        repair: `Write ${meant}; it sounds the same.`,
      },
    ];
  });
}

/** A long note that belongs neither to its chord nor to the scale over it. */
function chordFindings(model: LineModel, bar: BarModel, tones: readonly Tone[]): MusicFinding[] {
  return tones.flatMap((tone): MusicFinding[] => {
    const { stretch } = tone;
    if (!stretch?.chord || tone.member || tone.duration < bar.beat) return [];
    if (stretch.steps.some((step) => step?.halfSteps === tone.interval)) return [];
    const nearest = [...stretch.steps]
      .flatMap((step) => (step?.member ? [step] : []))
      .sort(
        (one, other) => Math.abs(one.halfSteps - tone.interval) - Math.abs(other.halfSteps - tone.interval),
      )[0];
    return [
      {
        kind: 'chord',
        bar: bar.index,
        message: `Bar ${numberOf(model, bar.index)}: ${formatName(tone.name)} contradicts ${stretch.chord.symbol}.`,
        repair: nearest
          ? `Play ${formatName(nearest.name)}, the nearest note of the chord.`
          : 'Play the root.',
      },
    ];
  });
}

/** Chords of two beats or more that never get their root or fifth. */
function foundationFindings(model: LineModel, bar: BarModel, tones: readonly Tone[]): MusicFinding[] {
  if (tones.length === 0) return [];
  return bar.stretches.flatMap((stretch): MusicFinding[] => {
    if (!stretch.chord || stretch.end - stretch.start < 2 * bar.beat) return [];
    const inside = tones.filter(
      (tone) => tone.start < stretch.end && tone.start + tone.duration > stretch.start,
    );
    const carried = inside.some((tone) => {
      const above = (((tone.midi - stretch.rootClass) % 12) + 12) % 12;
      const fifth = above >= 6 && above <= 8 && stretch.members[above] === true;
      return above === 0 || fifth || tone.midi % 12 === stretch.homeClass;
    });
    if (carried) return [];
    return [
      {
        kind: 'foundation',
        bar: bar.index,
        message: `Bar ${numberOf(model, bar.index)}: ${stretch.chord.symbol} gets neither its root nor its fifth.`,
        repair: `Play ${stretch.home ? formatName(stretch.home) : 'the root'} within its first two beats.`,
      },
    ];
  });
}

function levelFindings(model: LineModel, bar: BarModel, tones: readonly Tone[]): MusicFinding[] {
  const { level, tempo } = model.request;
  const found = (message: string, repair: string): MusicFinding => ({
    kind: 'level',
    bar: bar.index,
    message,
    repair,
  });
  const number = numberOf(model, bar.index);
  const findings: MusicFinding[] = [];
  const asked = rhythmLevel(tones, bar.metre);
  if (asked > level)
    findings.push(
      found(
        `Bar ${number} has a rhythm of level ${asked}.`,
        `Choose a simpler idea or raise the level from ${level}.`,
      ),
    );
  const speed = notesPerSecond(struck(tones).length, bar.metre, tempo);
  if (speed > model.limits.notesPerSecond) {
    findings.push(
      found(
        `Bar ${number} asks for ${speed.toFixed(1)} notes a second; level ${level} allows ${model.limits.notesPerSecond}.`,
        'Take notes out or slow the tempo down.',
      ),
    );
  }
  const beyond = tones.find((tone) => tone.midi < 128 && !bar.demands.reach.onNeck[tone.midi]);
  if (beyond) {
    findings.push(
      found(
        `Bar ${number}: ${formatName(beyond.name)} lies beyond fret ${model.limits.highestFret}, the last of level ${level}.`,
        'Play it an octave lower or raise the level.',
      ),
    );
  }
  const strange = tones.find((tone) => isBeyondLevel(model, tone));
  if (strange) {
    findings.push(
      found(
        `Bar ${number}: ${formatName(strange.name)} over ${strange.stretch?.chord?.symbol} is a note of a later level.`,
        `Keep to the notes of level ${level} or raise it.`,
      ),
    );
  }
  return findings;
}

/** A step above the root that the level does not have yet; notes outside the scale come with half steps. */
function isBeyondLevel(model: LineModel, tone: Tone): boolean {
  const { stretch } = tone;
  if (!stretch?.chord || tone.midi % 12 === stretch.homeClass) return false;
  const step = stretch.steps.findIndex((other) => other?.halfSteps === tone.interval) + 1;
  return step === 0 ? !model.limits.halfSteps : !model.limits.steps.has(step);
}

function wholeFindings(model: LineModel): MusicFinding[] {
  const { feel, tempo, key, level } = model.request;
  const findings: MusicFinding[] = [];
  if (tempo < feel.tempo.least || tempo > feel.tempo.most) {
    const count = feel.tempo.count === 'one way' ? '' : ` in the ${feel.tempo.count} count`;
    findings.push({
      kind: 'tempo',
      bar: null,
      message: `${tempo} bpm lies outside ${feel.name.toLowerCase()}, which is played at ${feel.tempo.least} to ${feel.tempo.most}${count}.`,
      repair: `Set the tempo between ${feel.tempo.least} and ${feel.tempo.most}, or keep it as a practice tempo.`,
    });
  }
  const accidentals = Math.abs(keySignature(key));
  const most = MOST_ACCIDENTALS[level] ?? 5;
  if (accidentals > most) {
    findings.push({
      kind: 'level',
      bar: null,
      message: `${describeKey(key)} has ${accidentals} accidentals; level ${level} reads ${most} at most.`,
      repair: 'Transpose to a nearer key or raise the level.',
    });
  }
  return findings;
}

function ruleFindings(model: LineModel, heard: HeardLine): MusicFinding[] {
  return findBreaches(model, heard).map((breach) => {
    const [heardAs, mend] = ruleSentence(breach.rule).split('; ');
    const sentence = mend ?? 'choose another idea';
    return {
      kind: 'rule',
      bar: breach.bar,
      message: `Bar ${numberOf(model, breach.bar)}: ${heardAs}.`,
      repair: `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`,
    };
  });
}

/**
 * The musical side of the lesson check: what contradicts the chords, the spelling, the level, the feel's tempo
 * and the rules, each with its place and a repair. Silent on an unwritten line, but for its tempo and key.
 */
export function musicFindings(request: LineRequest, line: LineNotes): readonly MusicFinding[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  const written = heard.some((tones) => tones.length > 0);
  const inBars = model.bars.flatMap((bar) => {
    const tones = heard[bar.index] ?? [];
    return [
      ...chordFindings(model, bar, tones),
      ...spellingFindings(model, bar, tones),
      ...foundationFindings(model, bar, tones),
      ...levelFindings(model, bar, tones),
    ];
  });
  return [...wholeFindings(model), ...inBars, ...(written ? ruleFindings(model, heard) : [])];
}
