import { useEffect, useState } from 'react';
import { shareParts } from '../../../core/base';
import { discardParked, forgetMeant, isMeant, isOwn, type Lesson, meanIt } from '../../../core/lesson';
import type { NoAnswer } from '../../../workers';
import type { CheckedFinding, FoundRepair } from '../../composer';
import { useAtWork, useEditor } from '../at-work';
import { useAnswer } from './answer';
import { FindingRow } from './finding-row';

/** Repairs are looked for when the lesson has been at rest for this long, in milliseconds: each is tried on the whole line. */
const REPAIR_REST = 400;

/** What a careful colleague would point out; each finding leads to its place. */
export function LessonCheck({ lesson }: { readonly lesson: Lesson }) {
  const { session } = useAtWork();
  const checked = useAnswer(lesson, session.composer.check, 0);
  const findings = checked?.answer ?? NOTHING;
  const isFresh = checked?.of === lesson;
  const repairs = useRepairs(isFresh ? findings : NOTHING);
  const parked = lesson.pieces.filter((piece) => piece.kind === 'line' && piece.parked.some(isOwn));
  const pencil = useEditor((state) => state.pencil);
  const pieceOf = (id: string) => lesson.pieces.find((piece) => piece.id === id);
  const isMeantSo = (finding: CheckedFinding) => {
    const piece = pieceOf(finding.pieceId);
    return piece?.kind === 'line' && isMeant(piece, finding);
  };
  /** A bar that is being written is not finished yet. */
  const isUnfinished = ({ pieceId, bar }: CheckedFinding) =>
    bar !== null && pencil?.pieceId === pieceId && pencil.bar === bar;
  const isSaid = (finding: CheckedFinding) => !isMeantSo(finding) && !isUnfinished(finding);
  const meant = lesson.pieces.filter((piece) => piece.kind === 'line' && (piece.meant ?? []).length > 0);
  const many = lesson.pieces.filter((piece) => piece.kind === 'line').length > 1;
  const nameOf = (finding: CheckedFinding) =>
    many ? `${lesson.pieces.find((piece) => piece.id === finding.pieceId)?.name ?? ''}: ` : '';
  const mend = (repair: FoundRepair) =>
    session.lessons.change((now) => (now === lesson ? shareParts(now, repair.lesson) : now), {
      label: lowered(repair.label),
    });
  return (
    <section className="check-list">
      <h2 className="pad__heading" id="lesson-check">
        Lesson check
      </h2>
      <ul aria-labelledby="lesson-check" aria-busy={!isFresh}>
        {!findings.some(isSaid) && (
          <li>
            {checked === null ? WAITING : checked.answer === null ? whyNot(checked.problem) : NOTHING_FOUND}
          </li>
        )}
        {findings.map((finding, index) =>
          !isSaid(finding) ? null : (
            <FindingRow
              key={`${finding.pieceId} ${finding.bar} ${finding.message}`}
              finding={finding}
              name={nameOf(finding)}
              repair={isFresh ? (repairs[index] ?? null) : null}
              onMend={mend}
              onMean={() =>
                session.lessons.change((each) => meanIt(each, finding.pieceId, finding), {
                  label: 'mean a finding so',
                })
              }
            />
          ),
        )}
      </ul>
      {meant.map((piece) => (
        <button
          key={piece.id}
          type="button"
          className="word"
          onClick={() =>
            session.lessons.change((each) => forgetMeant(each, piece.id), {
              label: 'hear every finding again',
            })
          }
        >
          Say again what is meant in {piece.name}
        </button>
      ))}
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

const NOTHING: readonly never[] = [];

const WAITING = 'The lesson is being looked through.';
const NOTHING_FOUND = 'Nothing to mend.';
const SILENT =
  'The lesson could not be checked: the part of the page that checks it no longer answered and was ended. The next change has it checked afresh.';
const NOT_CHECKED =
  'The lesson could not be checked, because a part of the page did not load. Check that the page is still reachable and load it again.';

/** A check that has no findings to tell says why. */
const whyNot = (problem: NoAnswer | null): string => (problem === 'silent' ? SILENT : NOT_CHECKED);

/** *Undo* names steps in small letters. */
const lowered = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

/** The repairs of the findings, looked for one after the other: those found so far, null where there is none. */
function useRepairs(findings: readonly CheckedFinding[]): readonly (FoundRepair | null)[] {
  const { composer } = useAtWork().session;
  const [found, setFound] = useState<{
    readonly of: readonly CheckedFinding[];
    readonly repairs: readonly (FoundRepair | null)[];
  }>({ of: NOTHING, repairs: NOTHING });
  const repairs = found.of === findings ? found.repairs : NOTHING;
  useEffect(() => {
    const index = repairs.length;
    const finding = findings[index];
    if (finding === undefined) return;
    let gone = false;
    const add = (repair: FoundRepair | null) => {
      if (!gone) setFound({ of: findings, repairs: [...repairs, repair] });
    };
    const look = async () => {
      const repair = finding.mendable ? await composer.repair(index) : null;
      add(repair?.ok === true ? repair.value : null);
    };
    const timer = setTimeout(() => void look(), index === 0 ? REPAIR_REST : 0);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [composer, findings, repairs]);
  return repairs;
}
