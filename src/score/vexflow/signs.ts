import {
  Accidental,
  Beam,
  Dot,
  ModifierContext,
  type Note,
  Stave,
  StaveNote,
  Stem,
  VexFlow,
} from 'vexflow/core';
import { LETTERS, remembered } from '../../core/base';
import { type Mark, moveMark } from '../ink';
import { Recent } from '../recent';
import { singleBeam, steepestOver } from '../signs/beam';
import { singleInk } from '../signs/single';
import { tidy } from '../signs/tidy';
import type { HeadSpec, SignSpec } from '../signs/types';
import { InkContext } from './ink-context';
import { measureByTables } from './ruler';

measureByTables();
VexFlow.setFonts('Bravura', 'Academico');

let known: Stave | null = null;

/** A staff whose top line lies at 0; notes are set against it, its own lines are not drawn. A bass line needs none. */
function staff(): Stave {
  known ??= new Stave(0, -40, 1000);
  return known;
}

/** A note at a place of our own choosing: the middle of its head. */
class PlacedNote extends StaveNote {
  centre = 0;

  override getAbsoluteX(): number {
    return this.centre - this.getGlyphWidth() / 2;
  }
}

/** A dot in its usual font: taking over the note's font would need a style sheet to read it. */
class PlainDot extends Dot {
  override setNote(note: Note): this {
    this.note = note;
    return this;
  }
}

/** The middle line of the bass staff is D3. */
const MIDDLE_OCTAVE = 3;

const REST = ['r/4'];

const headsOf = ({ heads, height, accidental, courtesy, ghost }: SignSpec): readonly HeadSpec[] =>
  heads ?? [{ height, accidental, courtesy, cross: ghost }];

function keyText({ height, cross }: HeadSpec): string {
  const steps = MIDDLE_OCTAVE * 7 + LETTERS.indexOf('D') + height;
  const letter = LETTERS[((steps % 7) + 7) % 7] ?? 'C';
  return `${letter.toLowerCase()}/${Math.floor(steps / 7)}${cross ? '/x' : ''}`;
}

const STEM = 35;
const COURTESY_POINTS = 24;
const HALF_SPACE = 5;

/** From the head that is nearest to the stem's end to the middle line, where the stem leads there. */
function reachOf(spec: SignSpec): number {
  const heights = headsOf(spec).map(({ height }) => height);
  const nearest = spec.stem === 'up' ? Math.max(...heights) : Math.min(...heights);
  const leadsThere = (spec.stem === 'up') === nearest < 0;
  return leadsThere ? Math.abs(nearest) * HALF_SPACE : 0;
}

function placedNote(spec: SignSpec, centre: number): PlacedNote {
  const heads = spec.kind === 'rest' ? [] : headsOf(spec);
  const note = new PlacedNote({
    keys: spec.kind === 'rest' ? REST : heads.map(keyText),
    duration: spec.value === 1 ? 'w' : String(spec.value),
    ...(spec.kind === 'rest' ? { type: 'r' } : {}),
    dots: spec.dots,
    clef: 'bass',
    stemDirection: spec.stem === 'up' ? Stem.UP : Stem.DOWN,
    strokePx: 4,
  });
  note.setStave(staff());
  note.centre = centre;
  note.setLedgerLineStyle({ lineWidth: 1.6 });
  // A note outside the staff has a stem that reaches the middle line.
  if (spec.kind === 'note') note.setStemLength(Math.max(STEM, reachOf(spec)));
  for (const [index, head] of heads.entries()) {
    if (head.accidental === null) continue;
    const accidental = new Accidental(head.accidental);
    if (head.courtesy) accidental.setAsCautionary();
    note.addModifier(accidental, index);
    if (head.courtesy) accidental.setFontSize(COURTESY_POINTS);
  }
  if (spec.dots) for (const index of note.keys.keys()) note.addModifier(new PlainDot(), index);
  const modifiers = new ModifierContext();
  note.addToModifierContext(modifiers);
  note.preFormat();
  return note;
}

/** Ink is the same wherever a sign stands, so each kind of sign is drawn once. */
const kept = new Map<string, readonly Mark[]>();

const remember = (key: string, draw: (context: InkContext) => void): readonly Mark[] =>
  remembered(kept, key, () => {
    const context = new InkContext();
    draw(context);
    return tidy(context.marks);
  });

/**
 * A note or rest with its accidental, dot and ledger lines, and unless it is beamed with its stem and flag; the
 * middle of its head is at x = 0, the staff's top line at y = 0.
 */
export function signInk(spec: SignSpec, beamed: boolean): readonly Mark[] {
  const key = JSON.stringify([spec, beamed]);
  if (spec.heads === undefined) return remembered(kept, key, () => singleInk(spec, beamed));
  return remember(key, (context) => {
    const note = placedNote(spec, 0);
    if (beamed) new Beam([note, placedNote(spec, 50)]);
    note.setContext(context).draw();
  });
}

/** Stems and beams of notes that are joined, the middles of their heads at `centres`. */
export function beamInk(specs: readonly SignSpec[], centres: readonly number[]): readonly Mark[] {
  const [first = 0] = centres;
  const apart = centres.map((centre) => Math.round((centre - first) * 100) / 100);
  if (specs.every(({ heads }) => heads === undefined)) return singleBeam(specs, apart, first);
  const group = specs.map(specKey).join();
  const marks = recentBeams.of(`${group} ${apart.join(' ')}`, () => drawBeam(group, specs, apart));
  return marks.map((mark) => moveMark(mark, first, 0));
}

const specKeys = new WeakMap<SignSpec, string>();

function specKey(spec: SignSpec): string {
  const known = specKeys.get(spec);
  if (known !== undefined) return known;
  const key = JSON.stringify(spec);
  specKeys.set(spec, key);
  return key;
}

const recentBeams = new Recent<readonly Mark[]>(500);

/** Notes under a beam, which are dear to make: a new beam sets their stems anew, wherever they stand. */
const recentGroups = new Recent<readonly PlacedNote[]>(500);

function drawBeam(group: string, specs: readonly SignSpec[], centres: readonly number[]): readonly Mark[] {
  const context = new InkContext();
  const notes = recentGroups.of(group, () => specs.map((spec) => placedNote(spec, 0)));
  for (const [index, note] of notes.entries()) note.centre = centres[index] ?? 0;
  const beam = new Beam([...notes]);
  const steepest = steepestOver((centres.at(-1) ?? 0) - (centres[0] ?? 0));
  beam.renderOptions.maxSlope = steepest;
  beam.renderOptions.minSlope = -steepest;
  beam.setContext(context).draw();
  return tidy(context.marks);
}
