import { useState } from 'react';
import { type Lesson, type LinePiece, type LineSheet, lineAtHand, sheetAtHand } from '../../../core/lesson';
import type { AimPlace } from '../../../core/line';
import { SelectField } from '../../controls';
import { Later, laterPart, SheetAhead } from '../at-work';
import { EDITOR } from './later-editor';
import { aimedPlaces, idOf, placeName, wordsAt } from './places';

interface FurtherAimsProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  /** The lesson as everything computed shows it, perhaps a moment older. */
  readonly settled: Lesson;
}

const LIST = laterPart('The list of aims', async () => (await import('./aim-list')).AimList);

const SEVERAL = laterPart(
  'The aims for several bars',
  async () => (await import('./several-bars')).SeveralBarsAims,
);

/** Sections that an aim can be for: where there is more than one, or one with a name. */
function sectionPlaces({ chart }: LineSheet): readonly AimPlace[] {
  const { sections } = chart;
  if (sections.length === 1 && sections[0]?.name === null) return [];
  return sections.flatMap(({ again }, index): readonly AimPlace[] =>
    again ? [] : [{ kind: 'section', section: index }],
  );
}

/** What is asked of the line beyond its techniques, and of single sections and bars. */
export function FurtherAims({ piece, settled }: FurtherAimsProps) {
  const line = lineAtHand(settled, piece.id);
  return (
    <>
      {line && <SheetAhead piece={line} instrument={settled.instrument} />}
      <AimsOfLine piece={piece} settled={settled} />
    </>
  );
}

function AimsOfLine({ piece, settled }: FurtherAimsProps) {
  const sheet = sheetAtHand(settled, piece.id);
  return sheet && <AimsOfSheet piece={piece} sheet={sheet} />;
}

interface AimsOfSheetProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

function AimsOfSheet({ piece, sheet }: AimsOfSheetProps) {
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
        <Later
          part={LIST}
          given={{ piece, sheet, places: apart, onChoose: (each) => setChosen(idOf(each)) }}
        />
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
      <Later part={SEVERAL} given={{ piece, sheet }} />
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
