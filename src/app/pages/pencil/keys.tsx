import { memo, useEffect, useMemo, useState } from 'react';
import { barName, capitalised } from '../../../core/base';
import { feelById } from '../../../core/feel';
import type { Lesson } from '../../../core/lesson';
import { formatNameIn } from '../../../core/theory';
import {
  COMMAND_GROUPS,
  COMMANDS,
  type Command,
  type CommandGroup,
  type Desk,
  degreePitch,
  deskOf,
  harmonyAt,
  keysOf,
  keyText,
  nameFor,
  type OwnKeys,
  type Pencil,
  type Refusal,
  refusalWords,
  rhythmChoices,
  target,
} from '../../../core/writing';
import { useAtWork } from '../at-work';
import { LOW, SMALL, useMedia, whenIdle } from '../common';
import { KeyPick, KeyRow } from './choice';
import { KeysFold } from './keys-fold';
import { MidiWord } from './midi';
import { placeText } from './named';
import { useOwnKeys } from './own-keys';
import { goOnWriting, perform, run } from './perform';

/** The longest that the keys are behind, in milliseconds. */
const LONGEST_WAIT = 300;

interface At {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
}

interface KeysBehindProps extends At {
  /** Over the open neck of a small screen the choice of keys stands before them, in their row. */
  readonly overNeck: boolean;
}

/** Where the hand rests: what could be done there is found out after the note is on the page. */
export function KeysBehind({ lesson, pencil, overNeck }: KeysBehindProps) {
  const [at, setAt] = useState<At>({ lesson, pencil });
  useEffect(() => whenIdle(() => setAt({ lesson, pencil }), LONGEST_WAIT), [lesson, pencil]);
  return <Keys at={at} digits={pencil.digits} overNeck={overNeck} />;
}

const refusalAt = ({ lesson, pencil }: At, { gesture }: Command): Refusal | null => {
  const { did } = gesture(lesson, pencil);
  return did.kind === 'refused' ? did.why : null;
};

interface KeysProps {
  readonly at: At;
  /** What the digits mean now. */
  readonly digits: Pencil['digits'];
  readonly overNeck: boolean;
}

/** The keys, a moment behind the note: what each would write, and which of them would do nothing. */
const Keys = memo(function Keys({ at, digits, overNeck }: KeysProps) {
  const own = useOwnKeys();
  const small = useMedia(SMALL);
  const low = useMedia(LOW) || overNeck;
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
    // Under the thumb one row of keys is shown at a time.
    const choice = { label: 'Keys shown', all: COMMAND_GROUPS, chosen: shown, onChoose: setShown };
    return (
      <>
        {/* Where not even the choice of rows has a row of its own, it stands before the keys. */}
        {low && <KeyPick {...choice} className="strip__pick--group" />}
        {keysIn(shown)}
        {!low && <KeyRow {...choice} className="strip__groups" />}
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

/** The note that a degree or a name would be here, in the lesson's names: `F`, `B♭`, `Si♭`; at a fret, with its degree. */
function noteOf(command: Command, desk: Desk): string {
  const naming = desk.lesson.noteNames ?? 'letters';
  if (command.name !== undefined)
    return formatNameIn(naming, nameFor(command.name, harmonyAt(desk, target(desk))));
  const fret = /^fret (\d)$/.exec(command.id)?.[1];
  if (fret !== undefined) return placeText(desk, desk.pencil.string, Number(fret));
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
            {capitalised(barName(desk.bars[bar ?? 0]?.number ?? 1))}: {text}
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
