import { useState } from 'react';
import { useStore } from 'zustand';
import type { Question } from '../../../core/asking';
import { barNames } from '../../../core/base';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { useAtWork } from '../at-work';

interface TappedProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly question: Question;
}

/** A question that is listened to and answered by tapping. */
export function Tapped({ piece, sheet, question }: TappedProps) {
  const { playback } = useAtWork();
  const [tapped, setTapped] = useState<string | null>(null);
  const numbers = question.bars.map((bar) => sheet.bars[bar]?.written.number ?? bar + 1);
  const name = `${barNames(numbers)} of ${piece.name}`;
  const sounds = useStore(
    playback,
    ({ kind, heard }) => kind !== 'stopped' && heard?.kind === 'alone' && heard.name === name,
  );
  const play = () =>
    void playback.playAlone(name, ({ buildPerformance }) =>
      buildPerformance(sheet, {
        tempo: sheet.tempo,
        countIn: 1,
        passage: { first: Math.min(...numbers), last: Math.max(...numbers) },
      }),
    );
  const right = tapped === question.answer;
  return (
    <>
      <p>
        {question.text}{' '}
        <button
          type="button"
          className="word"
          aria-label={`${sounds ? 'Stop' : 'Play'} ${name} for: ${question.text}`}
          onClick={() => (sounds ? playback.stop() : play())}
        >
          {sounds ? 'Stop' : `Play ${barNames(numbers)}`}
        </button>
      </p>
      <p className="asking__choices">
        {question.choices.map((choice) => (
          <button
            key={choice}
            type="button"
            className="button button--quiet"
            aria-pressed={choice === tapped}
            onClick={() => setTapped(choice)}
          >
            {choice}
          </button>
        ))}
      </p>
      <p role="status" aria-label={`Answer to: ${question.text}`}>
        {tapped === null ? '' : right ? `Yes: ${question.answer}.` : `Not ${tapped}. Listen once more.`}
      </p>
    </>
  );
}
