import { type RefObject, useEffect, useRef, useState } from 'react';
import { stringNumber } from '../../../core/base';
import { deskOf, writePlace } from '../../../core/writing';
import type { FretboardLayout } from '../../../score';
import { useAtWork } from '../at-work';
import { placeText } from './named';
import { useTellsNeckOpen } from './neck-open';
import { placeAt } from './on-neck';
import { perform, workNow } from './perform';

interface NeckPencilProps {
  /** Holds the picture of the neck, and may scroll it. */
  readonly holder: RefObject<HTMLElement | null>;
  /** The picture as numbers; null while there is none. */
  readonly layoutNow: () => FretboardLayout | null;
}

interface Under {
  /** From the upper left edge of the neck's part of the page, in CSS pixels. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/**
 * The neck while a bar is open for writing: a touch writes the note there, and under a mouse stands which degree it
 * would be. A finger that draws the neck sideways writes nothing.
 */
export function NeckPencil({ holder, layoutNow }: NeckPencilProps) {
  const { session } = useAtWork();
  const [under, setUnder] = useState<Under | null>(null);
  const layout = useRef(layoutNow);
  useTellsNeckOpen();
  layout.current = layoutNow;
  useEffect(() => {
    const neck = holder.current;
    if (neck === null) return;
    const placeOf = ({ clientX, clientY }: MouseEvent) => {
      const drawing = neck.querySelector('svg')?.getBoundingClientRect();
      const drawn = layout.current();
      if (drawing === undefined || drawn === null) return null;
      const scale = drawn.width / drawing.width;
      return placeAt(drawn, (clientX - drawing.left) * scale, (clientY - drawing.top) * scale);
    };
    const onClick = (event: MouseEvent) => {
      const place = placeOf(event);
      if (place !== null) perform(session, writePlace(stringNumber(place.string), place.fret));
    };
    // The keys go on where the notes are written.
    const onMouseDown = (event: MouseEvent) => event.preventDefault();
    const onMove = (event: PointerEvent) => {
      const place = event.pointerType === 'mouse' ? placeOf(event) : null;
      const work = workNow(session);
      const desk = work && deskOf(work.lesson, work.pencil);
      const edge = neck.parentElement?.getBoundingClientRect();
      if (place === null || !desk || edge === undefined) return setUnder(null);
      const text = placeText(desk, place.string, place.fret);
      setUnder(text === '' ? null : { x: event.clientX - edge.left, y: event.clientY - edge.top, text });
    };
    const onLeave = () => setUnder(null);
    neck.addEventListener('click', onClick);
    neck.addEventListener('mousedown', onMouseDown);
    neck.addEventListener('pointermove', onMove);
    neck.addEventListener('pointerleave', onLeave);
    return () => {
      neck.removeEventListener('click', onClick);
      neck.removeEventListener('mousedown', onMouseDown);
      neck.removeEventListener('pointermove', onMove);
      neck.removeEventListener('pointerleave', onLeave);
    };
  }, [holder, session]);
  return (
    under && (
      <span className="pencil__under" style={{ left: under.x, top: under.y }}>
        {under.text}
      </span>
    )
  );
}
