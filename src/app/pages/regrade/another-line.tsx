import { useDeferredValue, useId, useMemo, useState } from 'react';
import {
  levelOfLine,
  nearnessWords,
  neckChanges,
  nextLevel,
  playedElsewhere,
  withNeckChanges,
  withRegrade,
} from '../../../core/composing';
import {
  changeLine,
  deriveSheet,
  type InstrumentSettings,
  LESSON_LIMITS,
  type LinePiece,
  type LineSheet,
  linePiece,
} from '../../../core/lesson';
import { levelLimits } from '../../../core/line';
import { useAtWork, useLesson } from '../at-work';
import { Changes } from './changes';
import { type HandAndKey, HandAndKeyChoice, UNCHANGED } from './hand-and-key';
import { inChosenKey, strungAs } from './other-hand';
import { SideBySide } from './side-by-side';
import { useRegrade, type Way } from './use-regrade';

export interface LineToRegrade {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
}

/** Ids of refusable changes: of the level, and of the neck. */
const LEVEL = 'level ';
const NECK = 'neck ';

const barsOf = (refused: ReadonlySet<string>, of: string): ReadonlySet<number> =>
  new Set([...refused].filter((id) => id.startsWith(of)).map((id) => Number(id.slice(of.length))));

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
  const [refused, setRefused] = useState<ReadonlySet<string>>(new Set());
  const [handAndKey, setHandAndKey] = useState<HandAndKey>(UNCHANGED);
  const [name, setName] = useState('');

  const changed = useMemo(
    () => (regrade === null ? piece : withRegrade(piece, instrument, regrade, barsOf(refused, LEVEL))),
    [piece, instrument, regrade, refused],
  );
  const strung = useMemo(
    () =>
      strungAs(
        changeLine(lesson, piece.id, () => changed),
        handAndKey,
      ),
    [lesson, piece.id, changed, handAndKey],
  );
  const moved = useMemo(() => inChosenKey(strung, piece.id, handAndKey), [strung, piece.id, handAndKey]);
  const isOther = changed !== piece || moved.instrument !== lesson.instrument || moved !== strung;
  const toNeck = useMemo(() => {
    const line = linePiece(moved, piece.id);
    const changes = line === null || !isOther ? [] : neckChanges(line, moved.instrument, moved.noteNames);
    return { line, changes };
  }, [moved, piece.id, isOther]);
  const made = useMemo(() => {
    const { line, changes } = toNeck;
    if (line === null) return moved;
    return changeLine(moved, line.id, (each) =>
      withNeckChanges(each, moved.instrument, changes, barsOf(refused, NECK)),
    );
  }, [moved, toNeck, refused]);
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
  const makeVersion = async () => {
    const versions = await import('../../../core/versions');
    const { lessons } = session;
    lessons.knowVersions(versions);
    const called = name.trim() === '' ? usualName(way) : name.trim();
    lessons.changeDocument((before) => versions.addVersion(before, called, made), {
      label: `make the version “${called}”`,
    });
  };
  const changes = [
    ...(regrade?.changes ?? []).map((each) => ({ ...each, id: `${LEVEL}${each.bar}` })),
    ...toNeck.changes.map((each) => ({ ...each, id: `${NECK}${each.bar}` })),
  ];
  const elsewhere =
    other === null || (moved === strung && moved.instrument === lesson.instrument)
      ? { bars: [], words: [] }
      : playedElsewhere(sheet, other, {
          instrument: shown.instrument,
          how: handAndKey.key === null ? null : handAndKey.how,
          tuned: shown.instrument.openStrings !== instrument.openStrings,
          turned: handAndKey.leftHanded !== null,
        });
  const marked = changes.filter(({ id: change }) => !refused.has(change)).map(({ bar }) => bar);
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
      <HandAndKeyChoice
        lesson={strung}
        leftNow={instrument.leftHanded === true}
        pieceId={piece.id}
        name={piece.name}
        chosen={handAndKey}
        onChoose={(chosen) => {
          setHandAndKey(chosen);
          // Bars that another neck changes are other ones then.
          setRefused((before) => new Set([...before].filter((each) => each.startsWith(LEVEL))));
        }}
      />
      <Changes
        changes={changes.map(({ id: change, what, why }) => ({
          id: change,
          label: [what, ...why].join(' '),
        }))}
        remarks={[...(regrade?.remarks ?? []), ...elsewhere.words]}
        name={piece.name}
        refused={refused}
        onRefuse={setRefused}
      />
      {isOther && other !== null && (
        <>
          <SideBySide
            name={piece.name}
            before={sheet}
            after={other}
            changed={marked}
            elsewhere={elsewhere.bars}
          />
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
