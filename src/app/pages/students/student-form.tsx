import { HAND_SPANS, LONG_SCALE, readTuning, SHORT_SCALE, writeTuning } from '../../../core/fretboard';
import { LEVELS, levelLimits } from '../../../core/line';
import { REGISTER_LIMITS, type Student } from '../../../core/students';
import { NAMINGS, type Naming } from '../../../core/theory';
import { CheckField, NumberField, SelectField } from '../../controls';
import { TextField } from './fields';

const NAMES: Record<Naming, string> = {
  letters: 'Letters: C D E F G A B',
  german: 'German: C D E F G A H',
  'fixed do': 'Fixed do: Do Re Mi Fa Sol La Si',
};

const SIZES = [
  { value: 'adult', label: 'Adult' },
  { value: 'child', label: 'Small' },
] as const;

interface StudentFormProps {
  readonly student: Student;
  readonly onChange: (change: (student: Student) => Student) => void;
}

/** Everything that is kept of a student beside the lessons: what a lesson for them starts from. */
export function StudentForm({ student, onChange }: StudentFormProps) {
  const { instrument, hand, noteNames } = student;
  const set = (change: Partial<Student>) => onChange((standing) => ({ ...standing, ...change }));
  const setNeck = (change: Partial<Student['instrument']>) =>
    onChange((standing) => ({ ...standing, instrument: { ...standing.instrument, ...change } }));
  const size = SIZES.find(({ value }) => HAND_SPANS[value].reach === hand.reach)?.value;
  return (
    <div className="register__fields">
      <TextField
        label="Name"
        where="of the student"
        value={student.name}
        most={REGISTER_LIMITS.name}
        onSettle={(text) => {
          if (text.trim() === '') return 'A student needs a name, so that you find them again.';
          set({ name: text.trim() });
          return null;
        }}
      />
      <SelectField
        label="Level"
        where="of the student"
        value={String(student.level)}
        options={LEVELS.map((level) => ({
          value: String(level),
          label: `${level}: ${levelLimits(level).words}`,
        }))}
        onChange={(text) => set({ level: LEVELS.find((level) => String(level) === text) ?? student.level })}
      />
      <TextField
        key={noteNames}
        label="Open strings, lowest first"
        where="of the student"
        value={writeTuning(instrument.openStrings, noteNames)}
        most={60}
        onSettle={(text) => {
          const read = readTuning(text, noteNames);
          if (!read.ok) return read.problem.message;
          setNeck({ openStrings: read.value });
          return null;
        }}
      />
      <SelectField
        label="Scale length"
        where="of the student"
        value={String(instrument.scaleLength)}
        options={[...new Set([LONG_SCALE, SHORT_SCALE, instrument.scaleLength])].map((length) => ({
          value: String(length),
          label:
            length === LONG_SCALE
              ? 'Long scale, 34 in'
              : length === SHORT_SCALE
                ? 'Short scale, 30 in'
                : `${Math.round(length)} mm`,
        }))}
        onChange={(length) => setNeck({ scaleLength: Number(length) })}
      />
      <NumberField
        label="Frets of the student"
        value={instrument.frets}
        least={Math.min(20, instrument.frets)}
        most={Math.max(24, instrument.frets)}
        onChange={(frets) => setNeck({ frets })}
      />
      <SelectField
        label="Hand size"
        where="of the student"
        value={size ?? 'own'}
        options={[
          ...SIZES,
          ...(size === undefined
            ? [{ value: 'own' as const, label: `Own measure: ${Math.round(hand.reach)} mm` }]
            : []),
        ]}
        onChange={(chosen) => {
          if (chosen !== 'own') set({ hand: HAND_SPANS[chosen] });
        }}
      />
      <SelectField
        label="Names of notes"
        where="of the student"
        value={noteNames}
        options={NAMINGS.map((naming) => ({ value: naming, label: NAMES[naming] }))}
        onChange={(naming) => set({ noteNames: naming })}
      />
      <div className="register__check">
        <CheckField
          label="Left-handed"
          where="student"
          checked={instrument.leftHanded === true}
          onChange={(leftHanded) => setNeck({ leftHanded })}
        />
      </div>
      <TextField
        long
        label="Your notes"
        where="of the student"
        value={student.notes}
        most={REGISTER_LIMITS.notes}
        hint="They stay on this device and are printed nowhere."
        onSettle={(notes) => {
          set({ notes });
          return null;
        }}
      />
    </div>
  );
}
