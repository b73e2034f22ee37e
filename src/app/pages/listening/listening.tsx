import '../../styles/listening.css';
import { useEffect, useMemo, useState } from 'react';
import { deriveSheet, type Lesson, lineAtHand } from '../../../core/lesson';
import { barMarks, type ListeningReport, waysOf, waysWords, withoutGuesses } from '../../../core/listening';
import { useEditor } from '../at-work';
import { Delay } from './delay';
import { Input } from './input';
import { Level } from './level';
import { KeptRecording } from './recording';
import { Result } from './result';
import { useHearing } from './use-hearing';

/** What the page says on the score of a bar that was heard, by the bar's index. */
export type BarMarks = ReadonlyMap<number, string>;

interface ListeningProps {
  readonly lesson: Lesson;
  /** Milliseconds that an input of this device hears late, by its id; null where it was not measured. */
  readonly delayOf: (input: string) => number | null;
  readonly onDelay: (input: string, milliseconds: number) => void;
  readonly onMarks: (pieceId: string, marks: BarMarks) => void;
}

/** Listens to the student's playing and says what it heard. */
export function Listening({ lesson, delayOf, onDelay, onMarks }: ListeningProps) {
  const [aloud, setAloud] = useState(false);
  const hearing = useHearing(delayOf, aloud);
  const { device, delay, timed } = hearing;
  const way = waysOf(aloud, hearing.below);
  const pieceId = useEditor((state) => state.pieceId);
  const piece = lineAtHand(lesson, pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  const { open, fault, level, playing, check } = hearing;
  const report = useMemo(
    (): ListeningReport | null =>
      hearing.report && withoutGuesses(hearing.report, { timed, bleeds: way === 'not taken off' }),
    [hearing.report, timed, way],
  );
  useEffect(() => {
    if (piece !== null && report !== null) onMarks(piece.id, barMarks(report));
  }, [report, piece?.id, onMarks, piece]);
  if (!piece || sheet?.kind !== 'line') return <p>There is no line in this lesson to listen to.</p>;
  return (
    <div className="listening">
      <p>
        <button
          type="button"
          className="button"
          onClick={open === null ? () => void hearing.start() : hearing.stop}
        >
          {open === null ? 'Listen to my playing' : 'Stop listening to me'}
        </button>
        {open === null &&
          ' It asks for the microphone or the input of your instrument. What it hears stays on this device, and is neither kept nor sent, unless you say so.'}
      </p>
      {fault !== null && <p role="alert">{fault}</p>}
      {open !== null && (
        <>
          <Input inputs={open.inputs} input={open.input} onChoose={(input) => void hearing.start(input)} />
          {open.forSpeech && (
            <p>
              This browser takes the microphone as for speech and does not let that be: soft and long notes
              may be lost. Another browser may listen better.
            </p>
          )}
          {level !== null && (
            <Level level={level} check={check} onCheck={hearing.beginCheck} onSkip={hearing.leaveCheck} />
          )}
          <fieldset className="listening__where">
            <legend>You hear the rhythm section</legend>
            {[
              { value: false, label: 'through headphones' },
              { value: true, label: 'from the loudspeaker' },
            ].map((way) => (
              <label key={way.label}>
                <input
                  type="radio"
                  name="listening-where"
                  checked={aloud === way.value}
                  onChange={() => setAloud(way.value)}
                />{' '}
                {way.label}
              </label>
            ))}
          </fieldset>
          {aloud && (
            <p>
              The microphone hears the loudspeaker, too. The page knows what it plays and takes it off as far
              as it goes; it does so better when the rhythm section has played for a round before you come in.
              Where that does not go far enough, nothing is said of rests and of notes too many; with
              headphones it is.
            </p>
          )}
          <KeptRecording recording={hearing.recording} />
          {!playing && (
            <Delay {...{ hearing, delay }} onDelay={(milliseconds) => onDelay(device, milliseconds)} />
          )}
          <p role="status" aria-label="Listening">
            {playing
              ? 'Listening to your line.'
              : report === null
                ? 'Take the bass out of the sound if you like, press Play and play along: each bar is told of when it is over.'
                : waysWords(way)}
          </p>
        </>
      )}
      {report !== null && !playing && (
        <Result {...{ report, lesson, piece, sheet }} recorded={hearing.recording.recorded} />
      )}
    </div>
  );
}
