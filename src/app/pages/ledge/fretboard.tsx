import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { barName, capitalised } from '../../../core/base';
import type { HandSettings } from '../../../core/fretboard';
import { type LineSheet, neckShapes, type SheetNote } from '../../../core/lesson';
import { straightened } from '../../../core/playing';
import { SelectWord } from '../../controls';
import { Later, useAtWork, useEditor } from '../at-work';
import { SMALL, useMedia, useWidth } from '../common';
import { LINE_NOTES, NECK_LABELS, type NeckLabel, neckChoices, neckPicture } from '../neck';
import { fileStem, type PictureKind, type SaveNeck } from '../saving';
import { useScore } from '../score';
import { chordsOf } from '../words';
import { PENCIL } from './pencil-part';

/** Wide enough to be read from a music stand, no wider than the sheet. */
const WIDEST = 860;

/** Where a thumb writes, the picture is drawn so wide and then enlarged, so that each fret is as large as a thumb's key. */
const THUMB_WIDTH = 560;

interface FretboardProps {
  readonly sheet: LineSheet;
  readonly hand: HandSettings;
  /** Null on a page that hands out no pictures. */
  readonly onSave: SaveNeck | null;
  /**
   * Where it is given, the picture is drawn with large words and fills its place, to be read across a room; it is told
   * the font size of the smallest word on a note, in CSS pixels.
   */
  readonly onLarge?: (size: number) => void;
}

/** The neck with the notes of one bar: the one that sounds, else the chosen one, else the first. */
export function Fretboard({ sheet, hand, onSave, onLarge }: FretboardProps) {
  const { playback, session } = useAtWork();
  const chosen = useEditor((state) => (state.pieceId === sheet.id ? state.bar : null));
  const heard = useStore(playback, (state) => (state.heard?.pieceId === sheet.id ? state.bar : null));
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder);
  const writing = useEditor((state) => state.pencil !== null && state.pencil.pieceId === sheet.id);
  const score = useScore();
  const sounding = useSounding(sheet);
  const index = Math.min(heard ?? chosen ?? 0, sheet.bars.length - 1);
  const bar = sheet.bars[index];
  const [shown, setShown] = useState<string>(LINE_NOTES);
  const [show, setShow] = useState<NeckLabel>('degree');
  const views = useMemo(() => (bar === undefined ? [] : neckShapes(sheet, bar, hand)), [sheet, bar, hand]);
  const view = views.find(({ id }) => id === shown);

  const thumb = useMedia(SMALL) && writing;
  const layoutNow = (heardNote: SheetNote | null) => {
    const drawn = neckPicture(sheet, index, view, heardNote);
    const picture = drawn && writing ? withWholeNeck(drawn, sheet) : drawn;
    if (picture === null) return null;
    // Under a thumb the strings have all the room, and no rows over them.
    const hand = thumb ? { position: null, nextPosition: null } : { steady: true };
    const own = thumb ? THUMB_WIDTH : Math.min(width, WIDEST);
    const large = onLarge !== undefined;
    return { ...picture, show, ...hand, large, width: large ? largeWidth(picture) : own };
  };

  // biome-ignore lint/correctness/useExhaustiveDependencies: all that the picture is made of
  useLayoutEffect(() => {
    const picture = layoutNow(sounding);
    if (score.kind !== 'ready' || picture === null || width === 0) return;
    const { drawFretboard, layoutFretboard } = score.score;
    holder.current?.replaceChildren(drawFretboard(picture));
    if (onLarge === undefined) return;
    const { width: natural, height, marks } = layoutFretboard(picture);
    const room = holder.current?.clientHeight ?? 0;
    const sizes = marks.flatMap((mark) => (mark.kind === 'plate' ? [mark.size] : []));
    if (sizes.length > 0) onLarge(Math.min(...sizes) * Math.min(width / natural, room / height));
  }, [score, index, sheet, sounding, width, view, show, writing, thumb, onLarge]);

  const pencilled = {
    holder,
    layoutNow: () => {
      const picture = layoutNow(null);
      return score.kind !== 'ready' || picture === null ? null : score.score.layoutFretboard(picture);
    },
  };
  const save = (kind: PictureKind) => {
    const picture = neckPicture(sheet, index, view, null);
    if (bar === undefined || picture === null || onSave === null) return;
    const stem = `${fileStem(session.lessons.getState().lesson.title)}-neck-bar-${bar.written.number}`;
    onSave(session, kind, stem, { ...picture, show });
  };
  return (
    <section
      className={`fretboard paper${writing ? ' fretboard--writing' : ''}${onLarge === undefined ? '' : ' fretboard--large'}`}
      id="fretboard"
      aria-label="Fretboard"
      data-strings={sheet.instrument.openStrings.length}
    >
      {bar && (
        <p className="fretboard__bar">
          {capitalised(barName(bar.written.number))}, {chordsOf(bar.written, sheet.noteNames)}:{' '}
          <SelectWord
            label="Shown on the neck"
            value={view?.id ?? LINE_NOTES}
            options={neckChoices(views)}
            onChange={setShown}
          />{' '}
          by <SelectWord label="Written on the notes" value={show} options={NECK_LABELS} onChange={setShow} />
          {onSave !== null && (
            <span className="fretboard__save">
              . Save it as <SaveWord kind="svg" onSave={save} /> or <SaveWord kind="png" onSave={save} />.
            </span>
          )}
        </p>
      )}
      {/* The keys of the pencil write frets, too: the picture is a further way for the pointer. */}
      <div className="fretboard__picture" ref={holder} />
      {writing && <Later part={PENCIL} given={pencilled} />}
    </section>
  );
}

/** What a fret and what stands before the first one take in the large picture, in its own units. */
const LARGE = { fret: 44, before: 80 } as const;
/** Frets of a picture that says nothing of them. */
const USUAL_FRETS = 5;

/** Own width of the large picture: as small as holds its frets, so that all in it is as large as can be. */
function largeWidth({
  frets,
}: {
  readonly frets?: { readonly first: number; readonly last: number };
}): number {
  const count = frets === undefined ? USUAL_FRETS : frets.last - frets.first + 1;
  return LARGE.before + count * LARGE.fret;
}

/** How far the neck is shown while it is written on: everything a line at hand can reach, at least an octave. */
const WRITTEN_FRETS = 12;

function withWholeNeck<
  Picture extends { readonly frets?: { readonly first: number; readonly last: number } },
>(picture: Picture, { instrument }: LineSheet): Picture {
  const last = Math.min(instrument.frets, Math.max(WRITTEN_FRETS, picture.frets?.last ?? 0));
  return { ...picture, frets: { first: 1, last } };
}

interface SaveWordProps {
  readonly kind: PictureKind;
  readonly onSave: (kind: PictureKind) => void;
}

function SaveWord({ kind, onSave }: SaveWordProps) {
  const name = kind.toUpperCase();
  return (
    <button
      type="button"
      className="word"
      aria-label={`Save the neck as ${name}`}
      onClick={() => onSave(kind)}
    >
      {name}
    </button>
  );
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
