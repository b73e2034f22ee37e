import { TUNINGS } from '../../../core/fretboard';
import type { InstrumentSettings } from '../../../core/lesson';
import { formatName } from '../../../core/theory';

/** A tuning from a file that is not in the list is listed by its strings. */
export function tuningOptions(instrument: InstrumentSettings) {
  const known = TUNINGS.map((tuning) => ({
    value: tuning.id,
    label: `${tuning.spelling} · ${tuning.name}`,
  }));
  return tuningId(instrument) === OWN_TUNING
    ? [
        ...known,
        { value: OWN_TUNING, label: [...instrument.openStrings].reverse().map(formatName).join(' ') },
      ]
    : known;
}

const OWN_TUNING = 'own';

/** Which tuning of the list an instrument has. */
export const tuningId = (instrument: InstrumentSettings): string => {
  const spelled = (strings: InstrumentSettings['openStrings']) =>
    strings.map((pitch) => `${formatName(pitch)}${pitch.octave}`).join(' ');
  return (
    TUNINGS.find((tuning) => spelled(tuning.openStrings) === spelled(instrument.openStrings))?.id ??
    OWN_TUNING
  );
};
