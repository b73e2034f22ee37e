import { type PointerEvent, useMemo } from 'react';
import type { LineSheet } from '../../../core/lesson';
import {
  type Desk,
  deskOf,
  fitPencil,
  mend,
  mendWords,
  NOTE_VALUES,
  type Pencil,
  toValue,
  valueName,
  wholenessOf,
} from '../../../core/writing';
import { useAtWork, useEditor, useLesson } from '../at-work';
import { TINY, useMedia } from '../common';
import { Asked } from './asked';
import { KeysBehind } from './keys';
import { goOnWriting, perform, putAway } from './perform';

interface StripProps {
  readonly sheet: LineSheet;
  /** As it is written over the bar. */
  readonly number: number;
}

/** Keeps the focus in the bar that is written in, so that its keys go on. */
const keepFocus = (event: PointerEvent) => {
  if (!(event.target instanceof Element) || event.target.closest('.strip__fold, .strip__asked') !== null)
    return;
  if (event.target.closest('button') !== null) event.preventDefault();
};

/** Everything that can be done where the pencil stands, each with its key: under the bar that is open for writing. */
export function PencilStrip({ sheet, number }: StripProps) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const held = useEditor((state) => state.pencil);
  const said = useEditor((state) => state.said);
  const pencil = useMemo(() => held && fitPencil(lesson, held), [lesson, held]);
  const desk = useMemo(() => (pencil === null ? null : deskOf(lesson, pencil)), [lesson, pencil]);
  if (pencil === null || desk === null) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of controls, not a form's fieldset
    <div className="strip" role="group" aria-label={`Pencil in bar ${number}`} onPointerDown={keepFocus}>
      <div className="strip__head">
        <p className="strip__said" role="status" id="pencil-said" aria-label="Pencil">
          {said === '' ? 'Write with the keys below, on staff, tab or neck.' : said}
        </p>
        <button type="button" className="button button--quiet" onClick={() => putAway(session)}>
          Put the pencil away{' '}
          <span className="strip__shortcut" aria-hidden="true">
            Esc
          </span>
        </button>
      </div>
      <TooMuch desk={desk} sheet={sheet} />
      <Values pencil={pencil} />
      <Asked desk={desk} number={number} />
      <KeysBehind lesson={lesson} pencil={pencil} />
    </div>
  );
}

/** The running note value, or that of the note at hand: a choice among the plain ones. */
function Values({ pencil }: { readonly pencil: Pencil }) {
  const { session } = useAtWork();
  const tiny = useMedia(TINY);
  const plain = NOTE_VALUES.some((value) => value === pencil.value);
  if (tiny) {
    return (
      <select
        className="strip__key strip__pick strip__pick--value"
        aria-label="Note value"
        value={pencil.value}
        onChange={(event) => {
          const value = NOTE_VALUES.find((each) => each === Number(event.currentTarget.value));
          goOnWriting(session);
          if (value !== undefined) perform(session, toValue(value));
        }}
      >
        {!plain && <option value={pencil.value}>{valueName(pencil.value)}</option>}
        {NOTE_VALUES.map((value) => (
          <option key={value} value={value}>
            {valueName(value)}
          </option>
        ))}
      </select>
    );
  }
  return (
    <div className="strip__values" role="radiogroup" aria-label="Note value">
      {NOTE_VALUES.map((value) => (
        // biome-ignore lint/a11y/useSemanticElements: a button keeps the focus where the notes are written
        <button
          key={value}
          type="button"
          role="radio"
          className="strip__value"
          aria-checked={pencil.value === value}
          onClick={() => perform(session, toValue(value))}
        >
          {valueName(value)}
        </button>
      ))}
      {!plain && <span className="strip__odd">{valueName(pencil.value)}</span>}
      <span className="strip__odd">{pencil.way === 'rhythm first' ? 'Rhythm first' : ''}</span>
    </div>
  );
}

/** What holds too much is said at once, and mended in one step. */
function TooMuch({ desk, sheet }: { readonly desk: Desk; readonly sheet: LineSheet }) {
  const { session } = useAtWork();
  return desk.piece.bars.map((bar, index) => {
    const whole = bar.over === undefined ? null : wholenessOf(desk, index);
    if (whole === null || whole.kind === 'whole') return null;
    const number = sheet.bars[index]?.written.number ?? index + 1;
    return (
      <p className="strip__much" key={bar.id}>
        Bar {number} holds a {valueName(whole.by)} too much.{' '}
        {whole.mends.map((way) => (
          <button
            key={way}
            type="button"
            className="button button--quiet"
            onClick={() => perform(session, mend(index, way))}
          >
            {mendWords(way, whole.lost)}
          </button>
        ))}
      </p>
    );
  });
}
