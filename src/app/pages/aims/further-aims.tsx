import { useState } from 'react';
import { capitalised } from '../../../core/base';
import { type LinePiece, type LineSheet, setAim } from '../../../core/lesson';
import type { AimPlace } from '../../../core/line';
import { SelectField } from '../../controls';
import { Later, useAtWork } from '../at-work';
import { EDITOR } from './later-editor';
import { aimedPlaces, placeName, storedPlace, wordsAt } from './places';

interface FurtherAimsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  /** What was derived of it, perhaps a moment ago. */
  readonly sheet: LineSheet;
}

const idOf = (place: AimPlace): string =>
  place.kind === 'line' ? 'line' : `${place.kind} ${place.kind === 'bar' ? place.bar : place.section}`;

/** Sections that an aim can be for: where there is more than one, or one with a name. */
function sectionPlaces({ chart }: LineSheet): readonly AimPlace[] {
  const { sections } = chart;
  if (sections.length === 1 && sections[0]?.name === null) return [];
  return sections.flatMap(({ again }, index): readonly AimPlace[] =>
    again ? [] : [{ kind: 'section', section: index }],
  );
}

/** What is asked of the line beyond its techniques, and of single sections and bars. */
export function FurtherAims({ piece, sheet }: FurtherAimsProps) {
  const [chosen, setChosen] = useState('line');
  const aimed = aimedPlaces(piece);
  const apart = aimed.filter(({ kind }) => kind !== 'line');
  const bars = apart.filter(({ kind }) => kind === 'bar');
  const places = [{ kind: 'line' } as const, ...sectionPlaces(sheet), ...bars];
  const place = places.find((each) => idOf(each) === chosen) ?? { kind: 'line' };
  return (
    <details className="hand-pad">
      <summary>
        <span className="pad__heading">Further aims</span>{' '}
        <span className="hand-pad__facts">{summary(piece, sheet, aimed)}</span>
      </summary>
      {apart.length > 0 && (
        <AimList piece={piece} sheet={sheet} places={apart} onChoose={(each) => setChosen(idOf(each))} />
      )}
      {places.length > 1 && (
        <div className="aims aims__place">
          <SelectField
            label="Aims for"
            wide
            value={idOf(place)}
            options={places.map((each) => ({ value: idOf(each), label: placeName(sheet, each) }))}
            onChange={setChosen}
          />
        </div>
      )}
      <Later part={EDITOR} given={{ piece, sheet, place }} />
      <p className="pad__hint aims__bar-hint">To ask something of one bar, choose it on the sheet.</p>
    </details>
  );
}

function summary(piece: LinePiece, sheet: LineSheet, aimed: readonly AimPlace[]): string {
  const line = wordsAt(piece, sheet, { kind: 'line' });
  const others = aimed.filter(({ kind }) => kind !== 'line').map((place) => placeName(sheet, place));
  const told = [
    ...(line === '' ? [] : [line]),
    ...(others.length === 0 ? [] : [`more for ${others.join(', ')}`]),
  ];
  return told.length === 0 ? 'what must come, how many notes, how high: nothing asked' : told.join('; ');
}

interface AimListProps extends FurtherAimsProps {
  readonly places: readonly AimPlace[];
  readonly onChoose: (place: AimPlace) => void;
}

/** All aims in words; each leads to its fields, a bar's to the bar. */
function AimList({ piece, sheet, places, onChoose }: AimListProps) {
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
