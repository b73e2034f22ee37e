import { capitalised } from '../../../core/base';
import { type LinePiece, type LineSheet, setAim } from '../../../core/lesson';
import type { AimPlace } from '../../../core/line';
import { useAtWork } from '../at-work';
import { idOf, placeName, storedPlace, wordsAt } from './places';

interface AimListProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly places: readonly AimPlace[];
  readonly onChoose: (place: AimPlace) => void;
}

/** All aims in words; each leads to its fields, a bar's to the bar. */
export function AimList({ piece, sheet, places, onChoose }: AimListProps) {
  const { session } = useAtWork();
  const remove = (place: AimPlace) => {
    const where = storedPlace(piece, place);
    if (where === null) return;
    session.lessons.change((lesson) => setAim(lesson, piece.id, where, {}), {
      label: `take the aims for ${placeName(sheet, place)} away`,
    });
  };
  return (
    <ul className="aim-list" aria-label="Aims">
      {places.map((place) => {
        const name = placeName(sheet, place);
        return (
          <li key={idOf(place)}>
            <button
              type="button"
              className="finding"
              onClick={() => {
                if (place.kind === 'bar') session.chooseBar(piece.id, place.bar);
                else onChoose(place);
              }}
            >
              {capitalised(name)}: {wordsAt(piece, sheet, place)}.
            </button>
            <button
              type="button"
              className="word"
              aria-label={`Take the aims for ${name} away`}
              onClick={() => remove(place)}
            >
              Take it away
            </button>
          </li>
        );
      })}
    </ul>
  );
}
