/** What a line of a chart is; `column` counts from 1 to where its text begins. */
export type ChartLine =
  | { readonly kind: 'blank' }
  | {
      readonly kind: 'section' | 'again';
      readonly name: string;
      readonly text: string;
      readonly column: number;
    }
  /** Words that are neither chords nor the name of a section. */
  | { readonly kind: 'unnamed words'; readonly text: string; readonly column: number }
  /** `said` is the line without its comment, from its first character. */
  | { readonly kind: 'bars'; readonly said: string; readonly text: string; readonly column: number };

const SECTION_NAME = /^([\p{L}\p{N}][^|:;]{0,59}):$/u;
/** A word of four letters or more that no chord symbol begins with. */
const PLAIN_WORDS =
  /^(?![A-G](?:[♭♯#b]|maj|min|dim|aug|sus|add|alt|Maj|Min))\p{L}{4}[\p{L}\p{N} '’.-]{0,56}$/u;

/** The name as it is kept: without blanks around it and with single blanks inside. */
const tidy = (name: string): string => name.trim().replace(/\s+/g, ' ');

/** Equal for names that differ in capitals only. */
export const sectionId = (name: string): string => name.toLowerCase();

/** The lines of a text with any of the usual line ends. */
export const linesOf = (text: string): readonly string[] => text.split(/\r\n|\r|\n/);

/** What a line says: itself without its comment. */
export function saidIn(line: string): string {
  const comment = line.indexOf(';');
  return comment < 0 ? line : line.slice(0, comment);
}

/** Tells what a line is; `isSection` says whether a name belongs to a section written above. */
export function classifyLine(line: string, isSection: (name: string) => boolean): ChartLine {
  const said = saidIn(line);
  const text = said.trim();
  if (text === '') return { kind: 'blank' };
  const column = said.length - said.trimStart().length + 1;
  const name = SECTION_NAME.exec(text)?.[1];
  if (name !== undefined) return { kind: 'section', name: tidy(name), text, column };
  if (isSection(tidy(text))) return { kind: 'again', name: tidy(text), text, column };
  if (PLAIN_WORDS.test(text)) return { kind: 'unnamed words', text, column };
  return { kind: 'bars', said, text, column };
}
