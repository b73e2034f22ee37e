import { useEffect, useId, useRef } from 'react';

interface QuestionProps {
  readonly asked: string;
  /** What is on the button that does it. */
  readonly yes: string;
  readonly onAnswer: (yes: boolean) => void;
}

/** The one question before something is deleted. */
export function Question({ asked, yes, onAnswer }: QuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  const id = useId();
  useEffect(() => keep.current?.focus(), []);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a question within the dialog, not a form of its own
    <div className="register__question" role="group" aria-labelledby={id}>
      <p id={id}>{asked}</p>
      <p className="register__deeds">
        <button type="button" className="button button--main" onClick={() => onAnswer(true)}>
          {yes}
        </button>
        <button ref={keep} type="button" className="button" onClick={() => onAnswer(false)}>
          Keep
        </button>
      </p>
    </div>
  );
}
