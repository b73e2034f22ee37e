import { CAUTIONS, CAUTIONS_HEADING } from '../../../core/lesson';

/** The cautions for hands and ears, word for word as the handout prints them. */
export function Cautions() {
  return (
    <section className="cautions" aria-labelledby="cautions">
      <h2 className="cautions__heading" id="cautions">
        {CAUTIONS_HEADING}
      </h2>
      <ul className="cautions__list">
        {CAUTIONS.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
