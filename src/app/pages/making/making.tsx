import '../../styles/sending.css';
import { useEffect, useRef, useState } from 'react';
import type { Result } from '../../../core/base';
import type { MakeOptions } from '../../../tracks';

const NOT_LOADED =
  'could not be made: a part of the page could not be loaded. Check that the page is still reachable and load it again.';

/** What is said of something that is made. */
interface MakingWords {
  /** `The tracks`; the name of its status, too. */
  readonly what: string;
  readonly ready: string;
  /** `Making the tracks` */
  readonly doing: string;
}

interface Making<Made> {
  /** What was made last; null for nothing yet. */
  readonly made: Made | null;
  /** The step that makes it; nothing while it is being made. */
  readonly button: (label: string) => React.ReactNode;
  /** How far it is, with a way to stop, or what came of it. */
  readonly progress: React.ReactNode;
}

/**
 * Something that is being made while the page can be used on: shown with its progress, and stopped when it is put away.
 * @param work - tells how far it is, and gives null where it was called off, or a sentence where it failed
 */
export function useMaking<Made>(
  { what, ready, doing }: MakingWords,
  work: (options: MakeOptions) => Promise<Result<Made | null, string>>,
): Making<Made> {
  const [made, setMade] = useState<Made | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const [said, setSaid] = useState('');
  const controller = useRef<AbortController | null>(null);
  useEffect(() => () => controller.current?.abort(), []);
  const make = (): void => {
    const mine = new AbortController();
    controller.current = mine;
    setShare(0);
    setSaid('');
    const end = (sentence: string): void => {
      setShare(null);
      setSaid(mine.signal.aborted ? `${doing} was stopped. The lesson is as it was.` : sentence);
    };
    work({ signal: mine.signal, onShare: setShare }).then(
      (result) => {
        if (result.ok && result.value !== null) setMade(result.value);
        end(result.ok ? ready : result.problem);
      },
      () => end(`${what} ${NOT_LOADED}`),
    );
  };
  const button = (label: string) =>
    share === null && (
      <button type="button" className="button button--main" onClick={make}>
        {label}
      </button>
    );
  const progress = (
    <>
      {share !== null && (
        <p className="sending__progress">
          <progress aria-label={doing} value={share} max={1} /> {Math.round(share * 100)} %{' '}
          <button type="button" className="button button--quiet" onClick={() => controller.current?.abort()}>
            Stop making
          </button>
        </p>
      )}
      <p role="status" aria-label={what} className="sending__said">
        {share === null ? said : `${doing} …`}
      </p>
    </>
  );
  return { made, button, progress };
}
