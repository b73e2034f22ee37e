import { capitalised } from '../../../core/base';
import { type LinePiece, setTechnique } from '../../../core/lesson';
import { TECHNIQUE_ROWS } from '../../../core/line';
import { CheckField } from '../../controls';
import { useAtWork } from '../at-work';

/** Which techniques the line may show. */
export function Techniques({ piece }: { readonly piece: LinePiece }) {
  const { session } = useAtWork();
  return (
    <fieldset className="techniques">
      <legend className="pad__heading">This piece teaches</legend>
      {TECHNIQUE_ROWS.map(({ technique, hint }) => (
        <CheckField
          key={technique}
          label={capitalised(technique)}
          note={hint}
          checked={piece.techniques.includes(technique)}
          onChange={(on) =>
            session.lessons.change((lesson) => setTechnique(lesson, piece.id, technique, on), {
              label: `${on ? 'teach' : 'leave out'} ${technique}`,
            })
          }
        />
      ))}
    </fieldset>
  );
}
