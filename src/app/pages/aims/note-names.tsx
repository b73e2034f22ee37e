import { setNoteNames } from '../../../core/lesson';
import { NAMINGS, type Naming } from '../../../core/theory';
import { SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';

const NAMING_WORDS: Readonly<Record<Naming, string>> = {
  letters: 'letters: C D E F G A B',
  german: 'German: C D E F G A H',
  'fixed do': 'fixed do: Do Re Mi Fa Sol La Si',
};

/** How notes are named everywhere: on the page, on paper, and where chords are typed. */
export function NoteNames() {
  const { session } = useAtWork();
  const { noteNames = 'letters' } = useLesson();
  return (
    <SelectField
      label="Note names"
      wide
      value={noteNames}
      options={NAMINGS.map((naming) => ({ value: naming, label: NAMING_WORDS[naming] }))}
      onChange={(naming) =>
        session.lessons.change((lesson) => setNoteNames(lesson, naming), { label: 'change the note names' })
      }
    />
  );
}
