import { useRef, useState } from 'react';
import type { Entry } from '../../../core/students';
import { useAtWork } from '../at-work';
import { compareWithShelf } from './compare';

/** How the open lesson's line differs from every other on this device, asked for and not before. */
export function Closeness({ entries }: { readonly entries: readonly Entry[] }) {
  const { session } = useAtWork();
  const [told, setTold] = useState<readonly string[]>([]);
  const [progress, setProgress] = useState('');
  const asked = useRef(0);
  const compare = async () => {
    asked.current += 1;
    const mine = asked.current;
    setTold([]);
    const compared = await compareWithShelf(session, entries, (number, of) => {
      if (asked.current === mine) setProgress(`Comparing with lesson ${number} of ${of}.`);
      return asked.current === mine;
    });
    if (!compared.ok) return setProgress(compared.problem);
    if (compared.value === null) return;
    const { sentences, count } = compared.value;
    setTold(sentences);
    setProgress(
      count === 0
        ? 'No other lesson with a line is on this device.'
        : `Compared with ${count === 1 ? 'one lesson' : `${count} lessons and versions`}; the nearest come first.`,
    );
  };
  return (
    <section className="series__part">
      <h3>How the open lesson differs from others</h3>
      <p>
        Before a second student gets it: its line is held against every lesson on this device and every
        version that others were given.
      </p>
      <p>
        <button type="button" className="button" onClick={() => void compare()}>
          Compare with the shelf
        </button>
      </p>
      <p role="status" aria-label="Comparing">
        {progress}
      </p>
      {told.length > 0 && (
        <ul aria-label="The nearest lessons">
          {told.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
