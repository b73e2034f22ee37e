/** Validators of pieces: lines with all that is asked of them, and blank bars. */
import * as z from 'zod/mini';
import type { Bpm, MidiNumber } from '../../base';
import { DRUM_WAYS, FEEL_IDS } from '../../feel';
import type { HandSystem } from '../../fretboard';
import { type DegreeStep, LEVELS, type Level, MOVABLE_THINGS, STAGE_THINGS, TECHNIQUES } from '../../line';
import { COUNTS } from '../count';
import { LESSON_LIMITS } from '../limits';
import { CLICK_BEATS, PLAYING_LIMITS } from '../playing';
import { MOST_STAGE_ROUNDS, SILENT_ONES, STAGE_VIEWS } from '../types';
import { blocksSchema } from './handout';
import {
  bpmSchema,
  branded,
  fretSchema,
  harmony,
  keySchema,
  lineBarSchema,
  metreSchema,
  name,
  noneTwice,
  sortedNotes,
  whole,
} from './notes';

const techniquesSchema = z.array(z.enum(TECHNIQUES)).check(z.maxLength(TECHNIQUES.length));
const midiSchema = branded<MidiNumber>(whole(0, 127));

const asked = {
  wanted: z.exactOptional(techniquesSchema),
  degrees: z.exactOptional(z.array(branded<DegreeStep>(whole(1, 7))).check(z.minLength(1), z.maxLength(7))),
  silentOnes: z.exactOptional(z.enum(SILENT_ONES)),
};

const aimSchema = z.object({
  where: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('line') }),
    z.object({ kind: z.literal('section'), id: name }),
    z.object({ kind: z.literal('bar'), id: name }),
  ]),
  ...asked,
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

const meantSchema = z.object({
  bar: z.nullable(name),
  about: z.enum(['notes', 'aims', 'hand', 'music']),
  fingerprint: whole(0, 0xffffffff),
});

const buildUpSchema = z.object({
  view: z.enum(STAGE_VIEWS),
  order: z.array(z.enum(MOVABLE_THINGS)).check(z.refine(noneTwice, 'a thing comes twice in the build-up')),
  leftOut: z.array(z.enum(STAGE_THINGS)).check(z.refine(noneTwice, 'a stage is left out twice')),
  rounds: whole(1, MOST_STAGE_ROUNDS),
  edits: z
    .array(z.object({ stage: z.enum(STAGE_THINGS), bar: name, harmony, notes: sortedNotes }))
    .check(z.maxLength(LESSON_LIMITS.bars)),
});

export const lineStart = {
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

export const lineEnd = {
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
  prompt: z.exactOptional(z.object(asked)),
  leftOut: z.exactOptional(blocksSchema),
});

export const pieceSchema = z.discriminatedUnion('kind', [linePieceSchema, blankPieceSchema]);
