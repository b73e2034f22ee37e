import { useMemo } from 'react';
import { barName, barNames, capitalised } from '../../../core/base';
import { chordFunctions } from '../../../core/chart';
import { type ChartReading, type LinePiece, writeSectionKey } from '../../../core/lesson';
import { describeKey, describeKeyIn } from '../../../core/theory';
import { useAtWork } from '../at-work';

interface HarmonyProps {
  readonly piece: LinePiece;
  readonly reading: ChartReading;
  /** After a key was written; its button is gone then, and the focus needs a place. */
  readonly onWritten: () => void;
}

/** What else there is to tell of the key, and what every chord does in it. */
export function Harmony({ piece, reading, onWritten }: HarmonyProps) {
  return (
    <>
      <OtherKeys piece={piece} reading={reading} onWritten={onWritten} />
      <ChordsAtWork reading={reading} />
    </>
  );
}

/** Sections that sound in another key than the one the teacher chose, to be written into the chart in a click. */
function OtherKeys({ piece, reading, onWritten }: HarmonyProps) {
  const { session } = useAtWork();
  const naming = reading.noteNames ?? 'letters';
  return reading.otherKeys.map(({ section, key }) => {
    const { name = null, start = 0 } = reading.chart.sections[section] ?? {};
    const place = name ?? `The part from ${barName(reading.chart.bars[start]?.number ?? 1)} on`;
    const named = describeKeyIn(naming, key);
    return (
      <p className="harmony" key={section}>
        {place} sounds like {named}:{' '}
        <button
          type="button"
          className="word"
          aria-label={`Write ${named} over ${name ?? 'this part'}`}
          onClick={() => {
            session.lessons.change((lesson) => writeSectionKey(lesson, piece.id, section, key), {
              label: `write ${named} over a section`,
            });
            onWritten();
          }}
        >
          write it in the chart
        </button>
        .
      </p>
    );
  });
}

interface AtWorkChord {
  readonly sentence: string;
  readonly bars: readonly number[];
}

/** Each chord once a key, in the order of the chart, with the bars it stands in. */
function chordsAtWork(reading: ChartReading): readonly AtWorkChord[] {
  const functions = chordFunctions(reading.chart, reading.key, [], reading.noteNames);
  const found = new Map<string, AtWorkChord>();
  reading.chart.bars.forEach((bar, index) => {
    for (const each of functions[index] ?? []) {
      if (each === null) continue;
      const id = `${describeKey(bar.key ?? reading.key)} ${each.sentence}`;
      const { sentence } = each;
      const bars = found.get(id)?.bars ?? [];
      found.set(id, { sentence, bars: bars.at(-1) === bar.number ? bars : [...bars, bar.number] });
    }
  });
  return [...found.values()];
}

function ChordsAtWork({ reading }: { readonly reading: ChartReading }) {
  const chords = useMemo(() => chordsAtWork(reading), [reading]);
  if (chords.length === 0) return null;
  return (
    <details className="chords-at-work">
      <summary>What the chords do</summary>
      <ul aria-label="What the chords do">
        {chords.map(({ sentence, bars }) => (
          <li key={`${sentence} ${bars.join()}`}>
            {sentence} <span className="chords-at-work__bars">{capitalised(barNames(bars))}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
