import '../../styles/file-sentences.css';

interface SentencesProps {
  readonly sentences: readonly string[];
  /** Id of the element that names the list. */
  readonly labelledBy?: string;
}

/** What is said of a file that is read, a line each. */
export const Sentences = ({ sentences, labelledBy }: SentencesProps) => (
  <ul className="file-sentences" aria-labelledby={labelledBy}>
    {sentences.map((sentence) => (
      <li key={sentence}>{sentence}</li>
    ))}
  </ul>
);
