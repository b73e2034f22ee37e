import { TUNINGS } from '../../../core/fretboard';
import { setInstrument } from '../../../core/lesson';
import { SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { tuningId, tuningOptions } from './tunings';

/** The tuning of the bass that the lesson is for. */
export function TuningField() {
  const { session } = useAtWork();
  const { instrument, noteNames = 'letters' } = useLesson();
  return (
    <SelectField
      label="Tuning"
      value={tuningId(instrument)}
      options={tuningOptions(instrument, noteNames)}
      onChange={(id) => {
        const tuning = TUNINGS.find((each) => each.id === id);
        if (tuning) {
          session.lessons.change((lesson) => setInstrument(lesson, { openStrings: tuning.openStrings }), {
            label: 'change the tuning',
          });
        }
      }}
    />
  );
}
