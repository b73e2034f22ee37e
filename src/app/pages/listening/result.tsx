import { barRange, bpm, capitalised } from '../../../core/base';
import { type Lesson, type LinePiece, type LineSheet, setPlaying, toldTempo } from '../../../core/lesson';
import {
  barWords,
  type ListeningReport,
  letterOf,
  letterText,
  roundWords,
  summaryOf,
  summaryWords,
  tallyOf,
} from '../../../core/listening';
import { ladderFrom, loopOver } from '../../../core/playing';
import { useAtWork } from '../at-work';

interface ResultProps {
  readonly report: ListeningReport;
  readonly lesson: Lesson;
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  /** What was played, where the student had it recorded. */
  readonly recorded: Blob | null;
}

function today(): string {
  const date = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** `heard-at-home.webm`: browsers record in formats of their own. */
const recordingName = ({ type }: Blob): string =>
  `heard-at-home.${type.includes('mp4') ? 'm4a' : type.includes('ogg') ? 'ogg' : 'webm'}`;

function saveFile(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

/** What was heard, in words: as a whole, what to practise, then round by round and bar by bar. */
export function Result({ report, lesson, piece, sheet, recorded }: ResultProps) {
  const { session } = useAtWork();
  const naming = {
    numberOf: (bar: number) => sheet.bars[bar]?.written.number ?? 0,
    tell: (tempo: number) => Math.round(toldTempo(piece, bpm(tempo))),
  };
  const summary = summaryOf(report);
  const { practise } = summary;
  const loop = () => {
    if (practise === null) return;
    const slow = bpm(Math.max(20, Math.round(practise.tempo)));
    const change = {
      ...loopOver(sheet, naming.numberOf(practise.first), naming.numberOf(practise.last)),
      ladder: { climbed: true, rungs: ladderFrom(slow, piece.tempo) },
    };
    session.lessons.change((now) => setPlaying(now, piece.id, change), { label: 'practise what was heard' });
  };
  const letter = letterText(
    letterOf(summary, { lesson: lesson.title, piece: piece.name, day: today() }, naming),
    { recorded: recorded !== null },
  );
  return (
    <div className="listening__result">
      <ul aria-label="What was heard">
        {summaryWords(summary, naming).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <div className="listening__actions">
        {practise !== null && (
          <button type="button" className="button button--main" onClick={loop}>
            Loop {barRange(naming.numberOf(practise.first), naming.numberOf(practise.last))}, from{' '}
            {naming.tell(practise.tempo)} bpm up
          </button>
        )}
        <button
          type="button"
          className="button"
          onClick={() => saveFile(new Blob([letter], { type: 'text/plain' }), 'heard-at-home.txt')}
        >
          Save the report for your teacher
        </button>
        {recorded !== null && (
          <button
            type="button"
            className="button"
            onClick={() => saveFile(recorded, recordingName(recorded))}
          >
            Save the recording beside it
          </button>
        )}
      </div>
      <details>
        <summary>Round by round, bar by bar</summary>
        {report.map((round) => (
          <div key={round.round}>
            <p>
              <b>{capitalised(roundWords(round, tallyOf(round.bars), naming))}</b>
            </p>
            <ul>
              {round.bars.map((bar, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its place in the round
                <li key={index}>{barWords(bar, naming)}</li>
              ))}
            </ul>
          </div>
        ))}
      </details>
      <details>
        <summary>The report as a text</summary>
        <pre>{letter}</pre>
      </details>
    </div>
  );
}
