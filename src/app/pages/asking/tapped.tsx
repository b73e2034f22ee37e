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
  const { taps, answer } = question;
  const [tapped, setTapped] = useState<readonly string[]>([]);
  const isWhole = tapped.length === taps.length;
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
  const right = taps.every((each, index) => tapped[index] === each);
  // An answer that is whole is followed by another try.
  const tap = (choice: string) => setTapped(isWhole ? [choice] : [...tapped, choice]);
  const told = right ? `Yes: ${answer}.` : `Not ${tapped.join(', ')}. Listen once more.`;
  const soFar = tapped.length === 0 ? '' : `${tapped.join(', ')}, and ${taps.length - tapped.length} to go`;
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
            aria-pressed={taps.length === 1 ? tapped.includes(choice) : undefined}
            onClick={() => tap(choice)}
          >
            {choice}
          </button>
        ))}
        {tapped.length > 0 && !isWhole && (
          <button
            type="button"
            className="word"
            aria-label={`Take the last one back: ${question.text}`}
            onClick={() => setTapped(tapped.slice(0, -1))}
          >
            Take the last one back
          </button>
        )}
      </p>
      <p role="status" aria-label={`Answer to: ${question.text}`}>
        {isWhole ? told : soFar}
      </p>
    </>
  );
}
