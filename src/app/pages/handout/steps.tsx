import { useId } from 'react';
import { type HandoutSettings, PRACTICE_STEPS } from '../../../core/lesson';
import { fullSettings, USUAL_STEPS } from '../../../handout';

interface HandoutStepsProps {
  readonly handout: HandoutSettings;
  readonly onChange: (change: Partial<HandoutSettings>, join?: string) => void;
}

/** The practice steps in the teacher's own words; there while they are printed. */
export function HandoutSteps({ handout, onChange }: HandoutStepsProps) {
  const { steps, blocks } = fullSettings(handout);
  if (!blocks.includes('practice')) return null;
  const isUsual = steps.join('\n') === USUAL_STEPS.join('\n');
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">Practice steps, a box to tick each</legend>
      <ol className="steps">
        {steps.map((step, index) => (
          <Step
            // biome-ignore lint/suspicious/noArrayIndexKey: a step is nothing but its place and its words
            key={index}
            number={index + 1}
            text={step}
            onType={(text) =>
              onChange(
                { steps: steps.map((each, other) => (other === index ? text : each)) },
                `step ${index}`,
              )
            }
            onRemove={() => onChange({ steps: steps.filter((_, other) => other !== index) })}
          />
        ))}
      </ol>
      <div className="designer__actions">
        {steps.length < PRACTICE_STEPS.most && (
          <button type="button" className="button" onClick={() => onChange({ steps: [...steps, ''] })}>
            Add a step
          </button>
        )}
        {!isUsual && (
          <button
            type="button"
            className="button button--quiet"
            onClick={() => onChange({ steps: USUAL_STEPS })}
          >
            The usual steps
          </button>
        )}
      </div>
      <p className="designer__hint">
        The tempo ladder stands under them; its rungs are those of the playing sentence.
      </p>
    </fieldset>
  );
}

interface StepProps {
  /** From 1. */
  readonly number: number;
  readonly text: string;
  readonly onType: (text: string) => void;
  readonly onRemove: () => void;
}

function Step({ number, text, onType, onRemove }: StepProps) {
  const id = useId();
  return (
    <li className="steps__step">
      <label className="field__label" htmlFor={id}>
        Step {number}
      </label>
      <textarea
        id={id}
        className="field__box"
        rows={2}
        maxLength={PRACTICE_STEPS.length}
        value={text}
        onChange={(event) => onType(event.currentTarget.value)}
      />
      <button
        type="button"
        className="button button--quiet parts__move"
        aria-label={`Remove step ${number}`}
        onClick={onRemove}
      >
        Remove
      </button>
    </li>
  );
}
