import { useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { barName } from '../../../core/base';
import {
  type BuiltStage,
  buildUpOf,
  deriveSheet,
  describeBar,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import { type StageThing, stageTask } from '../../../core/line';
import { useAtWork, useLesson } from '../at-work';
import { heardSheet, type StagesOf } from '../playing';
import { type BarButton, ScoreFigure } from '../score';
import { chordsOf, describeScore } from '../words';
import { StageBar } from './bar';

export interface StageRows {
  readonly degrees: boolean;
  readonly fingers: boolean;
  readonly numerals: boolean;
}

interface StagesProps {
  readonly piece: LinePiece;
  readonly instrument: InstrumentSettings;
  readonly noteNames: LineSheet['noteNames'];
  readonly rows: StageRows;
  /** Drawn to be read from a step away. */
  readonly large?: boolean;
  /** Whether bars of a stage can be changed. */
  readonly edits: boolean;
  /** Saves a stage as a file; null where nothing is saved. */
  readonly onSave:
    | ((kind: 'MusicXML' | 'MIDI', line: { readonly piece: LinePiece; readonly sheet: LineSheet }) => void)
    | null;
}

/** The stages to play, as the player asks for them: all of them, or one alone. */
const played =
  (lesson: Lesson, only?: StageThing): StagesOf =>
  (piece) =>
    buildUpOf(piece, lesson.instrument)
      .stages.filter(({ stage }) => only === undefined || stage === only)
      .flatMap((stage) => {
        const sheet = deriveSheet(stage.piece, lesson.instrument, lesson.noteNames);
        return sheet.kind === 'line' ? [{ piece: stage.piece, sheet, name: stage.name }] : [];
      });

/** Plays all stages one after the other, and stops them. */
export function PlayStages({ piece }: { readonly piece: LinePiece }) {
  const { playback } = useAtWork();
  const lesson = useLesson();
  const sounds = useStore(
    playback,
    ({ heard }) => heard?.kind === 'stages' && heard.pieceId === piece.id && heard.stages.length > 1,
  );
  return (
    <p className="stages__play">
      <button
        type="button"
        className="button"
        aria-label={
          sounds ? `Stop the stages of ${piece.name}` : `Play one stage after the other of ${piece.name}`
        }
        onClick={() => (sounds ? playback.stop() : void playback.playStages(piece, played(lesson)))}
      >
        {sounds ? 'Stop the stages' : 'Play one stage after the other'}
      </button>
    </p>
  );
}

/** The stages of a line, one under the other or one at a time. */
export function Stages(props: StagesProps) {
  const { piece, instrument } = props;
  const { playback } = useAtWork();
  const { stages } = buildUpOf(piece, instrument);
  const [chosen, setChosen] = useState(0);
  const sounding = useStore(playback, heardSheet);
  const heardAt = stages.findIndex((stage) => stage.piece.id === sounding);
  const at = heardAt >= 0 ? heardAt : Math.min(chosen, stages.length - 1);
  const here = stages[at];
  if (here === undefined) return null;
  if (piece.buildUp?.view !== 'in one place')
    return stages.map((stage, index) => (
      <StageView key={stage.stage} {...props} stage={stage} last={index === stages.length - 1} />
    ));
  const flip = (by: number) => {
    playback.stop();
    setChosen(at + by);
  };
  return (
    <div className="stages__place">
      {stages.length > 1 && (
        <p className="stages__flip">
          <button
            type="button"
            className="button"
            aria-label={`Earlier stage of ${piece.name}`}
            aria-disabled={at === 0}
            onClick={() => at > 0 && flip(-1)}
          >
            Earlier stage
          </button>
          <button
            type="button"
            className="button"
            aria-label={`Next stage of ${piece.name}`}
            aria-disabled={at === stages.length - 1}
            onClick={() => at < stages.length - 1 && flip(1)}
          >
            Next stage
          </button>
          <span role="status" className="visually-hidden">
            {here.name}
          </span>
        </p>
      )}
      <StageView {...props} stage={here} last={at === stages.length - 1} />
    </div>
  );
}

interface StageViewProps extends StagesProps {
  readonly stage: BuiltStage;
  readonly last: boolean;
}

function StageView({
  piece,
  instrument,
  noteNames,
  rows,
  large = false,
  edits,
  onSave,
  stage,
  last,
}: StageViewProps) {
  const { playback } = useAtWork();
  const lesson = useLesson();
  const sheet = useMemo(
    () => deriveSheet(stage.piece, instrument, noteNames),
    [stage, instrument, noteNames],
  );
  const [bar, setBar] = useState<number | null>(null);
  const alone = useStore(
    playback,
    ({ heard }) =>
      heard?.kind === 'stages' && heard.stages.length === 1 && heard.stages[0]?.sheetId === stage.piece.id,
  );
  if (sheet.kind !== 'line') return null;
  const changes = edits && !last;
  const buttons = sheet.bars.map(
    (each): BarButton => ({
      name: `${sheet.name}, ${barName(each.written.number)} (${chordsOf(each.written, sheet.noteNames)})`,
      description: describeBar(sheet, each),
      kept: false,
    }),
  );
  const chosen = changes && bar !== null && bar < sheet.bars.length ? bar : null;
  return (
    <section className="stage" aria-label={`${piece.name}, ${stage.name}`}>
      <h4 className="stage__name">{stage.name}</h4>
      <p className="stage__task">{stage.things.map(stageTask).join(' ')}</p>
      <ScoreFigure
        sheet={sheet}
        large={large}
        name={`${sheet.name} on staff and tab`}
        description={describeScore(sheet)}
        rows={rows}
        bars={
          changes
            ? {
                buttons,
                chosen,
                choose: setBar,
                drawer: (index) => (
                  <StageBar
                    key={index}
                    piece={piece}
                    stage={stage}
                    sheet={sheet}
                    instrument={instrument}
                    bar={index}
                    onClose={() => setBar(null)}
                  />
                ),
              }
            : null
        }
      />
      {edits && <Changed stage={stage} sheet={sheet} />}
      <p className="stage__actions">
        <button
          type="button"
          className="word"
          aria-label={`${alone ? 'Stop' : 'Play'} this stage: ${sheet.name}`}
          onClick={() =>
            alone ? playback.stop() : void playback.playStages(piece, played(lesson, stage.stage))
          }
        >
          {alone ? 'Stop this stage' : 'Play this stage'}
        </button>
        {onSave !== null &&
          (['MusicXML', 'MIDI'] as const).map((kind) => (
            <button
              key={kind}
              type="button"
              className="word"
              aria-label={`Save ${sheet.name} as ${kind}`}
              onClick={() => onSave(kind, { piece: stage.piece, sheet })}
            >
              {kind}
            </button>
          ))}
      </p>
    </section>
  );
}

/** What the teacher changed in a stage, and what waits. */
function Changed({ stage, sheet }: { readonly stage: BuiltStage; readonly sheet: LineSheet }) {
  const names = (bars: readonly number[]) =>
    bars.map((bar) => barName(sheet.bars[bar]?.written.number ?? bar + 1)).join(', ');
  if (stage.edited.length + stage.waiting.length === 0) return null;
  return (
    <p className="hint">
      {stage.edited.length > 0 && `Changed by hand: ${names(stage.edited)}. `}
      {stage.waiting.length > 0 &&
        `Changed for other chords, and as derived until these come back: ${names(stage.waiting)}.`}
    </p>
  );
}
