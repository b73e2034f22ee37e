import { type PointerEvent, useMemo } from 'react';
import { useStore } from 'zustand';
import { barName, capitalised, lengthWords, type Ticks } from '../../../core/base';
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
  wholenessOf,
} from '../../../core/writing';
import { useAtWork, useEditor, useLesson } from '../at-work';
import { SMALL, TINY, useMedia } from '../common';
import { Asked } from './asked';
import { KeyPick, KeyRow } from './choice';
import { KeysBehind } from './keys';
import { useNeckOpen } from './neck-open';
import { perform, putAway } from './perform';
import { useSaid } from './said';

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
  const said = useSaid();
  const pencil = useMemo(() => held && fitPencil(lesson, held), [lesson, held]);
  const desk = useMemo(() => (pencil === null ? null : deskOf(lesson, pencil)), [lesson, pencil]);
  const small = useMedia(SMALL);
  const overNeck = useNeckOpen() && small;
  if (pencil === null || desk === null) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of controls, not a form's fieldset
    <div
      className={`strip${overNeck ? ' strip--over-neck' : ''}`}
      role="group"
      aria-label={`Pencil in ${barName(number)}`}
      onPointerDown={keepFocus}
    >
      <div className="strip__head">
        <p className="strip__said">{said}</p>
        {small && <TakeBack />}
        <button type="button" className="button button--quiet" onClick={() => putAway(session)}>
          <span>
            Put <span className={small ? 'visually-hidden' : undefined}>the pencil </span>away
          </span>{' '}
          <span className="strip__shortcut" aria-hidden="true">
            Esc
          </span>
        </button>
      </div>
      <TooMuch desk={desk} sheet={sheet} />
      <Values pencil={pencil} overNeck={overNeck} />
      <Asked desk={desk} number={number} />
      <KeysBehind lesson={lesson} pencil={pencil} overNeck={overNeck} />
    </div>
  );
}

/** The last step taken back, under the thumb: the page's head may be out of view, and there is no keyboard. */
function TakeBack() {
  const { session } = useAtWork();
  const label = useStore(session.lessons, (state) => state.undoLabel);
  return (
    <button
      type="button"
      className="button button--quiet strip__back"
      aria-label="Take the last step back"
      title={label === null ? undefined : `Take back: ${label}`}
      disabled={label === null}
      onClick={() => session.lessons.undo()}
    >
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <path d="M8 4 3 9l5 5M3 9h9a5 5 0 0 1 0 8H9" fill="none" stroke="currentColor" strokeWidth="1.8" />
      </svg>
    </button>
  );
}

interface ValuesProps {
  readonly pencil: Pencil;
  /** Over the open neck of a small screen the values have no row of their own. */
  readonly overNeck: boolean;
}

/** The running note value, or that of the note at hand: a choice among the plain ones. */
function Values({ pencil, overNeck }: ValuesProps) {
  const { session } = useAtWork();
  const tiny = useMedia(TINY);
  const plain = NOTE_VALUES.includes(pencil.value);
  const choice = {
    label: 'Note value',
    chosen: pencil.value,
    nameOf: lengthWords,
    onChoose: (value: Ticks) => perform(session, toValue(value)),
  };
  if (tiny || overNeck) {
    const all = plain ? NOTE_VALUES : [pencil.value, ...NOTE_VALUES];
    return <KeyPick {...choice} className="strip__pick--value" all={all} />;
  }
  return (
    <KeyRow {...choice} className="strip__values" all={NOTE_VALUES}>
      {!plain && <span className="strip__odd">{lengthWords(pencil.value)}</span>}
      <span className="strip__odd">{pencil.way === 'rhythm first' ? 'Rhythm first' : ''}</span>
    </KeyRow>
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
        {capitalised(barName(number))} holds a {lengthWords(whole.by)} too much.{' '}
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
