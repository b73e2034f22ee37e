import { type HandoutSettings, setHandout } from '../../../core/lesson';
import { CheckField, SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';

interface ChoiceProps {
  readonly handout: Pick<HandoutSettings, 'degrees' | 'fingers' | 'numerals' | 'paper'>;
  readonly set: (change: Partial<HandoutSettings>) => void;
}

/** What stands with the notes, on the sheet and on paper. */
export function NoteMarks({ handout, set }: ChoiceProps) {
  return (
    <>
      <CheckField
        label="Degrees"
        note="R ♭3 5 under the tab"
        checked={handout.degrees}
        onChange={(degrees) => set({ degrees })}
      />
      <CheckField
        label="Fingers"
        note="1 to 4, 0 is open"
        checked={handout.fingers}
        onChange={(fingers) => set({ fingers })}
      />
      <CheckField
        label="Chord numerals"
        note="I vi V7/IV"
        checked={handout.numerals === true}
        onChange={(numerals) => set({ numerals })}
      />
    </>
  );
}

export function PaperField({ handout, set }: ChoiceProps) {
  return (
    <SelectField
      label="Paper"
      value={handout.paper}
      options={[
        { value: 'A4', label: 'A4' },
        { value: 'Letter', label: 'Letter' },
      ]}
      onChange={(paper) => set({ paper })}
    />
  );
}

/** What the printed sheet shows, in short; the handout page has the rest. */
export function HandoutChoices() {
  const { session } = useAtWork();
  const { handout } = useLesson();
  const set: ChoiceProps['set'] = (change) =>
    session.lessons.change((lesson) => setHandout(lesson, change), { label: 'change the handout' });
  return (
    <fieldset className="techniques">
      <legend className="pad__heading">On the handout</legend>
      <NoteMarks handout={handout} set={set} />
      <PaperField handout={handout} set={set} />
    </fieldset>
  );
}
