import { useEffect, useRef, useState } from 'react';
import type { MakeOptions } from '../../../tracks';

const NOT_LOADED =
  'could not be made: a part of the page could not be loaded. Check that the page is still reachable and try again.';

interface Making {
  readonly isBusy: boolean;
  /** How far it is, with a way to stop, or what went wrong. */
  readonly shown: React.ReactNode;
  /** Begins something that tells how far it is, and gives a sentence when it fails. */
  readonly run: (work: (options: MakeOptions) => Promise<string | null>) => void;
}

/**
 * Something that is being made while the page can be used on: shown with its progress, and stopped when it is put away.
 * @param what - is made: `The tracks`
 */
export function useMaking(what: string, doing: string): Making {
  const [share, setShare] = useState<number | null>(null);
  const [said, setSaid] = useState('');
  const controller = useRef<AbortController | null>(null);
  useEffect(() => () => controller.current?.abort(), []);
  const run = (work: (options: MakeOptions) => Promise<string | null>): void => {
    const mine = new AbortController();
    controller.current = mine;
    setShare(0);
    setSaid('');
    const end = (sentence: string): void => {
      if (controller.current !== mine) return;
      setShare(null);
      setSaid(mine.signal.aborted ? `${doing} was stopped. The lesson is as it was.` : sentence);
    };
    work({ signal: mine.signal, onShare: (done) => controller.current === mine && setShare(done) }).then(
      (problem) => end(problem ?? `${what} ${what.endsWith('s') ? 'are' : 'is'} ready.`),
      () => end(`${what} ${NOT_LOADED}`),
    );
  };
  const shown = (
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
  return { isBusy: share !== null, shown, run };
}
