import { type Metre, metreName } from '../../../core/base';
import { CHART_METRES } from '../../../core/chart';
import { FEELS, type Feel, feelMetre, homeMetre, isFeelId } from '../../../core/feel';
import {
  type ChartReading,
  type Lesson,
  type LinePiece,
  setFeel,
  setKey,
  setLevel,
  setMetre,
  setTempo,
  TEMPO_RANGE,
  toldTempo,
  writtenTempo,
} from '../../../core/lesson';
import { LEVELS, levelLimits } from '../../../core/line';
import { ALL_KEYS, describeKey, describeKeyIn, type Key, sameKey } from '../../../core/theory';
import { NumberField, SelectField } from '../../controls';
import { useAtWork } from '../at-work';

interface PieceProps {
  readonly piece: LinePiece;
  /** What its chart tells, perhaps as it was a moment ago. */
  readonly reading: ChartReading;
}

/** A feel's name, with the metre that the piece takes where the feel is not played in its own: `Waltz (3/4)`. */
const feelWords = (feel: Feel, metre: Metre): string =>
  feelMetre(feel, metre) === null ? `${feel.name} (${metreName(homeMetre(feel))})` : feel.name;

const FOUND = 'found';

/** Feel, tempo, level, key and metre of the piece at hand. */
export function Aims({ piece, reading }: PieceProps) {
  const { session } = useAtWork();
  const change = (label: string, command: (lesson: Lesson) => Lesson, join?: string) =>
    session.lessons.change(command, join === undefined ? { label } : { label, join });
  return (
    <div className="aims">
      <SelectField
        label="Feel"
        value={piece.feel}
        options={FEELS.map((feel) => ({ value: feel.id, label: feelWords(feel, piece.metre) }))}
        onChange={(feel) => {
          if (isFeelId(feel)) change('change the feel', (lesson) => setFeel(lesson, piece.id, feel));
        }}
      />
      <NumberField
        label="Tempo"
        value={toldTempo(piece, piece.tempo)}
        least={Math.ceil(toldTempo(piece, TEMPO_RANGE.least))}
        most={Math.floor(toldTempo(piece, TEMPO_RANGE.most))}
        onChange={(told) =>
          change(
            'change the tempo',
            (lesson) => setTempo(lesson, piece.id, writtenTempo(piece, told)),
            `tempo ${piece.id}`,
          )
        }
      />
      <SelectField
        label="Level"
        wide
        value={String(piece.level)}
        options={LEVELS.map((level) => ({
          value: String(level),
          label: `${level}: ${levelLimits(level).words}`,
        }))}
        onChange={(text) => {
          const chosen = LEVELS.find((level) => String(level) === text);
          if (chosen !== undefined)
            change('change the level', (lesson) => setLevel(lesson, piece.id, chosen));
        }}
      />
      <SelectField
        label="Key"
        value={piece.key === null ? FOUND : describeKey(piece.key)}
        options={keyOptions(piece.key, reading)}
        onChange={(text) =>
          change('change the key', (lesson) =>
            setKey(
              lesson,
              piece.id,
              keysToChoose(piece.key).find((key) => describeKey(key) === text) ?? null,
            ),
          )
        }
      />
      <SelectField
        label="Metre"
        value={metreName(piece.metre)}
        options={CHART_METRES.map((metre) => ({ value: metreName(metre), label: metreName(metre) }))}
        onChange={(text) => {
          const metre = CHART_METRES.find((each) => metreName(each) === text);
          if (metre) change('change the metre', (lesson) => setMetre(lesson, piece.id, metre));
        }}
      />
    </div>
  );
}

/** Every major and minor key, and a key from a file that is none of them. */
const keysToChoose = (own: Key | null): readonly Key[] =>
  own === null || ALL_KEYS.some((key) => sameKey(key, own)) ? ALL_KEYS : [...ALL_KEYS, own];

/** The key that was found comes first. */
function keyOptions(own: Key | null, reading: ChartReading) {
  const named = reading.chart.bars[0]?.key ?? null;
  const found = own === null ? reading.key : (named ?? reading.keyGuesses[0]?.key ?? reading.key);
  const nameOf = (key: Key) => describeKeyIn(reading.noteNames ?? 'letters', key);
  return [
    {
      value: FOUND,
      label: keyWords(reading.keyGuesses.length > 0, named !== null, nameOf(found)),
    },
    ...keysToChoose(own).map((key) => ({ value: describeKey(key), label: nameOf(key) })),
  ];
}

function keyWords(found: boolean, named: boolean, name: string): string {
  if (named) return `${name} (in the chart)`;
  return found ? `${name} (found)` : 'from the chords';
}
