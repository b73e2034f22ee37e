import { type PointerEvent, type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { barName, type LineNote, staffStepOf, stringNumber } from '../../../core/base';
import {
  atHand,
  type Command,
  commandFor,
  deskOf,
  fitPencil,
  type Gesture,
  goTo,
  harmonyAt,
  inTurn,
  moveTo,
  ontoString,
  selectedNotes,
  staffPitch,
  stopsIn,
  toStaffStep,
} from '../../../core/writing';
import type { BarBox, SystemLayout } from '../../../score';
import type { Session } from '../../state';
import { useAtWork, useEditor, useLesson } from '../at-work';
import { SMALL, useMedia } from '../common';
import { useClicksBeside } from './clicks';
import { degreeAndName, tonesOn } from './named';
import { useNeckOpen } from './neck-open';
import { ownKeysNow } from './own-keys';
import { type Origin, perform, putAway, run, workNow } from './perform';
import { NEAR_NOTE, nearestTick, stepAt, stepHeight, stringAt, xOfTick, zoneAt } from './place';
import { pointed } from './pointed';
import { useRehearsal } from './rehearsal';
import { isStillTapping } from './tapping';

interface SurfaceProps {
  readonly box: BarBox;
  readonly system: SystemLayout;
  readonly number: number;
}

interface Drag extends Origin {
  readonly x: number;
  readonly y: number;
  readonly zone: 'staff' | 'tab' | null;
  readonly moved: boolean;
}

/** How far a pointer may go before it drags, in CSS pixels. */
const DRAG_FROM = 5;
let drags = 0;

/** Everything in which a key press has a meaning of its own. */
const TAKES_KEYS =
  '.strip__fold, input, select, textarea, [contenteditable], [role="menuitem"], [role="menu"], dialog';

/** The bar that is open for writing: it takes the keys and the pointer, and shows the note at hand and what is selected. */
export function PencilSurface({ box, system, number }: SurfaceProps) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const held = useEditor((state) => state.pencil);
  const root = useRef<HTMLDivElement>(null);
  const drag = useRef<Drag | null>(null);
  const [under, setUnder] = useState<{ x: number; y: number; text: string } | null>(null);
  const pencil = useMemo(() => held && fitPencil(lesson, held), [lesson, held]);
  const desk = useMemo(() => (pencil === null ? null : deskOf(lesson, pencil)), [lesson, pencil]);
  const isHere = pencil?.bar === box.bar;

  useEffect(() => {
    if (isHere) root.current?.focus({ preventScroll: true });
  }, [isHere]);
  useStaffInView(isHere, root, system.staff.top);
  useRehearsal(isHere);
  useClicksBeside(isHere, root, system);
  useKeys(isHere, () => {
    const now = drag.current;
    drag.current = null;
    if (now === null) putAway(session);
    else abandon(now);
  });

  const abandon = ({ lesson: before, pencil: at, moved }: Drag) => {
    if (moved && session.lessons.getState().lesson !== before) session.lessons.undo();
    session.editor.setState({ pencil: at, bar: at.bar });
  };

  if (pencil === null || desk === null) return null;
  const strings = desk.instrument.openStrings.length;
  const at = (event: PointerEvent) => {
    const edge = root.current?.getBoundingClientRect();
    return { x: event.clientX - (edge?.left ?? 0) + box.x, y: event.clientY - (edge?.top ?? 0) };
  };

  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.preventDefault();
    root.current?.focus({ preventScroll: true });
    const { x, y } = at(event);
    perform(session, pointed(desk, { box, system, x, y, shift: event.shiftKey }));
    if (event.shiftKey) return;
    const zone = zoneAt(system, y);
    const work = workNow(session);
    if (work === null) return;
    drags += 1;
    drag.current = { ...work, join: `drag ${drags}`, x, y, zone, moved: false };
    root.current?.setPointerCapture(event.pointerId);
  };

  const onPointerMove = (event: PointerEvent) => {
    const { x, y } = at(event);
    const now = drag.current;
    if (now === null) {
      setUnder(event.pointerType === 'mouse' ? previewAt(x, y) : null);
      return;
    }
    if (!now.moved && Math.hypot(x - now.x, y - now.y) < DRAG_FROM) return;
    setUnder(null);
    drag.current = { ...now, moved: true };
    const from = deskOf(now.lesson, now.pencil);
    const note = from && atHand(from)?.note;
    if (from === null || !note) return;
    perform(session, inTurn(goTo({ bar: box.bar, tick: note.start }), ...dragged(now, note, x, y)), now);
  };

  /** What a drag asks of a note: another step of the staff or another string, and another time. */
  const dragged = (from: Drag, note: LineNote, x: number, y: number): readonly Gesture[] => {
    const steps = Math.round((from.y - y) / stepHeight(system));
    const string = stringAt(system, y, strings);
    const otherString = string !== stringAt(system, from.y, strings);
    const sideways = Math.abs(x - from.x) > NEAR_NOTE;
    return [
      ...(from.zone === 'staff' && steps !== 0 ? [toStaffStep(staffStepOf(note.pitch) + steps)] : []),
      ...(from.zone === 'tab' && otherString ? [ontoString(stringNumber(string))] : []),
      ...(sideways ? [moveTo(gridAt(x, note.duration))] : []),
    ];
  };

  /** The nearest sixteenth, or triplet eighth. */
  const gridAt = (x: number, duration: number): number => {
    const grid = duration % 320 === 0 && duration % 240 !== 0 ? 320 : 240;
    const length = box.positions.at(-1)?.tick ?? 0;
    const ticks = Array.from({ length: Math.floor(length / grid) }, (_, index) => index * grid);
    return nearestTick(box, ticks, x);
  };

  /** What would be written under the pointer: on the staff its degree and name, on the tab the chord's tones by their frets. */
  const previewAt = (x: number, y: number) => {
    const moment = { bar: box.bar, tick: nearestTick(box, stopsIn(desk, box.bar), x) };
    const zone = zoneAt(system, y);
    if (zone === null) return null;
    const text =
      zone === 'staff'
        ? degreeAndName(desk, moment, staffPitch(stepAt(system, y), harmonyAt(desk, moment)))
        : tonesOn(desk, moment, stringAt(system, y, strings));
    return text === '' ? null : { x, y, text };
  };

  const chosen = selectedNotes(desk).get(box.bar) ?? new Set();
  const top = Math.max(0, system.staff.top - 22);
  const height = system.tab.bottom - top + 14;
  const next = isHere && pencil.next !== null ? pencil.next : null;
  return (
    // Keys and pointer write notes here, as in a field: it is no group of controls.
    <div
      ref={root}
      className={`pencil${isHere ? ' pencil--here' : ''}`}
      role="application"
      aria-label={`Writing in ${barName(number)}`}
      aria-describedby="pencil-said"
      tabIndex={isHere ? 0 : -1}
      style={{ left: box.x, width: box.width, height: system.height }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={() => {
        drag.current = null;
      }}
      onPointerCancel={() => {
        drag.current = null;
      }}
      onPointerLeave={() => setUnder(null)}
    >
      {[...chosen].map((note) => (
        <span
          key={note.start}
          className="pencil__note"
          style={{ left: xOfTick(box, note.start) - box.x - 11, top, height }}
        />
      ))}
      {isHere && atHand(desk) === null && (
        <span
          className="pencil__place"
          style={{ left: xOfTick(box, pencil.tick) - box.x - 2, top, height }}
        />
      )}
      {next !== null && (
        <span
          className="pencil__next"
          style={{
            left: (next.bar === box.bar ? xOfTick(box, next.tick) - 8 : box.x + box.width - 4) - box.x,
            top,
            height,
          }}
        />
      )}
      {isHere && pencil.digits === 'frets' && (
        <span
          className="pencil__string"
          style={{
            top:
              system.tab.top +
              ((system.tab.bottom - system.tab.top) * (pencil.string - 1)) / Math.max(1, strings - 1),
          }}
        />
      )}
      {under !== null && (
        <span className="pencil__under" style={{ left: under.x - box.x, top: under.y }}>
          {under.text}
        </span>
      )}
    </div>
  );
}

/** Over the staff there is room for the chord's name, in CSS pixels. */
const OVER_STAFF = 46;

/** Where the open neck leaves a small screen little room, the staff that is written on lies at its upper edge. */
function useStaffInView(isHere: boolean, root: RefObject<HTMLElement | null>, staff: number): void {
  const small = useMedia(SMALL);
  const cramped = useNeckOpen() && small && isHere;
  useEffect(() => {
    if (!cramped) return;
    // After whatever else brings the bar into view.
    const frame = requestAnimationFrame(() => {
      const edge = root.current?.getBoundingClientRect().top;
      if (edge === undefined) return;
      const top = Math.max(0, edge + window.scrollY + staff - OVER_STAFF);
      window.scrollTo({ top, behavior: 'instant' });
    });
    return () => cancelAnimationFrame(frame);
  }, [cramped, root, staff]);
}

/** Whether a key press is for the pencil: in the bar, in its strip, or nowhere else. A button keeps its own keys. */
function isOurs({ target, key }: KeyboardEvent): boolean {
  if (!(target instanceof Element) || target === document.body) return true;
  const presses = (key === 'Enter' || key === ' ') && target.closest('button, summary') !== null;
  return target.closest('.pencil, .strip') !== null && target.closest(TAKES_KEYS) === null && !presses;
}

function commandOf(event: KeyboardEvent, session: Session): Command | null {
  const press = {
    key: event.key,
    code: event.code,
    shift: event.shiftKey,
    alt: event.altKey,
    ctrl: event.ctrlKey || event.metaKey,
  };
  return commandFor(press, session.editor.getState().pencil?.digits ?? 'degrees', ownKeysNow());
}

/** The keys of the scheme, while a bar is open for writing and nothing else takes them. */
function useKeys(listens: boolean, out: () => void): void {
  const { session } = useAtWork();
  const leave = useRef(out);
  leave.current = out;
  useEffect(() => {
    if (!listens) return;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.defaultPrevented || session.editor.getState().asked === 'taps' || !isOurs(event)) return;
      const isTap = isStillTapping(event);
      const command = event.key === 'Escape' || isTap ? null : commandOf(event, session);
      if (command === null && event.key !== 'Escape' && !isTap) return;
      event.preventDefault();
      event.stopPropagation();
      if (isTap) return;
      if (command === null) leave.current();
      else run(session, command);
    };
    window.addEventListener('keydown', onKeyDown, { capture: true });
    return () => window.removeEventListener('keydown', onKeyDown, { capture: true });
  }, [listens, session]);
}
