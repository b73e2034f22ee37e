import type { Student } from './student';

const STEP = 20;
const LEAST = -300;
const MOST = 800;

/** Sets by ear how late wireless headphones sound. */
export function Headphones({ student: { record, setDelay } }: { readonly student: Student }) {
  if (record === null) return null;
  const { delay } = record;
  const step = (by: number, name: string, sign: string) => (
    <button
      type="button"
      className="button steps__button"
      aria-label={name}
      onClick={() => setDelay(Math.min(MOST, Math.max(LEAST, delay + by)))}
    >
      {sign}
    </button>
  );
  return (
    <section className="practice__headphones" aria-labelledby="practice-headphones">
      <h2 id="practice-headphones">Wireless headphones</h2>
      <p>
        They often sound later than the page knows. Play with the click on, watch the green line, and move it
        until it reaches each note as you hear it.
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form, and this is two buttons about one number */}
      <div className="steps" role="group" aria-label="Delay of the headphones">
        {step(-STEP, 'The line is late: move it earlier', '−')}
        <output className="steps__tempo">
          <b>{delay}</b> ms
        </output>
        {step(STEP, 'The line is early: move it later', '+')}
      </div>
    </section>
  );
}
