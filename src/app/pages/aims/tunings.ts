import { samePitch } from '../../../core/base';
import { TUNINGS, writeTuning } from '../../../core/fretboard';
import type { InstrumentSettings } from '../../../core/lesson';
import type { Naming } from '../../../core/theory';

/** A tuning from a file that is not in the list is listed by its strings. */
export function tuningOptions(instrument: InstrumentSettings, naming: Naming) {
  const known = TUNINGS.map(({ id, name, openStrings }) => ({
    value: id,
    label: `${writeTuning(openStrings, naming)} · ${name(naming)}`,
  }));
  return tuningId(instrument) === OWN_TUNING
    ? [...known, { value: OWN_TUNING, label: writeTuning(instrument.openStrings, naming) }]
    : known;
}

const OWN_TUNING = 'own';

/** Which tuning of the list an instrument has. */
export const tuningId = ({ openStrings }: InstrumentSettings): string =>
  TUNINGS.find(
    (tuning) =>
      tuning.openStrings.length === openStrings.length &&
      tuning.openStrings.every((pitch, index) => {
        const other = openStrings[index];
        return other !== undefined && samePitch(pitch, other);
      }),
  )?.id ?? OWN_TUNING;
