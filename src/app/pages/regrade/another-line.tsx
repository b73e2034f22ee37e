import { useDeferredValue, useId, useMemo, useState } from 'react';
import { inKey, levelOfLine, nearnessWords, nextLevel, withRegrade } from '../../../core/composing';
import { TUNINGS } from '../../../core/fretboard';
import {
  deriveSheet,
  type InstrumentSettings,
  LESSON_LIMITS,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
  setInstrument,
} from '../../../core/lesson';
import { levelLimits } from '../../../core/line';
import { useAtWork, useLesson } from '../at-work';
import { Changes } from './changes';
import { type HandAndKey, HandAndKeyChoice, UNCHANGED } from './hand-and-key';
import { SideBySide } from './side-by-side';
import { useRegrade, type Way } from './use-regrade';

export interface LineToRegrade {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
}

/** The lesson with its instrument and key as they were chosen. */
function withHandAndKey(lesson: Lesson, pieceId: string, chosen: HandAndKey): Lesson {
  const tuning = TUNINGS.find(({ id }) => id === chosen.tuning);
  const strung =
    tuning === undefined && chosen.leftHanded === null
      ? lesson
      : setInstrument(lesson, {
          ...(tuning === undefined ? {} : { openStrings: tuning.openStrings }),
          ...(chosen.leftHanded === null ? {} : { leftHanded: chosen.leftHanded }),
        });
  return chosen.key === null || chosen.how === null ? strung : inKey(strung, pieceId, chosen.key, chosen.how);
}

/** What a version is called when nobody named it. */
const usualName = (way: Way | null): string =>
  way === null ? 'for another student' : way === 'easier' ? 'an easier one' : 'a harder one';

/** A line easier or harder, in another key, tuning or hand: what is changed and why, beside the line it comes from. */
export function AnotherLine({ piece, sheet, instrument }: LineToRegrade) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const id = useId();
  const from = useMemo(() => levelOfLine(piece, sheet, instrument), [piece, sheet, instrument]);
  const [way, setWay] = useState<Way | null>(null);
  const level = from === null || way === null ? null : nextLevel(from, way);
  const { regrade, busy, problem } = useRegrade(piece, level);
  const [refused, setRefused] = useState<ReadonlySet<number>>(new Set());
  const [handAndKey, setHandAndKey] = useState<HandAndKey>(UNCHANGED);
  const [name, setName] = useState('');

  const changed = useMemo(
    () => (regrade === null ? piece : withRegrade(piece, instrument, regrade, refused)),
    [piece, instrument, regrade, refused],
  );
  const regraded = useMemo(
    () => ({ ...lesson, pieces: lesson.pieces.map((each) => (each.id === piece.id ? changed : each)) }),
    [lesson, piece, changed],
  );
  const made = useMemo(() => withHandAndKey(regraded, piece.id, handAndKey), [regraded, piece, handAndKey]);
  const shown = useDeferredValue(made);
  const other = useMemo(() => {
    const line = linePiece(shown, piece.id);
    const derived = line && deriveSheet(line, shown.instrument, shown.noteNames);
    return derived?.kind === 'line' ? derived : null;
  }, [shown, piece.id]);

  if (from === null) return null;
  const choose = (to: Way | null) => {
    setWay(to);
    setRefused(new Set());
  };
  const takeBar = (bar: number, taken: boolean) =>
    setRefused((before) => {
      const next = new Set(before);
      if (taken) next.delete(bar);
      else next.add(bar);
      return next;
    });
  const makeVersion = async () => {
    const versions = await import('../../../core/versions');
    const { lessons } = session;
    lessons.knowVersions(versions);
    const called = name.trim() === '' ? usualName(way) : name.trim();
    lessons.changeDocument((before) => versions.addVersion(before, called, made), {
      label: `make the version “${called}”`,
    });
  };
  const marked =
    regrade === null ? [] : regrade.changes.map(({ bar }) => bar).filter((bar) => !refused.has(bar));
  const isOther = changed !== piece || handAndKey !== UNCHANGED;
  return (
    <div className="regrade">
      <p className="regrade__ways">
        As it stands it asks for level {from} ({levelLimits(from).words}).
        {(['easier', 'harder'] as const).map((each) => {
          const to = nextLevel(from, each);
          return to === null ? null : (
            <button
              key={each}
              type="button"
              className="button button--quiet"
              aria-pressed={way === each}
              aria-label={`Make ${piece.name} ${each}: level ${to}`}
              onClick={() => choose(way === each ? null : each)}
            >
              {each === 'easier' ? 'Easier' : 'Harder'}: level {to}
            </button>
          );
        })}
      </p>
      <p role="status" aria-label={`The other line of ${piece.name}`}>
        {busy
          ? 'In the making …'
          : (problem ?? (regrade === null ? '' : nearnessWords(piece, instrument, changed)))}
      </p>
      {regrade !== null && (
        <Changes regrade={regrade} name={piece.name} refused={refused} onTake={takeBar} onAll={setRefused} />
      )}
      <HandAndKeyChoice
        lesson={regraded}
        pieceId={piece.id}
        name={piece.name}
        chosen={handAndKey}
        onChoose={setHandAndKey}
      />
      {isOther && other !== null && (
        <>
          <SideBySide name={piece.name} before={sheet} after={other} marked={marked} />
          <p className="regrade__version">
            <label htmlFor={id}>For whom</label>{' '}
            <input
              id={id}
              className="field__box"
              value={name}
              placeholder={usualName(way)}
              maxLength={LESSON_LIMITS.title}
              onChange={(event) => setName(event.currentTarget.value)}
            />{' '}
            <button type="button" className="button" onClick={() => void makeVersion()}>
              Make it a version
            </button>
          </p>
          <p className="hint">
            The line on the sheet stays as it is; the version is one more of this lesson.
          </p>
        </>
      )}
    </div>
  );
}
