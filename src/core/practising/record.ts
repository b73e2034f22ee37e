import * as z from 'zod/mini';

/** How much is remembered; the oldest goes first. */
const LIMITS = { lessons: 40, diary: 300, text: 200, inputs: 8 } as const;

const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
const text = z.string().check(z.maxLength(LIMITS.text));
const whole = z.int().check(z.gte(0), z.lte(10_000_000));

const lastPractice = z.object({
  day,
  lessonId: text,
  pieceId: text,
  bass: z.boolean(),
  drums: z.boolean(),
  chops: z.boolean(),
  organ: z.boolean(),
  click: z.boolean(),
  loop: z.boolean(),
  passage: z.nullable(z.object({ first: whole, last: whole })),
  tempoShare: z.number().check(z.gte(1), z.lte(1000)),
  /** The rung that was climbed last, from 0; null where no ladder was climbed. */
  rung: z.nullable(whole),
});

const practiceEntry = z.object({
  day,
  lesson: text,
  piece: text,
  /** `all bars`, `bars 3 to 6`. */
  bars: text,
  /** What was played, in whole seconds. */
  seconds: whole,
  /** Rounds that were played to their end. */
  rounds: whole,
  /** Beats a minute of the fastest of them, as they are told; null where none was finished. */
  tempo: z.nullable(whole),
});

/** Milliseconds that what is played is heard after its moment. */
const lateness = z.int().check(z.gte(-300), z.lte(900));

/** What was measured of one microphone or input, by the id that the browser gives it for this page. */
const heardThrough = z.object({ input: text, delay: lateness });

const practiceRecord = z.object({
  version: z.literal(1),
  /** Milliseconds that the sound is heard later than the browser knows. */
  delay: z.int().check(z.gte(-300), z.lte(800)),
  /** Of an input that the browser does not tell from others; left out where it was not measured. */
  hearing: z.optional(lateness),
  /** Of each input that it tells apart, the one that was measured last first. */
  inputs: z.optional(z.array(heardThrough).check(z.maxLength(LIMITS.inputs))),
  last: z.array(lastPractice).check(z.maxLength(LIMITS.lessons)),
  diary: z.array(practiceEntry).check(z.maxLength(LIMITS.diary)),
});

/** Where a student was in a lesson. */
export type LastPractice = Readonly<z.infer<typeof lastPractice>>;
/** What was practised of a piece on a day, in one line of the diary. */
export type PracticeEntry = Readonly<z.infer<typeof practiceEntry>>;
/** What a device remembers of a student's practising. It holds no name, and no lesson. */
export interface PracticeRecord {
  readonly version: 1;
  readonly delay: number;
  readonly hearing?: number | undefined;
  readonly inputs?: readonly Readonly<z.infer<typeof heardThrough>>[] | undefined;
  /** One a lesson, the latest first. */
  readonly last: readonly LastPractice[];
  /** In order of time. */
  readonly diary: readonly PracticeEntry[];
}

export const EMPTY_RECORD: PracticeRecord = { version: 1, delay: 0, last: [], diary: [] };

/** Reads a record; null for what is none, or was written by a later version. */
export function parseRecord(json: string): PracticeRecord | null {
  try {
    const read = practiceRecord.safeParse(JSON.parse(json));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

const short = (words: string): string => words.slice(0, LIMITS.text);

/**
 * How late what is played is heard, in milliseconds; null where it was not measured with this input.
 * @param input - its id; '' where the browser does not tell
 */
export function hearingDelay({ hearing, inputs }: PracticeRecord, input: string): number | null {
  if (input === '') return hearing ?? null;
  return inputs?.find((each) => each.input === short(input))?.delay ?? null;
}

/** Remembers how late one input hears; others keep theirs. */
export function withHearingDelay(record: PracticeRecord, input: string, delay: number): PracticeRecord {
  if (input === '') return { ...record, hearing: delay };
  const others = (record.inputs ?? []).filter((each) => each.input !== short(input));
  return { ...record, inputs: [{ input: short(input), delay }, ...others].slice(0, LIMITS.inputs) };
}

/** Remembers where the student is in a lesson, in place of where that was before. */
export const remember = (record: PracticeRecord, last: LastPractice): PracticeRecord => ({
  ...record,
  last: [
    { ...last, lessonId: short(last.lessonId), pieceId: short(last.pieceId) },
    ...record.last.filter(({ lessonId }) => lessonId !== short(last.lessonId)),
  ].slice(0, LIMITS.lessons),
});

/** The diary with what was just practised; what goes on from the last line is added to it. */
export function withEntry(record: PracticeRecord, entry: PracticeEntry): PracticeRecord {
  const cut = { ...entry, lesson: short(entry.lesson), piece: short(entry.piece) };
  const before = record.diary.at(-1);
  const goesOn =
    before !== undefined &&
    (['day', 'lesson', 'piece', 'bars'] as const).every((field) => before[field] === cut[field]);
  const tempo = Math.max(goesOn ? (before.tempo ?? 0) : 0, cut.tempo ?? 0);
  const line = goesOn
    ? {
        ...cut,
        seconds: before.seconds + cut.seconds,
        rounds: before.rounds + cut.rounds,
        tempo: tempo === 0 ? null : tempo,
      }
    : cut;
  const kept = goesOn ? record.diary.slice(0, -1) : record.diary;
  return { ...record, diary: [...kept, line].slice(-LIMITS.diary) };
}
