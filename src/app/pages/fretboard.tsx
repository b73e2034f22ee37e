import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Place } from '../../core/fretboard';
import type { LineSheet, SheetBar } from '../../core/lesson';
import { formatName } from '../../core/theory';
import type { NeckNote } from '../../score';
import { chordsOf } from './describe';
import { useWidth } from './hooks';
import { useScore } from './score-ready';
import { useAtWork, useEditor } from './session';
import { straightened } from './straighten';

/** Wide enough to be read from a music stand, no wider than the sheet. */
const WIDEST = 860;

/** The neck with the notes of one bar: the one that sounds, else the chosen one, else the first. */
export function Fretboard({ sheet }: { readonly sheet: LineSheet }) {
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

  useLayoutEffect(() => {
    if (score.kind !== 'ready' || bar === undefined || width === 0) return;
    holder.current?.replaceChildren(
      score.score.drawFretboard({
        title: `Bar ${bar.written.number}, ${chordsOf(bar.written)}`,
        instrument: sheet.instrument,
        notes: neckNotes(bar),
        show: 'degree',
        position: positionOf(bar),
        nextPosition: positionOf(sheet.bars[index + 1]),
        sounding,
        frets,
        width: Math.min(width, WIDEST),
      }),
    );
  }, [score, bar, index, sheet, sounding, frets, width]);

  return (
    <section className="fretboard paper" id="fretboard" aria-label="Fretboard">
      <p className="fretboard__bar">{bar && `Bar ${bar.written.number}, ${chordsOf(bar.written)}`}</p>
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

const positionOf = (bar: SheetBar | undefined): number | null =>
  bar?.notes.find((note) => note.fingered !== null)?.fingered?.position ?? null;

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

/** The place of the note that sounds now; null in a rest and in silence. */
function useSounding(sheet: LineSheet): Place | null {
  const { playback } = useAtWork();
  const [place, setPlace] = useState<Place | null>(null);
  useEffect(
    () =>
      playback.follow((position) => {
        const own = position !== null && playback.getState().heard?.pieceId === sheet.id ? position : null;
        const played = own?.playedBar == null ? undefined : own.performance.bars[own.playedBar];
        if (!own || !played) {
          setPlace(null);
          return;
        }
        const tick = straightened(own.tick - played.start, sheet, own.performance.tempo);
        const note = sheet.bars[played.bar]?.notes.find(
          (each) => each.note.start <= tick && tick < each.note.start + each.note.duration,
        );
        setPlace(note?.fingered ?? null);
      }),
    [playback, sheet],
  );
  return place;
}
