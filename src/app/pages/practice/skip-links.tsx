/** Where the skip links lead to. */
export const SCORE_ID = 'practice-score';
export const PLAYING_ID = 'practice-playing';

const LINKS = [
  { id: SCORE_ID, words: 'Go to the score' },
  { id: PLAYING_ID, words: 'Go to playing' },
] as const;

/** Leads past what is above, for the keyboard. The address stays as it is: it may hold the lesson. */
export function SkipLinks() {
  return (
    <nav className="skip" aria-label="Skip">
      {LINKS.map(({ id, words }) => (
        <a
          key={id}
          className="button button--main skip__link"
          href={`#${id}`}
          onClick={(event) => {
            event.preventDefault();
            document.getElementById(id)?.focus();
          }}
        >
          {words}
        </a>
      ))}
    </nav>
  );
}
