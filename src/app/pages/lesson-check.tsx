import { useMemo } from 'react';
import { checkLesson, type Finding } from '../../core/composing';
import { discardParked, type Lesson } from '../../core/lesson';
import { FindingRow } from './finding-row';
import { useAtWork } from './session';

/** What a careful colleague would point out; each finding leads to its place. */
export function LessonCheck({ lesson }: { readonly lesson: Lesson }) {
  const { session } = useAtWork();
  const findings = useMemo(() => checkLesson(lesson), [lesson]);
  const parked = lesson.pieces.filter((piece) => piece.kind === 'line' && piece.parked.length > 0);
  const many = lesson.pieces.filter((piece) => piece.kind === 'line').length > 1;
  const nameOf = (finding: Finding) =>
    many ? `${lesson.pieces.find((piece) => piece.id === finding.pieceId)?.name ?? ''}: ` : '';
  return (
    <section className="check-list">
      <h2 className="pad__heading" id="lesson-check">
        Lesson check
      </h2>
      <ul aria-labelledby="lesson-check">
        {findings.length === 0 && <li>Nothing to mend.</li>}
        {findings.map((finding) => (
          <FindingRow
            key={`${finding.pieceId} ${finding.bar} ${finding.message}`}
            finding={finding}
            name={nameOf(finding)}
          />
        ))}
      </ul>
      {parked.map((piece) => (
        <button
          key={piece.id}
          type="button"
          className="button"
          onClick={() =>
            session.lessons.change((each) => discardParked(each, piece.id), {
              label: 'throw the parked bars away',
            })
          }
        >
          Throw the parked bars of {piece.name} away
        </button>
      ))}
    </section>
  );
}
