import {
  buildUpOf,
  type InstrumentSettings,
  type LinePiece,
  moveThing,
  setBuildUp,
  USUAL_BUILD_UP,
} from '../../../core/lesson';
import { MOVABLE_THINGS, type MovableThing, type StageThing, stageThingName } from '../../../core/line';
import { CheckField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';

interface StageOrderProps {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
}

const movable = (thing: StageThing): MovableThing | null =>
  MOVABLE_THINGS.find((each) => each === thing) ?? null;

/** Which things get a stage of their own, and in which order they come. */
export function StageOrder({ piece, instrument }: StageOrderProps) {
  const { session } = useAtWork();
  // What is ticked shows at once; the stages themselves may follow a moment later.
  const now = useLesson().pieces.find(({ id }) => id === piece.id);
  const { buildUp = USUAL_BUILD_UP } = now?.kind === 'line' ? now : piece;
  const { things } = buildUpOf(piece, instrument);
  const show = (thing: StageThing, shown: boolean) => {
    const others = buildUp.leftOut.filter((each) => each !== thing);
    session.lessons.change(
      (lesson) => setBuildUp(lesson, piece.id, { leftOut: shown ? others : [...others, thing] }),
      { label: shown ? 'put a stage back' : 'leave a stage out' },
    );
  };
  const move = (thing: MovableThing, by: -1 | 1) =>
    session.lessons.change((lesson) => moveThing(lesson, piece.id, thing, by), { label: 'move a stage' });
  const moving = things.flatMap((thing) => movable(thing) ?? []);
  return (
    <details className="stages__order">
      <summary>Which stages, and in which order</summary>
      <p className="hint">
        A stage that is left out comes with the next one. Roots come first; touch, and the whole line, come
        last.
      </p>
      <ol>
        {things.map((thing, index) => {
          const own = movable(thing);
          const place = own === null ? -1 : moving.indexOf(own);
          return (
            <li key={thing}>
              {index === things.length - 1 ? (
                <span>{stageThingName(thing)}, the line itself</span>
              ) : (
                <CheckField
                  label={stageThingName(thing)}
                  where={`a stage of ${piece.name}`}
                  checked={!buildUp.leftOut.includes(thing)}
                  onChange={(shown) => show(thing, shown)}
                />
              )}
              {own !== null && place > 0 && (
                <button
                  type="button"
                  className="word"
                  aria-label={`Earlier: ${stageThingName(thing)}, ${piece.name}`}
                  onClick={() => move(own, -1)}
                >
                  earlier
                </button>
              )}
              {own !== null && place < moving.length - 1 && (
                <button
                  type="button"
                  className="word"
                  aria-label={`Later: ${stageThingName(thing)}, ${piece.name}`}
                  onClick={() => move(own, 1)}
                >
                  later
                </button>
              )}
            </li>
          );
        })}
      </ol>
    </details>
  );
}
