import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { HandSettings } from '../../core/fretboard';
import type { LineSheet, SheetBar, SheetNote } from '../../core/lesson';
import { formatName } from '../../core/theory';
import type { NeckNote } from '../../score';
import { SelectWord } from '../controls';
import { chordsOf } from './describe';
import { useWidth } from './hooks';
import { handMoves, neckViews } from './neck-views';
import { useScore } from './score-ready';
import { useAtWork, useEditor } from './session';
import { straightened } from './straighten';

/** Wide enough to be read from a music stand, no wider than the sheet. */
const WIDEST = 860;

const LINE_NOTES = 'line';

type Label = 'degree' | 'name' | 'finger';

const LABELS: readonly { readonly value: Label; readonly label: string }[] = [
  { value: 'degree', label: 'degree' },
  { value: 'name', label: 'name' },
  { value: 'finger', label: 'finger' },
];

/** The neck with the notes of one bar: the one that sounds, else the chosen one, else the first. */
export function Fretboard({ sheet, hand }: { readonly sheet: LineSheet; readonly hand: HandSettings }) {
  const { playback } = useAtWork();
  const chosen = useEditor((state) => (state.pieceId === sheet.id ? state.bar : null));
  const heard = useStore(playback, (state) => (state.heard?.pieceId === sheet.id ? state.bar : null));
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const score = useScore();
  const sounding = useSounding(sheet);
  const index = Math.min(heard ?? chosen ?? 0, sheet.bars.length - 1);
  const bar = sheet.bars[index];
  const frets = useMemo(() => fretsOf(sheet), [sheet]);
  const [shown, setShown] = useState<string>(LINE_NOTES);
  const [show, setShow] = useState<Label>('degree');
  const views = useMemo(() => (bar === undefined ? [] : neckViews(sheet, bar, hand)), [sheet, bar, hand]);
  const view = views.find(({ id }) => id === shown);
  const place = sounding?.fingered ?? null;

  useLayoutEffect(() => {
    if (score.kind !== 'ready' || bar === undefined || width === 0) return;
    const about = `Bar ${bar.written.number}, ${chordsOf(bar.written, sheet.noteNames)}`;
    const title = view === undefined ? about : `${about}: ${view.title}`;
    const moves = handMoves(sheet, index, sounding);
    const picture =
      view === undefined
        ? { title, notes: neckNotes(bar), ...moves, frets }
        : { title, notes: view.notes, position: view.position };
    holder.current?.replaceChildren(
      score.score.drawFretboard({
        ...picture,
        instrument: sheet.instrument,
        show,
        sounding: place,
        width: Math.min(width, WIDEST),
      }),
    );
  }, [score, bar, index, sheet, sounding, place, frets, width, view, show]);

  return (
    <section
      className="fretboard paper"
      id="fretboard"
      aria-label="Fretboard"
      data-strings={sheet.instrument.openStrings.length}
    >
      {bar && (
        <p className="fretboard__bar">
          Bar {bar.written.number}, {chordsOf(bar.written, sheet.noteNames)}:{' '}
          <SelectWord
            label="Shown on the neck"
            value={view?.id ?? LINE_NOTES}
            options={[
              { value: LINE_NOTES, label: 'the notes of the line' },
              ...views.map(({ id, title }) => ({ value: id, label: title })),
            ]}
            onChange={setShown}
          />{' '}
          by <SelectWord label="Written on the notes" value={show} options={LABELS} onChange={setShow} />
        </p>
      )}
      <div className="fretboard__picture" ref={holder} />
    </section>
  );
}

/** The same frets for the whole line, so that the neck stands still while it plays. */
function fretsOf(sheet: LineSheet): { readonly first: number; readonly last: number } {
  const fretted = sheet.bars
    .flatMap((bar) => bar.notes)
    .flatMap(({ fingered }) => (fingered === null || fingered.fret === 0 ? [] : [fingered.fret]));
  const first = Math.max(1, Math.min(...fretted, 12) - 1);
  return { first, last: Math.max(first + 4, ...fretted) };
}

/** Every place of the bar once. */
function neckNotes(bar: SheetBar): readonly NeckNote[] {
  const places = new Map<string, NeckNote>();
  for (const { note, fingered, degreeText } of bar.notes) {
    if (fingered !== null) {
      places.set(`${fingered.string} ${fingered.fret}`, {
        string: fingered.string,
        fret: fingered.fret,
        finger: fingered.finger,
        degree: degreeText,
        name: formatName(note.pitch),
      });
    }
  }
  return [...places.values()];
}

/** The note that sounds now; null in a rest and in silence. */
function useSounding(sheet: LineSheet): SheetNote | null {
  const { playback } = useAtWork();
  const [sounding, setSounding] = useState<SheetNote | null>(null);
  useEffect(
    () =>
      playback.follow((position) => {
        const own = position !== null && playback.getState().heard?.pieceId === sheet.id ? position : null;
        const played = own?.playedBar == null ? undefined : own.performance.bars[own.playedBar];
        if (!own || !played) {
          setSounding(null);
          return;
        }
        const tick = straightened(own.tick - played.start, sheet, own.performance.tempo);
        const note = sheet.bars[played.bar]?.notes.find(
          (each) => each.note.start <= tick && tick < each.note.start + each.note.duration,
        );
        setSounding(note ?? null);
      }),
    [playback, sheet],
  );
  return sounding;
}
