import { useEffect, useId, useState } from 'react';
import type { Finding } from '../../core/composing';
import { whenIdle } from './hooks';
import { useAtWork } from './session';

type Repair = NonNullable<ReturnType<NonNullable<Finding['repair']>>>;

/** A finding that leads to its place, with the button that mends it where one does. */
export function FindingRow({ finding, name }: { readonly finding: Finding; readonly name: string }) {
  const { session } = useAtWork();
  const id = useId();
  const repair = useRepair(finding);
  return (
    <li>
      {finding.bar === null ? (
        <span id={`${id}-finding`}>{`${name}${finding.message}`}</span>
      ) : (
        <button
          type="button"
          className="finding"
          id={`${id}-finding`}
          onClick={() => session.chooseBar(finding.pieceId, finding.bar)}
        >
          {name}
          {finding.message}
        </button>
      )}
      {repair !== null && (
        <button
          type="button"
          className="word finding__repair"
          id={`${id}-repair`}
          aria-labelledby={`${id}-repair ${id}-finding`}
          onClick={() => session.lessons.change(repair.apply, { label: lowered(repair.label) })}
        >
          {repair.label}
        </button>
      )}
    </li>
  );
}

/** *Undo* names steps in small letters. */
const lowered = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);

/** The repair is looked for when the page has nothing better to do: several are tried on the whole line. */
function useRepair(finding: Finding): Repair | null {
  const [found, setFound] = useState<{ readonly of: Finding; readonly repair: Repair | null } | null>(null);
  useEffect(
    () => whenIdle(() => setFound({ of: finding, repair: finding.repair?.() ?? null }), 500),
    [finding],
  );
  return found?.of === finding ? found.repair : null;
}
