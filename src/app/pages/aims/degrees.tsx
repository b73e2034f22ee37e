import type { AimTerms } from '../../../core/lesson';
import { DEGREE_STEPS, type DegreeStep } from '../../../core/line';
import { CheckField } from '../../controls';

interface DegreesProps {
  readonly where: string;
  /** Undefined for all. */
  readonly degrees: AimTerms['degrees'];
  readonly onChange: (degrees: AimTerms['degrees']) => void;
}

const NAMES: Readonly<Record<DegreeStep, string>> = {
  1: 'Root',
  2: 'Second',
  3: 'Third',
  4: 'Fourth',
  5: 'Fifth',
  6: 'Sixth',
  7: 'Seventh',
};

/** The degrees that the notes keep to, each ticked for itself; all of them ticked asks nothing. */
export function Degrees({ where, degrees, onChange }: DegreesProps) {
  const ticked = (step: DegreeStep) => degrees === undefined || degrees.includes(step);
  const tick = (step: DegreeStep, on: boolean) => {
    const next = DEGREE_STEPS.filter((each) => (each === step ? on : ticked(each)));
    // The last one stays: a line has some note.
    if (next.length > 0) onChange(next.length === DEGREE_STEPS.length ? undefined : next);
  };
  return (
    <fieldset className="aim-fields__degrees">
      <legend>Degrees</legend>
      {DEGREE_STEPS.map((step) => (
        <CheckField
          key={step}
          label={NAMES[step]}
          where={where}
          checked={ticked(step)}
          onChange={(on) => tick(step, on)}
        />
      ))}
    </fieldset>
  );
}
