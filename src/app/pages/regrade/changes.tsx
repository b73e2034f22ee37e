import { CheckField } from '../../controls';

/** A change of one bar that can be refused. */
export interface Refusable {
  /** What it is refused by. */
  readonly id: string;
  /** What is changed and why. */
  readonly label: string;
}

interface ChangesProps {
  readonly changes: readonly Refusable[];
  /** What is said beside them. */
  readonly remarks: readonly string[];
  /** Of the piece. */
  readonly name: string;
  /** Ids of the changes that are refused. */
  readonly refused: ReadonlySet<string>;
  readonly onRefuse: (refused: ReadonlySet<string>) => void;
}

/** The refusals with one that is given or taken back. */
function withOne(refused: ReadonlySet<string>, id: string, taken: boolean): ReadonlySet<string> {
  const next = new Set(refused);
  if (taken) next.delete(id);
  else next.add(id);
  return next;
}

/** What is changed, bar by bar, with its reason; each change can be refused, and all at once. */
export function Changes({ changes, remarks, name, refused, onRefuse }: ChangesProps) {
  return (
    <>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
      {changes.length > 0 && (
        <>
          <ul className="regrade__changes" aria-label={`Changes of ${name}`}>
            {changes.map(({ id, label }) => (
              <li key={id}>
                <CheckField
                  label={label}
                  checked={!refused.has(id)}
                  onChange={(taken) => onRefuse(withOne(refused, id, taken))}
                />
              </li>
            ))}
          </ul>
          <p>
            <button type="button" className="word" onClick={() => onRefuse(new Set())}>
              Take every change
            </button>{' '}
            <button
              type="button"
              className="word"
              onClick={() => onRefuse(new Set(changes.map(({ id }) => id)))}
            >
              Refuse every change
            </button>
          </p>
        </>
      )}
    </>
  );
}
