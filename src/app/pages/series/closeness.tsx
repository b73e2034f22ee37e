import { useRef, useState } from 'react';
import { likenessWords, nearestLines, type Sketch, sketchOf } from '../../../core/series';
import { useAtWork, useLesson } from '../at-work';
import { breathe, everyVersionOf } from './read-weeks';

/** As many of the nearest lessons are told. */
const MOST_TOLD = 6;

/** How the open lesson's line differs from every other on this device, asked for and not before. */
export function Closeness() {
  const { session } = useAtWork();
  const lesson = useLesson();
  const [told, setTold] = useState<readonly string[]>([]);
  const [progress, setProgress] = useState('');
  const asked = useRef(0);
  const compare = async () => {
    asked.current += 1;
    const mine = asked.current;
    const own = sketchOf(lesson);
    setTold([]);
    if (own.rhythms.length === 0) return setProgress('The open lesson has no line to compare yet.');
    const listed = await session.storage.list();
    if (!listed.ok) return setProgress(listed.problem);
    const readable = listed.value.filter((each) => each.readable);
    const open = session.lessons.getState().document.open ?? null;
    const known: { readonly of: string; readonly sketch: Sketch }[] = [];
    for (const [index, { id }] of readable.entries()) {
      if (asked.current !== mine) return;
      setProgress(`Comparing with lesson ${index + 1} of ${readable.length}.`);
      const given = await everyVersionOf(session, id);
      await breathe();
      const others = given.filter(({ version }) => id !== lesson.id || version !== open);
      known.push(...others.map(({ called, lesson: other }) => ({ of: called, sketch: sketchOf(other) })));
    }
    const near = nearestLines(own, known);
    setTold(
      near.slice(0, MOST_TOLD).map(({ of, likeness }) => likenessWords(likeness, own.rhythms.length, of)),
    );
    setProgress(
      near.length === 0
        ? 'No other lesson with a line is on this device.'
        : `Compared with ${known.length === 1 ? 'one lesson' : `${known.length} lessons and versions`}; the nearest come first.`,
    );
  };
  return (
    <section className="series__part">
      <h3>How the open lesson differs from others</h3>
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
