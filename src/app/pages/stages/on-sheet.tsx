import '../../styles/stages.css';
import { useId } from 'react';
import {
  buildUpOf,
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  MOST_STAGE_ROUNDS,
  STAGE_VIEWS,
  setBuildUp,
} from '../../../core/lesson';
import { stagesCounted } from '../../../core/line';
import { NumberWord, SelectWord } from '../../controls';
import type { Session } from '../../state';
import { useAtWork } from '../at-work';
import { StageOrder } from './order';
import { PlayStages, type StageRows, Stages } from './stages';

interface BuildUpProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  readonly rows: StageRows;
  readonly onSave: (
    session: Session,
    kind: 'MusicXML' | 'MIDI',
    line: { readonly piece: LinePiece; readonly sheet: LineSheet },
  ) => void;
}

const VIEWS = STAGE_VIEWS.map((view) => ({ value: view, label: view }));

/** A line's build-up on the teacher's sheet: its stages, how they stand there, and how they are chosen and changed. */
export function BuildUpOnSheet({ piece, sheet, instrument, rows, onSave }: BuildUpProps) {
  const { session } = useAtWork();
  const id = useId();
  const { buildUp } = piece;
  const written = sheet.bars.some(({ notes }) => notes.length > 0);
  const change = (to: Parameters<typeof setBuildUp>[2], label: string) =>
    session.lessons.change((lesson) => setBuildUp(lesson, piece.id, to), { label });
  if (buildUp === undefined) {
    if (!written) return null;
    return (
      <p className="stages__offer">
        <button
          type="button"
          className="word"
          aria-label={`Build it up in stages: ${piece.name}`}
          onClick={() => change({}, `build ${piece.name} up`)}
        >
          Build it up in stages
        </button>
        , from its roots to the whole line.
      </p>
    );
  }
  const { stages, things } = buildUpOf(piece, instrument);
  return (
    <section className="stages" aria-labelledby={id}>
      <div className="stages__heading">
        <h3 id={id}>Build-up of {piece.name}</h3>
        <button
          type="button"
          className="button button--quiet"
          aria-label={`Take it off the sheet: the build-up of ${piece.name}`}
          onClick={() => change(null, `take the build-up of ${piece.name} off the sheet`)}
        >
          Take it off the sheet
        </button>
      </div>
      {stages.length === 0 ? (
        <p>There are no notes yet, so there are no stages.</p>
      ) : (
        <>
          <p className="stages__words">
            {stagesCounted(stages.length, things.length)},{' '}
            <SelectWord
              label={`How the stages of ${piece.name} are shown`}
              value={buildUp.view}
              options={VIEWS}
              onChange={(view) => change({ view }, 'change how the stages are shown')}
            />
            , each played{' '}
            <NumberWord
              label={`Rounds of each stage, ${piece.name}`}
              value={buildUp.rounds}
              least={1}
              most={MOST_STAGE_ROUNDS}
              onChange={(rounds) =>
                session.lessons.change((lesson) => setBuildUp(lesson, piece.id, { rounds }), {
                  label: 'change the rounds of a stage',
                  join: `stage rounds ${piece.id}`,
                })
              }
            />{' '}
            {buildUp.rounds === 1 ? 'time' : 'times'}.
          </p>
          <PlayStages piece={piece} />
          {things.length > 1 && <StageOrder piece={piece} instrument={instrument} />}
          <Stages
            piece={piece}
            instrument={instrument}
            noteNames={sheet.noteNames}
            rows={rows}
            edits
            onSave={(kind, line) => onSave(session, kind, line)}
          />
        </>
      )}
    </section>
  );
}
