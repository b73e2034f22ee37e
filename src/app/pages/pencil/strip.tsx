import { memo, type PointerEvent, useEffect, useMemo, useState } from 'react';
import { feelById } from '../../../core/feel';
import type { Lesson, LineSheet } from '../../../core/lesson';
import { formatNameIn } from '../../../core/theory';
import {
  COMMAND_GROUPS,
  COMMANDS,
  type Command,
  type CommandGroup,
  type Desk,
  degreePitch,
  deskOf,
  fitPencil,
  harmonyAt,
  keysOf,
  keyText,
  mend,
  mendWords,
  NOTE_VALUES,
  nameFor,
  type OwnKeys,
  type Pencil,
  type Refusal,
  refusalWords,
  rhythmChoices,
  settled,
  target,
  toValue,
  valueName,
  wholenessOf,
} from '../../../core/writing';
import { useAtWork, useEditor, useLesson } from '../at-work';
import { SMALL, useMedia, whenIdle } from '../common';
import { Asked } from './asked';
import { KeysFold } from './keys-fold';
import { MidiWord } from './midi';
import { useOwnKeys } from './own-keys';
import { goOnWriting, perform, putAway, run } from './perform';

interface StripProps {
  readonly sheet: LineSheet;
  /** As it is written over the bar. */
  readonly number: number;
}

/** The longest that the keys are behind, in milliseconds. */
const LONGEST_WAIT = 300;

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
          {said === '' ? 'Write with the keys below, on the staff, on the tab or on the neck.' : said}
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

interface At {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
}

/** Where the hand rests: what could be done there is found out after the note is on the page. */
function KeysBehind({ lesson, pencil }: At) {
  const [at, setAt] = useState<At>({ lesson, pencil });
  useEffect(() => whenIdle(() => setAt({ lesson, pencil }), LONGEST_WAIT), [lesson, pencil]);
  return <Keys at={at} digits={pencil.digits} />;
}

const refusalAt = ({ lesson, pencil }: At, { gesture }: Command): Refusal | null => {
  const { did } = settled(gesture)(lesson, pencil);
  return did.kind === 'refused' ? did.why : null;
};

interface KeysProps {
  readonly at: At;
  /** What the digits mean now. */
  readonly digits: Pencil['digits'];
}

/** The keys, a moment behind the note: what each would write, and which of them would do nothing. */
const Keys = memo(function Keys({ at, digits }: KeysProps) {
  const own = useOwnKeys();
  const small = useMedia(SMALL);
  const [shown, setShown] = useState<CommandGroup>('Write');
  const desk = useMemo(() => deskOf(at.lesson, at.pencil), [at]);
  const refusals = useMemo(
    () => new Map(COMMANDS.map((command) => [command.id, refusalAt(at, command)])),
    [at],
  );
  const keysIn = (group: CommandGroup) => (
    <div className="strip__keys">
      {COMMANDS.filter(
        (command) => command.group === group && (command.when === undefined || command.when === digits),
      ).map((command) => (
        <CommandKey
          key={command.id}
          command={command}
          note={desk === null ? '' : noteOf(command, desk)}
          shortcut={shortcutOf(command, own, desk === null ? '' : noteOf(command, desk))}
          refusal={refusals.get(command.id) ?? null}
        />
      ))}
      {group === 'Copy and repeat' && desk !== null && <Rhythms desk={desk} />}
      {group === 'The way of writing' && <MidiWord />}
    </div>
  );
  if (small) {
    return (
      <>
        {keysIn(shown)}
        <GroupChoice shown={shown} onShow={setShown} />
        {shown === 'The way of writing' && <KeysFold own={own} />}
      </>
    );
  }
  return (
    <>
      {COMMAND_GROUPS.map((group) => (
        <section className="strip__group" key={group}>
          <h4 className="strip__title">{group}</h4>
          {keysIn(group)}
        </section>
      ))}
      <KeysFold own={own} />
    </>
  );
});

interface GroupChoiceProps {
  readonly shown: CommandGroup;
  readonly onShow: (group: CommandGroup) => void;
}

/** Under the thumb one row of keys is shown at a time. */
function GroupChoice({ shown, onShow }: GroupChoiceProps) {
  return (
    <div className="strip__groups" role="radiogroup" aria-label="Keys shown">
      {COMMAND_GROUPS.map((group) => (
        // biome-ignore lint/a11y/useSemanticElements: a button keeps the focus where the notes are written
        <button
          key={group}
          type="button"
          role="radio"
          className="strip__value"
          aria-checked={group === shown}
          onClick={() => onShow(group)}
        >
          {group}
        </button>
      ))}
    </div>
  );
}

/** The note that a degree or a name would be here, in the lesson's names: `F`, `B♭`, `Si♭`. */
function noteOf(command: Command, desk: Desk): string {
  const naming = desk.lesson.noteNames ?? 'letters';
  if (command.name !== undefined)
    return formatNameIn(naming, nameFor(command.name, harmonyAt(desk, target(desk))));
  const step = /^degree (\d)$/.exec(command.id)?.[1];
  if (step === undefined) return '';
  const pitch = degreePitch(desk, target(desk), Number(step));
  return pitch === null ? '' : formatNameIn(naming, pitch);
}

/** The key beside a command; where it has several, the one that is the note's own letter: h for H, b for B. */
function shortcutOf(command: Command, own: OwnKeys, note: string): string | null {
  const keys = keysOf(command, own);
  const letter = command.name === undefined ? undefined : note.charAt(0).toLowerCase();
  return keys.find((key) => key === letter) ?? keys[0] ?? null;
}

interface CommandKeyProps {
  readonly command: Command;
  readonly note: string;
  readonly shortcut: string | null;
  /** Why it would do nothing here; null where it would do something. */
  readonly refusal: Refusal | null;
}

/** A key keeps its place where it would do nothing; pressed there, it says why. */
const CommandKey = memo(function CommandKey({ command, note, shortcut, refusal }: CommandKeyProps) {
  const { session } = useAtWork();
  return (
    <button
      type="button"
      className={`strip__key${refusal === null ? '' : ' strip__key--idle'}`}
      title={refusal === null ? command.words : refusalWords(refusal)}
      onClick={() => run(session, command)}
    >
      <span>
        {command.name === undefined && command.short}
        {note !== '' && <b>{command.name === undefined ? ` ${note}` : note}</b>}
      </span>
      {shortcut !== null && (
        <span className="strip__shortcut" aria-hidden="true">
          {keyText(shortcut)}
        </span>
      )}
    </button>
  );
});

/** The rhythms that the bar at hand can take: of the line's other bars, and of the feel. */
function Rhythms({ desk }: { readonly desk: Desk }) {
  const { session } = useAtWork();
  const choices = useMemo(() => rhythmChoices(desk), [desk]);
  const inLine = choices.filter(({ bar }) => bar !== null);
  const inFeel = choices.filter(({ bar }) => bar === null);
  if (choices.length === 0) return null;
  return (
    <select
      className="strip__key"
      aria-label="Take another rhythm"
      value=""
      onChange={(event) => {
        const chosen = choices.find(({ id }) => id === event.currentTarget.value);
        goOnWriting(session);
        if (chosen !== undefined) perform(session, chosen.gesture);
      }}
    >
      <option value="">Take another rhythm …</option>
      <optgroup label="Of this line">
        {inLine.map(({ id, bar, text }) => (
          <option key={id} value={id}>
            Bar {desk.bars[bar ?? 0]?.number}: {text}
          </option>
        ))}
      </optgroup>
      <optgroup label={`Of ${feelById(desk.piece.feel).name}`}>
        {inFeel.map(({ id, text }) => (
          <option key={id} value={id}>
            {text}
          </option>
        ))}
      </optgroup>
    </select>
  );
}

/** The running note value, or that of the note at hand: a choice among the plain ones. */
function Values({ pencil }: { readonly pencil: Pencil }) {
  const { session } = useAtWork();
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
      {!NOTE_VALUES.some((value) => value === pencil.value) && (
        <span className="strip__odd">{valueName(pencil.value)}</span>
      )}
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
