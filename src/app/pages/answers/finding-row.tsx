import { useId } from 'react';
import type { CheckedFinding, FoundRepair } from '../../composer';
import { useAtWork } from '../at-work';

interface FindingRowProps {
  readonly finding: CheckedFinding;
  /** The name of its piece, where there are several. */
  readonly name: string;
  /** Null where there is none, or none was found yet. */
  readonly repair: FoundRepair | null;
  readonly onMend: (repair: FoundRepair) => void;
  /** It is as the teacher means it, and is not said again. */
  readonly onMean: () => void;
}

/** A finding that leads to its place, with the button that mends it where one does. */
export function FindingRow({ finding, name, repair, onMend, onMean }: FindingRowProps) {
  const { session } = useAtWork();
  const id = useId();
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
          onClick={() => onMend(repair)}
        >
          {repair.label}
        </button>
      )}
      <button
        type="button"
        className="word finding__repair"
        id={`${id}-meant`}
        aria-labelledby={`${id}-meant ${id}-finding`}
        onClick={onMean}
      >
        I mean it
      </button>
    </li>
  );
}
