import { type PointerEvent, useEffect, useMemo } from 'react';
import { barName, capitalised, lengthWords, type Ticks } from '../../../core/base';
import type { LineSheet } from '../../../core/lesson';
import {
  type Desk,
  describeAtHand,
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
import { TINY, useMedia } from '../common';
import { Asked } from './asked';
import { KeyPick, KeyRow } from './choice';
import { KeysBehind } from './keys';
import { perform, putAway } from './perform';

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
  useEffect(
    () =>
      session.lessons.subscribe((state, before) => {
        const { pencil: at, pencilled } = session.editor.getState();
        const there = at && fitPencil(state.lesson, at);
        // What was said of a step is no longer so when it is taken back.
        if (there !== null && state.lesson !== before.lesson && state.lesson !== pencilled)
          session.editor.setState({ said: describeAtHand(state.lesson, there) });
      }),
    [session],
  );
  if (pencil === null || desk === null) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of controls, not a form's fieldset
    <div className="strip" role="group" aria-label={`Pencil in ${barName(number)}`} onPointerDown={keepFocus}>
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
  const plain = NOTE_VALUES.includes(pencil.value);
  const choice = {
    label: 'Note value',
    chosen: pencil.value,
    nameOf: lengthWords,
    onChoose: (value: Ticks) => perform(session, toValue(value)),
  };
  if (tiny) {
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
