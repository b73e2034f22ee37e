import { barName, beatAt, type LineNote, type Metre, type SpelledPitch, samePitch } from '../../../core/base';
import {
  type BuiltStage,
  editStage,
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
  type StagePlace,
  stagePlaces,
  withChoice,
} from '../../../core/lesson';
import { syllableAt } from '../../../core/notation';
import { formatPitchIn } from '../../../core/theory';
import { SelectField } from '../../controls';
import { useAtWork } from '../at-work';

interface StageBarProps {
  readonly piece: LinePiece;
  readonly stage: BuiltStage;
  readonly sheet: LineSheet;
  readonly instrument: InstrumentSettings;
  /** Index of the written bar. */
  readonly bar: number;
  readonly onClose: () => void;
}

/** `Beat 2`, or `2 &` as it is counted. */
function placeName(metre: Metre, tick: number): string {
  const { index, start } = beatAt(metre, tick);
  return tick === start ? `Beat ${index + 1}` : `${index + 1} ${syllableAt(metre, tick) ?? 'and a bit'}`;
}

const SILENT = 'silent';
const keyOf = ({ letter, alteration, octave }: SpelledPitch): string => `${letter}${alteration}/${octave}`;

/** A bar of a stage, to be changed by hand: at each of its places a note of the chord, the line's own, or silence. */
export function StageBar({ piece, stage, sheet, instrument, bar, onClose }: StageBarProps) {
  const { session } = useAtWork();
  const shown = sheet.bars[bar];
  if (shown === undefined) return null;
  const { written } = shown;
  const name = barName(written.number);
  const places = stagePlaces(piece, stage, written, bar, instrument);
  const notes = stage.piece.bars[bar]?.notes ?? [];
  const change = (to: readonly LineNote[] | null) =>
    session.lessons.change((lesson) => editStage(lesson, piece.id, stage.stage, bar, to), {
      label: to === null ? `take back a change of ${sheet.name}` : `change ${name} of ${sheet.name}`,
    });
  const play = (place: StagePlace, value: string) => {
    const choice = place.choices.find(({ pitch }) => keyOf(pitch) === value);
    change(withChoice(notes, place, choice?.pitch ?? null));
  };
  return (
    <section className="drawer stage-bar" aria-label={`${name} of ${sheet.name}`}>
      <p>Change {name} of this stage. Only this stage changes; the line and the others stay.</p>
      <div className="stage-bar__places">
        {places.map((place) => (
          <SelectField
            key={place.start}
            label={placeName(written.metre, place.start)}
            where={`in ${name} of ${sheet.name}`}
            value={keyAt(place)}
            options={[
              { value: SILENT, label: SILENT },
              ...place.choices.map(({ pitch, degree }) => ({
                value: keyOf(pitch),
                label: `${degree === '' ? '' : `${degree}, `}${formatPitchIn(sheet.noteNames ?? 'letters', pitch)}`,
              })),
            ]}
            onChange={(value) => play(place, value)}
          />
        ))}
      </div>
      <p className="stage__actions">
        {[...stage.edited, ...stage.waiting].includes(bar) && (
          <button type="button" className="word" onClick={() => change(null)}>
            As it was derived
          </button>
        )}
        <button type="button" className="word" onClick={onClose}>
          Close {name}
        </button>
      </p>
    </section>
  );
}

const keyAt = ({ note, choices }: StagePlace): string => {
  const here = note && choices.find(({ pitch }) => samePitch(pitch, note.pitch));
  return here ? keyOf(here.pitch) : SILENT;
};
