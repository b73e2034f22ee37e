import { CAUTIONS, CAUTIONS_HEADING, cautionWords } from '../../../core/lesson';

/** The cautions for hands and ears in full, each with the name of its source; the handout prints them in brief. */
export function Cautions() {
  return (
    <section className="cautions" aria-labelledby="cautions">
      <h2 className="cautions__heading" id="cautions">
        {CAUTIONS_HEADING}
      </h2>
      <ul className="cautions__list">
        {CAUTIONS.map((caution) => (
          <li key={caution.text}>{cautionWords(caution)}</li>
        ))}
      </ul>
    </section>
  );
}
