import { capitalised } from '../../../core/base';
import { type LinePiece, markOf, markTechnique, type TechniqueMark } from '../../../core/lesson';
import { TECHNIQUE_ROWS, type Technique } from '../../../core/line';
import { CheckField } from '../../controls';
import { useAtWork } from '../at-work';

/** Which techniques the line is to show, and which others it may use. */
export function Techniques({ piece }: { readonly piece: LinePiece }) {
  const { session } = useAtWork();
  const mark = (technique: Technique, next: TechniqueMark | null) =>
    session.lessons.change((lesson) => markTechnique(lesson, piece.id, technique, next), {
      label: `${next === null ? 'leave out' : next === 'used' ? 'allow' : 'teach'} ${technique}`,
    });
  return (
    <fieldset className="techniques">
      <legend className="pad__heading">This piece teaches</legend>
      <p className="techniques__marks" aria-hidden="true">
        is to be shown <span>may be used</span>
      </p>
      {TECHNIQUE_ROWS.map(({ technique, hint, always }) => {
        const own = markOf(piece, technique);
        const isShown = own !== null && own !== 'used';
        return (
          <div className="techniques__row" key={technique}>
            <CheckField
              label={capitalised(technique)}
              note={hint}
              checked={isShown}
              onChange={(on) => mark(technique, on ? 'shown' : null)}
            />
            {!isShown && !always && (
              <input
                type="checkbox"
                className="check__box"
                aria-label={`${capitalised(technique)} may be used`}
                checked={own === 'used'}
                onChange={(event) => mark(technique, event.currentTarget.checked ? 'used' : null)}
              />
            )}
          </div>
        );
      })}
    </fieldset>
  );
}
