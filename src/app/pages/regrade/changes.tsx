import type { PieceRegrade } from '../../../core/composing';
import { CheckField } from '../../controls';

interface ChangesProps {
  readonly regrade: PieceRegrade;
  /** Of the piece. */
  readonly name: string;
  /** Indices of the bars whose change is refused. */
  readonly refused: ReadonlySet<number>;
  readonly onTake: (bar: number, taken: boolean) => void;
  readonly onAll: (refused: ReadonlySet<number>) => void;
}

/** What is changed, bar by bar, with its reason; each change can be refused, and all at once. */
export function Changes({ regrade, name, refused, onTake, onAll }: ChangesProps) {
  const { changes, remarks } = regrade;
  return (
    <>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      {changes.length > 0 && (
        <>
          <ul className="regrade__changes" aria-label={`Changes of ${name}`}>
            {changes.map(({ bar, what, why }) => (
              <li key={bar}>
                <CheckField
                  label={`${what} ${why.join(' ')}`}
                  checked={!refused.has(bar)}
                  onChange={(taken) => onTake(bar, taken)}
                />
              </li>
            ))}
          </ul>
          <p>
            <button type="button" className="word" onClick={() => onAll(new Set())}>
              Take every change
            </button>{' '}
            <button
              type="button"
              className="word"
              onClick={() => onAll(new Set(changes.map(({ bar }) => bar)))}
            >
              Refuse every change
            </button>
          </p>
        </>
      )}
    </>
  );
}
