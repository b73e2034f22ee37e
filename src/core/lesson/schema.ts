import * as z from 'zod/mini';
import {
  type Alteration,
  type Bpm,
  DYNAMIC_LEVELS,
  excludes,
  type Finger,
  type Fret,
  LETTERS,
  MARK_CHOICES,
  type MidiNumber,
  marksOf,
  type StringNumber,
  type Ticks,
} from '../base';
import { DRUM_WAYS, FEEL_IDS } from '../feel';
import type { HandSystem } from '../fretboard';
import { LEVELS, type Level, MOVABLE_THINGS, STAGE_THINGS, TECHNIQUES } from '../line';
import { MODES, NAMINGS } from '../theory';
import { COUNTS } from './count';
import { LESSON_LIMITS } from './limits';
import { CLICK_BEATS, PLAYING_LIMITS } from './playing';
import {
  BAR_WORDS_LENGTH,
  HANDOUT_BLOCKS,
  LESSON_FORMAT,
  LESSON_VERSION,
  type Lesson,
  MOST_STAGE_ROUNDS,
  OPTIONAL_IN_HANDOUT,
  OPTIONAL_IN_LINE,
  PRACTICE_STEPS,
  STAGE_VIEWS,
} from './types';

const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));

/** A number already checked, given the unit's brand; the schema is the one place where that is allowed. */
const branded = <Unit extends number>(schema: z.ZodMiniType<number>) =>
  z.pipe(
    schema,
    z.transform((value) => value as Unit),
  );

const ticksSchema = branded<Ticks>(whole(0, 960 * 4 * 64));
const fretSchema = branded<Fret>(whole(0, 36));
const bpmSchema = branded<Bpm>(z.number().check(z.gte(20), z.lte(400)));
const name = z.string().check(z.maxLength(LESSON_LIMITS.title));
const harmony = z.string().check(z.maxLength(LESSON_LIMITS.harmony));

const spelledName = {
  letter: z.enum(LETTERS),
  alteration: branded<Alteration>(whole(-2, 2)),
};

const pitchSchema = z.object({ ...spelledName, octave: whole(-1, 8) });

const keySchema = z.object({ tonic: z.object(spelledName), mode: z.enum(MODES) });

const metreSchema = z.object({
  count: whole(1, 24),
  unit: z.union([z.literal(2), z.literal(4), z.literal(8)]),
});

const pinsSchema = z.object({
  string: z.exactOptional(branded<StringNumber>(whole(1, LESSON_LIMITS.strings))),
  fret: z.exactOptional(fretSchema),
  finger: z.exactOptional(branded<Finger>(whole(0, 4))),
});

const marksSchema = z
  .object({
    stress: z.exactOptional(z.enum(MARK_CHOICES.stress)),
    length: z.exactOptional(z.enum(MARK_CHOICES.length)),
    damping: z.exactOptional(z.enum(MARK_CHOICES.damping)),
    pluck: z.exactOptional(z.enum(MARK_CHOICES.pluck)),
    entry: z.exactOptional(z.enum(MARK_CHOICES.entry)),
    exit: z.exactOptional(z.enum(MARK_CHOICES.exit)),
    pause: z.exactOptional(z.enum(MARK_CHOICES.pause)),
  })
  .check(
    z.refine((marks) => {
      const all = marksOf({ marks });
      return all.every((one) => all.every((other) => !excludes(one, other)));
    }, 'a note that rings on can be neither dead nor muted'),
  );

const noteSchema = z.object({
  start: ticksSchema,
  duration: branded<Ticks>(whole(1, 960 * 4 * 16)),
  pitch: pitchSchema,
  tiedOn: z.exactOptional(z.boolean()),
  marks: z.exactOptional(marksSchema),
  pins: z.exactOptional(pinsSchema),
});

const sortedNotes = z.array(noteSchema).check(
  z.maxLength(LESSON_LIMITS.notesInBar),
  z.refine(
    (notes) =>
      notes.every((note, index) => {
        const before = notes[index - 1];
        return before === undefined || before.start + before.duration <= note.start;
      }),
    'the notes of a bar must follow each other without overlapping',
  ),
);

const dynamicsSchema = z
  .array(
    z.object({
      at: ticksSchema,
      level: z.exactOptional(z.enum(DYNAMIC_LEVELS)),
      hairpin: z.exactOptional(z.enum(['crescendo', 'diminuendo'])),
    }),
  )
  .check(
    z.maxLength(LESSON_LIMITS.notesInBar),
    z.refine(
      (signs) => signs.every(({ at }, index) => index === 0 || (signs[index - 1]?.at ?? 0) < at),
      'the dynamics of a bar must follow each other, one a place',
    ),
  );

export const lineBarSchema = z.object({
  id: name,
  harmony,
  origin: z.enum(['composed', 'idea', 'hand']),
  kept: z.boolean(),
  notes: sortedNotes,
  over: z.exactOptional(sortedNotes),
  position: z.exactOptional(branded<Fret>(whole(1, 36))),
  dynamics: z.exactOptional(dynamicsSchema),
  words: z.exactOptional(z.string().check(z.minLength(1), z.maxLength(BAR_WORDS_LENGTH))),
});

const techniquesSchema = z.array(z.enum(TECHNIQUES)).check(z.maxLength(TECHNIQUES.length));
const midiSchema = branded<MidiNumber>(whole(0, 127));

const aimSchema = z.object({
  where: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('line') }),
    z.object({ kind: z.literal('section'), id: name }),
    z.object({ kind: z.literal('bar'), id: name }),
  ]),
  wanted: z.exactOptional(techniquesSchema),
  allowed: z.exactOptional(techniquesSchema),
  forbidden: z.exactOptional(techniquesSchema),
  density: z.exactOptional(z.enum(['sparse', 'busy', 'any'])),
  silence: z.exactOptional(z.number().check(z.gte(0), z.lte(1))),
  lowest: z.exactOptional(midiSchema),
  highest: z.exactOptional(midiSchema),
  position: z.exactOptional(fretSchema),
});

const sectionSchema = z.object({ id: name, name: z.nullable(name) });

export const takeSchema = z.object({
  id: name,
  seed: whole(0, 0xffffffff),
  cost: z.nullable(z.number()),
  bars: z.array(z.object({ harmony, notes: sortedNotes })).check(z.maxLength(LESSON_LIMITS.bars)),
});

const HAND_SYSTEMS = ['one finger per fret', '1-2-4', 'automatic'] as const satisfies readonly HandSystem[];

const handSchema = z.object({
  openStrings: z.enum(['avoid', 'allow', 'prefer']),
  comfortableSpan: z.number().check(z.gte(30), z.lte(250)),
  reach: z.number().check(z.gte(30), z.lte(300)),
  highestFret: fretSchema,
  system: z.exactOptional(z.enum(HAND_SYSTEMS)),
  oneTwoFourBelow: z.exactOptional(fretSchema),
});

/** By written numbers: a pickup is bar 0. */
const passageSchema = z
  .object({ first: whole(0, LESSON_LIMITS.bars), last: whole(0, LESSON_LIMITS.bars) })
  .check(z.refine((passage) => passage.first <= passage.last, 'a passage must end after it begins'));

const turn = whole(1, PLAYING_LIMITS.turn);

const within = ({ least, most }: { readonly least: number; readonly most: number }) =>
  z.number().check(z.gte(least), z.lte(most));

const volume = z.exactOptional(within(PLAYING_LIMITS.volume));

const playingSchema = z.object({
  volumes: z.exactOptional(
    z.object({ bass: volume, drums: volume, chops: volume, organ: volume, click: volume }),
  ),
  bass: z.boolean(),
  drums: z.boolean(),
  chops: z.boolean(),
  organ: z.boolean(),
  click: z.boolean(),
  countIn: z.union([z.literal(0), z.literal(1), z.literal(2)]),
  loop: z.boolean(),
  passage: z.nullable(passageSchema),
  tempoShare: within(PLAYING_LIMITS.share),
  bassPlan: z.exactOptional(
    z.discriminatedUnion('kind', [
      z.object({ kind: z.literal('every round') }),
      z.object({ kind: z.literal('every second round') }),
      z.object({ kind: z.literal('call and response'), bars: turn }),
    ]),
  ),
  clickPlan: z.exactOptional(
    z.object({
      beats: z.enum(CLICK_BEATS),
      dropOut: z.nullable(z.object({ sounding: turn, silent: turn })),
    }),
  ),
  emptyBar: z.exactOptional(z.boolean()),
  intro: z.exactOptional(z.boolean()),
  ending: z.exactOptional(z.boolean()),
  drumWay: z.exactOptional(z.enum(DRUM_WAYS)),
  humanised: z.exactOptional(z.boolean()),
  ladder: z.exactOptional(
    z.object({
      climbed: z.boolean(),
      rungs: z
        .array(
          z.object({
            tempo: branded<Bpm>(within(PLAYING_LIMITS.tempo)),
            rounds: whole(1, PLAYING_LIMITS.rounds),
          }),
        )
        .check(z.minLength(1), z.maxLength(PLAYING_LIMITS.rungs)),
    }),
  ),
});

const feelSchema = z.enum(FEEL_IDS);

const blocksSchema = z
  .array(z.enum(HANDOUT_BLOCKS))
  .check(z.refine((blocks) => new Set(blocks).size === blocks.length, 'a part of the handout comes twice'));

const meantSchema = z.object({
  bar: z.nullable(name),
  about: z.enum(['notes', 'aims', 'hand', 'music']),
  fingerprint: whole(0, 0xffffffff),
});

const noneTwice = <Name>(names: readonly Name[]) => new Set(names).size === names.length;

const buildUpSchema = z.object({
  view: z.enum(STAGE_VIEWS),
  order: z.array(z.enum(MOVABLE_THINGS)).check(z.refine(noneTwice, 'a thing comes twice in the build-up')),
  leftOut: z.array(z.enum(STAGE_THINGS)).check(z.refine(noneTwice, 'a stage is left out twice')),
  rounds: whole(1, MOST_STAGE_ROUNDS),
  edits: z
    .array(z.object({ stage: z.enum(STAGE_THINGS), bar: name, harmony, notes: sortedNotes }))
    .check(z.maxLength(LESSON_LIMITS.bars)),
});

const lineStart = {
  name,
  chartText: z.string().check(z.maxLength(LESSON_LIMITS.text)),
  key: z.nullable(keySchema),
  metre: metreSchema,
  tempo: bpmSchema,
  count: z.exactOptional(z.enum(COUNTS)),
  feel: feelSchema,
  level: branded<Level>(whole(LEVELS[0], LEVELS.length - 1)),
  techniques: techniquesSchema,
  hand: handSchema,
  seed: whole(0, 0xffffffff),
  playing: playingSchema,
};

const lineEnd = {
  aims: z.array(aimSchema).check(z.maxLength(2 * LESSON_LIMITS.bars)),
  sections: z.array(sectionSchema).check(z.maxLength(LESSON_LIMITS.sections)),
  parkedSections: z.array(sectionSchema).check(z.maxLength(LESSON_LIMITS.sections)),
  meant: z.exactOptional(z.array(meantSchema).check(z.maxLength(LESSON_LIMITS.bars))),
  takes: z.array(takeSchema).check(z.maxLength(LESSON_LIMITS.takes)),
  buildUp: z.exactOptional(buildUpSchema),
  leftOut: z.exactOptional(blocksSchema),
};

const barsSchema = z.array(lineBarSchema).check(z.maxLength(LESSON_LIMITS.bars));

export const linePieceSchema = z.object({
  kind: z.literal('line'),
  id: name,
  ...lineStart,
  bars: barsSchema,
  parked: barsSchema,
  ...lineEnd,
});

export const blankPieceSchema = z.object({
  kind: z.literal('blank'),
  id: name,
  name,
  metre: metreSchema,
  bars: whole(1, 64),
  leftOut: z.exactOptional(blocksSchema),
});

const handoutShape = {
  paper: z.enum(['A4', 'Letter']),
  degrees: z.boolean(),
  fingers: z.boolean(),
  counting: z.exactOptional(z.boolean()),
  numerals: z.exactOptional(z.boolean()),
  positions: z.exactOptional(z.boolean()),
  parts: z.exactOptional(z.enum(['both', 'staff', 'tab'])),
  blocks: z.exactOptional(blocksSchema),
  print: z.exactOptional(z.enum(['normal', 'large'])),
  onePage: z.exactOptional(z.boolean()),
  twoUp: z.exactOptional(z.boolean()),
  binding: z.exactOptional(z.boolean()),
  code: z.exactOptional(z.boolean()),
  steps: z.exactOptional(
    z.array(z.string().check(z.maxLength(PRACTICE_STEPS.length))).check(z.maxLength(PRACTICE_STEPS.most)),
  ),
  header: z.exactOptional(name),
  student: z.exactOptional(name),
  logo: z.exactOptional(
    z
      .string()
      .check(z.maxLength(LESSON_LIMITS.logo), z.regex(/^data:image\/(png|jpeg);base64,[A-Za-z0-9+/=]+$/)),
  ),
};

const pieceSchema = z.discriminatedUnion('kind', [linePieceSchema, blankPieceSchema]);

const textShape = {
  title: name,
  notes: z.string().check(z.maxLength(LESSON_LIMITS.text)),
  noteNames: z.exactOptional(z.enum(NAMINGS)),
};

const instrumentSchema = z.object({
  openStrings: z.array(pitchSchema).check(z.minLength(3), z.maxLength(LESSON_LIMITS.strings)),
  frets: whole(12, 36),
  scaleLength: z.number().check(z.gte(300), z.lte(1200)),
  leftHanded: z.exactOptional(z.boolean()),
});

type Shape = Readonly<Record<string, z.ZodMiniType>>;

/** The same fields, each of which may be left out. */
const partOf = <Fields extends Shape>(shape: Fields) =>
  // Each entry is wrapped, and no name is added or lost.
  Object.fromEntries(Object.entries(shape).map(([field, schema]) => [field, z.exactOptional(schema)])) as {
    readonly [Field in keyof Fields]: z.ZodMiniExactOptional<Fields[Field]>;
  };

const ids = (most: number) => z.array(name).check(z.maxLength(most));

/** Octaves that a version may lie from its tune, in staff steps and half steps. */
const MOST_OCTAVES = 4;

const versionNotesSchema = z.object({
  harmony,
  origin: lineBarSchema.shape.origin,
  notes: sortedNotes,
  over: z.exactOptional(sortedNotes),
  was: sortedNotes,
});

export const versionBarSchema = z.object({
  id: name,
  written: z.exactOptional(versionNotesSchema),
  kept: z.exactOptional(z.boolean()),
  position: z.exactOptional(fretSchema),
  dynamics: z.exactOptional(dynamicsSchema),
  words: z.exactOptional(z.string().check(z.maxLength(BAR_WORDS_LENGTH))),
});

export const versionLineSchema = z.object({
  id: name,
  moved: z.exactOptional(
    z.object({
      steps: whole(-7 * MOST_OCTAVES, 7 * MOST_OCTAVES),
      halfSteps: whole(-12 * MOST_OCTAVES, 12 * MOST_OCTAVES),
    }),
  ),
  own: z.object(partOf({ ...lineStart, ...lineEnd })),
  without: z.exactOptional(z.array(z.enum(OPTIONAL_IN_LINE))),
  bars: z.exactOptional(z.array(versionBarSchema).check(z.maxLength(2 * LESSON_LIMITS.bars))),
  added: z.exactOptional(z.array(lineBarSchema).check(z.maxLength(2 * LESSON_LIMITS.bars))),
  order: z.exactOptional(ids(LESSON_LIMITS.bars)),
  parked: z.exactOptional(ids(LESSON_LIMITS.bars)),
});

const uniqueIds = (things: readonly { readonly id: string }[]) =>
  new Set(things.map((thing) => thing.id)).size === things.length;

export const versionSchema = z.object({
  id: name,
  name,
  own: z.object({ ...partOf(textShape), instrument: instrumentSchema }),
  handout: z.exactOptional(z.object(partOf(handoutShape))),
  bare: z.exactOptional(z.array(z.enum(OPTIONAL_IN_HANDOUT))),
  lines: z
    .array(versionLineSchema)
    .check(z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two lines of a version share one id')),
  pieces: z.exactOptional(
    z
      .array(pieceSchema)
      .check(z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two pieces share one id')),
  ),
  without: z.exactOptional(ids(LESSON_LIMITS.pieces)),
  order: z.exactOptional(ids(LESSON_LIMITS.pieces)),
});

const headShape = {
  format: z.literal(LESSON_FORMAT),
  version: z.literal(LESSON_VERSION),
  id: name,
  title: textShape.title,
  notes: textShape.notes,
  instrument: instrumentSchema,
  handout: z.object(handoutShape),
  noteNames: textShape.noteNames,
  open: z.exactOptional(name),
  idsUpTo: z.exactOptional(whole(0, Number.MAX_SAFE_INTEGER)),
};

/** The lesson without its pieces. */
export const lessonHeadSchema = z.object(headShape);

/** The one validator of the document, used on every way in. */
export const lessonSchema = z.object({
  ...headShape,
  pieces: z
    .array(pieceSchema)
    .check(z.minLength(1), z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two pieces share one id')),
  versions: z.exactOptional(
    z
      .array(versionSchema)
      .check(z.maxLength(LESSON_LIMITS.versions), z.refine(uniqueIds, 'two versions share one id')),
  ),
});

/** The fields of a document at every depth, by their places: `pieces.bars.notes.start`. */
type PlacesIn<Part> = Part extends string | number | boolean | null | undefined
  ? never
  : Part extends readonly (infer Item)[]
    ? PlacesIn<Item>
    : { [Name in keyof Part & string]-?: Name | `${Name}.${PlacesIn<Part[Name]>}` }[keyof Part & string];

/** Fields that stand in one of two documents alone. */
type Unshared<One, Other> = Exclude<PlacesIn<One>, PlacesIn<Other>> | Exclude<PlacesIn<Other>, PlacesIn<One>>;

/** The compiler names whatever is in it. */
type Nothing<Found extends never> = Found;

/**
 * The compiler's word that what the validator lets through is a lesson, and nothing less; and that both know the same
 * fields: a field without a place in the validator would be lost when the lesson is saved.
 */
export type CheckedLesson = z.infer<typeof lessonSchema>;
export const asLesson = (checked: CheckedLesson): Lesson | Nothing<Unshared<Lesson, CheckedLesson>> =>
  checked;
