import '../../styles/file-question.css';
import { type RefObject, useId, useRef, useState } from 'react';
import { capitalised, counted, countedInWords, metreName, midiOf } from '../../../core/base';
import type { Chosen, FileFacts, Wishes } from '../../../core/exchange';
import { type FeelId, feelById, isFeelId, isSwung, swingRatio } from '../../../core/feel';
import { describeKeyIn, formatPitchIn, type Naming } from '../../../core/theory';
import { SelectField, useModal } from '../../controls';
import type { FileQuestion } from '../../state';
import { useNoteNames } from '../at-work';
import { Sentences } from './sentences';

/** Asks, before a file of another program is opened, what of it becomes the lesson; says what is lost on the way. */
export function Question({ asking }: { readonly asking: FileQuestion }) {
  const { fileName, read, wishes, busy, choose, open, leave } = asking;
  const dialog = useModal();
  const feel = useRef<HTMLSelectElement>(null);
  const [missing, setMissing] = useState(false);
  const naming = useNoteNames() ?? 'letters';
  const id = useId();
  const { facts, parts, voices, chords, grids, pulses, sentences } = read;
  const answer = () => {
    if (facts.feel !== null) return open();
    setMissing(true);
    feel.current?.focus();
  };
  return (
    <dialog ref={dialog} className="dialog file-question" aria-labelledby={id} onCancel={leave}>
      <form
        className="file-question__form"
        aria-busy={busy}
        onSubmit={(event) => {
          event.preventDefault();
          answer();
        }}
      >
        <h2 id={id}>What do you want of “{fileName}”?</h2>
        <p>{factsText(facts, naming)}</p>
        <Take take={wishes.take} facts={facts} choose={choose} />
        <div className="file-question__fields">
          {wishes.take === 'line' && (
            <>
              <ChoiceField label="Part" chosen={parts} onChange={(part) => choose({ part })} />
              <ChoiceField label="Voice" chosen={voices} onChange={(voice) => choose({ voice })} />
              <Octave facts={facts} choose={choose} />
            </>
          )}
          {pulses && <ChoiceField label="Beats" chosen={pulses} onChange={(pulse) => choose({ pulse })} />}
          {grids && wishes.take === 'line' && (
            <ChoiceField label="Grid" chosen={grids} onChange={(grid) => choose({ grid })} />
          )}
          <ChoiceField label="Chords from" chosen={chords} onChange={(from) => choose({ chords: from })} />
          <FeelField facts={facts} choose={choose} field={feel} missing={missing && facts.feel === null} />
        </div>
        <p role="status" className="file-question__heard">
          {busy
            ? 'Reading it once more.'
            : wishes.take === 'line'
              ? rangeText(facts, naming)
              : chordsText(facts)}
        </p>
        <div className="file-question__lost">
          <p id={`${id}-lost`}>What becomes of it</p>
          {/* The first says again what stands above. */}
          <Sentences sentences={sentences.slice(1)} labelledBy={`${id}-lost`} />
        </div>
        <div className="file-question__answers">
          <button type="submit" className="button button--main">
            Make the lesson
          </button>
          <button type="button" className="button" onClick={leave}>
            Leave it
          </button>
        </div>
      </form>
    </dialog>
  );
}

type Choose = (wishes: Partial<Wishes>) => void;

interface TakeProps {
  readonly take: Wishes['take'];
  readonly facts: FileFacts;
  readonly choose: Choose;
}

/** The tune or the part as a line, or the chords alone. */
function Take({ take, facts, choose }: TakeProps) {
  const id = useId();
  const ways = [
    { value: 'line', label: facts.notes === 0 ? 'The bars as they are' : 'The notes as a line' },
    { value: 'chords', label: 'The chords only' },
  ] as const;
  return (
    <fieldset className="file-question__take">
      <legend>Take</legend>
      {ways.map(({ value, label }) => (
        <label key={value}>
          <input
            type="radio"
            name={id}
            value={value}
            checked={take === value}
            onChange={() => choose({ take: value })}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}

interface ChoiceFieldProps {
  readonly label: string;
  readonly chosen: Chosen;
  readonly onChange: (id: string) => void;
}

/** A choice of the file's own; not there where there is nothing to choose. */
function ChoiceField({ label, chosen, onChange }: ChoiceFieldProps) {
  const { all, read } = chosen;
  if (all.length < 2 || read === null) return null;
  return (
    <SelectField
      label={label}
      value={read}
      options={all.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={onChange}
    />
  );
}

const octaveText = (octaves: number): string =>
  octaves === 0 ? 'As they stand' : `${capitalised(countedInWords(octaves, 'octave'))} lower`;

/** One step for the whole line, each with how much of it can be played there. */
function Octave({ facts, choose }: { readonly facts: FileFacts; readonly choose: Choose }) {
  const { octaves, lowered, notes } = facts;
  if (octaves.length < 2) return null;
  return (
    <SelectField
      label="Notes"
      value={String(lowered)}
      options={octaves.map((each) => ({
        value: String(each.octaves),
        label: `${octaveText(each.octaves)}: ${each.playable === notes ? 'all' : `${each.playable} of ${notes}`} on the neck`,
      }))}
      onChange={(value) => choose({ octaves: Number(value) })}
    />
  );
}

interface FeelFieldProps {
  readonly facts: FileFacts;
  readonly choose: Choose;
  readonly field: RefObject<HTMLSelectElement | null>;
  readonly missing: boolean;
}

/** The feel is the teacher's to say: no file of another program knows it. */
function FeelField({ facts, choose, field, missing }: FeelFieldProps) {
  const id = useId();
  const named = (feel: FeelId): string => {
    const { name, tempo } = feelById(feel);
    return isSwung(swingRatio(feelById(feel), tempo.usual)) ? `${name}, swung` : name;
  };
  return (
    <div className="field">
      <label className="field__label" htmlFor={id}>
        Feel
      </label>
      <select
        ref={field}
        id={id}
        className="field__box"
        value={facts.feel ?? ''}
        aria-invalid={missing}
        aria-describedby={missing ? `${id}-missing` : undefined}
        onChange={({ currentTarget: { value } }) => {
          if (isFeelId(value)) choose({ feel: value });
        }}
      >
        {facts.feel === null && <option value="">Choose a feel</option>}
        {facts.feels.map((feel) => (
          <option key={feel} value={feel}>
            {named(feel)}
          </option>
        ))}
      </select>
      {missing && (
        <p className="file-question__missing" id={`${id}-missing`} role="alert">
          Choose the feel that the rhythm section is to play; the file does not say it.
        </p>
      )}
    </div>
  );
}

/** `Oh! Susanna: 16 bars in 4/4, F major, 92 bpm, 32 chords, 90 notes.` */
function factsText({ title, bars, metre, key, tempo, chords, notes }: FileFacts, naming: Naming): string {
  const found = [
    `${counted(bars, 'bar')} in ${metreName(metre)}`,
    ...(key === null ? [] : [describeKeyIn(naming, key)]),
    tempo === null ? 'no tempo' : `${tempo} bpm`,
    chords === 0 ? 'no chords' : counted(chords, 'chord'),
    notes === 0 ? 'no notes' : counted(notes, 'note'),
  ];
  return `${title}: ${found.join(', ')}.`;
}

/** Where the notes lie in the file, and where they will. */
function rangeText({ range, lowered, octaves, notes }: FileFacts, naming: Naming): string {
  if (range === null) return 'There are no notes in this part.';
  const { lowest, highest } = range;
  const span = (by: number): string =>
    [lowest, highest]
      .map((pitch) => formatPitchIn(naming, { ...pitch, octave: pitch.octave - by }))
      .join(' to ');
  const playable = octaves.find((each) => each.octaves === lowered)?.playable ?? 0;
  const off = notes - playable;
  const there = off === 0 ? 'all of it on the neck' : `${counted(off, 'note')} off the neck`;
  const same = midiOf(lowest) === midiOf(highest);
  const from = same ? formatPitchIn(naming, lowest) : span(0);
  return lowered === 0
    ? `The notes sound ${from}, ${there}.`
    : `In the file the notes sound ${from}; the line lies ${span(lowered)}, ${there}.`;
}

const chordsText = ({ chords }: FileFacts): string =>
  chords === 0
    ? 'There are no chords in this file: the bars come with N.C.'
    : `${counted(chords, 'chord')} become the chart; the line is composed over them.`;
