import { type LinePiece, setTechnique } from '../../../core/lesson';
import { TECHNIQUES, type Technique } from '../../../core/line';
import { CheckField } from '../../controls';
import { useAtWork } from '../at-work';
import { capitalised } from '../words';

const TECHNIQUE_NOTES: Readonly<Record<Technique, string>> = {
  'chord tones': 'notes of the chord',
  'scale steps': 'into the next chord',
  space: 'beat one left silent',
  octave: 'the root up high',
  'approach note': 'just before a root',
  anticipation: 'the next root early',
};

/** Which techniques the line may show. */
export function Techniques({ piece }: { readonly piece: LinePiece }) {
  const { session } = useAtWork();
  return (
    <fieldset className="techniques">
      <legend className="pad__heading">This piece teaches</legend>
      {TECHNIQUES.map((technique) => (
        <CheckField
          key={technique}
          label={capitalised(technique)}
          note={TECHNIQUE_NOTES[technique]}
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
