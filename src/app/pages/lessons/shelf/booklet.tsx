import { counted } from '../../../../core/base';
import type { OnShelf } from '../../../../core/shelf';
import { useAtWork } from '../../at-work';
import { Booklet } from '../../booklet';
import { shelfTitle } from '../words';
import { lessonAsOpened } from './deeds';
import { whatItIs } from './describe';

interface ShelfBookletProps {
  /** In the order of the booklet. */
  readonly lessons: readonly OnShelf[];
  /** What is listed and not in it yet. */
  readonly listed: readonly OnShelf[];
  readonly onChange: (ids: readonly string[]) => void;
}

/** A term is some forty weeks: more than these at once is a slip of the hand. */
const MOST_AT_ONCE = 60;

/** Chosen lessons of the shelf as a booklet, in the order in which they were put into it. */
export function ShelfBooklet({ lessons, listed, onChange }: ShelfBookletProps) {
  const { session } = useAtWork();
  const ids = lessons.map(({ id }) => id);
  const earlier = (index: number) =>
    onChange(ids.toSpliced(index - 1, 2, ids[index] ?? '', ids[index - 1] ?? ''));
  return (
    <details className="shelf__booklet">
      <summary>
        Booklet of chosen lessons{lessons.length > 0 && `: ${counted(lessons.length, 'lesson')}`}
      </summary>
      <p className="shelf__hint">
        Choose a lesson in the list and put it into the booklet, or put in all that are listed, in their
        order.
      </p>
      {listed.length > 0 && listed.length <= MOST_AT_ONCE && (
        <p>
          <button
            type="button"
            className="button"
            onClick={() => onChange([...ids, ...listed.map(({ id }) => id)])}
          >
            Put in {listed.length === 1 ? 'the one' : `all ${listed.length}`} listed
          </button>
        </p>
      )}
      {lessons.length > 0 && (
        <>
          <ol aria-label="Lessons of the booklet" className="shelf__chapters">
            {lessons.map((lesson, index) => (
              <li key={lesson.id}>
                {shelfTitle(lesson)}{' '}
                {index > 0 && (
                  <button type="button" className="button" onClick={() => earlier(index)}>
                    Earlier<span className="visually-hidden"> “{shelfTitle(lesson)}”</span>
                  </button>
                )}{' '}
                <button
                  type="button"
                  className="button"
                  onClick={() => onChange(ids.filter((id) => id !== lesson.id))}
                >
                  Take out<span className="visually-hidden"> “{shelfTitle(lesson)}”</span>
                </button>
              </li>
            ))}
          </ol>
          <Booklet
            title="Lessons"
            student=""
            chapters={lessons.map((lesson) => ({
              place: '',
              title: shelfTitle(lesson),
              brief: whatItIs(lesson),
              lesson: () => lessonAsOpened(session, lesson.id),
            }))}
          />
        </>
      )}
    </details>
  );
}
