import { useId, useState } from 'react';
import { fret } from '../../../core/base';
import {
  HAND_SPANS,
  type HandSettings,
  type HandSystem,
  LONG_SCALE,
  readTuning,
  romanNumeral,
  SHORT_SCALE,
  writeTuning,
} from '../../../core/fretboard';
import { type InstrumentSettings, type LinePiece, setHand, setInstrument } from '../../../core/lesson';
import type { Naming } from '../../../core/theory';
import { CheckField, draftMark, NumberField, SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { SIZES, scaleName, sizeOf } from './words';

const SYSTEMS: readonly { readonly value: HandSystem; readonly label: string }[] = [
  { value: 'one finger per fret', label: 'One finger per fret' },
  { value: '1-2-4', label: '1-2-4' },
  { value: 'automatic', label: 'Automatic: 1-2-4 where frets are wide' },
];

const OPEN_STRINGS: readonly { readonly value: HandSettings['openStrings']; readonly label: string }[] = [
  { value: 'avoid', label: 'Avoid' },
  { value: 'allow', label: 'Allow' },
  { value: 'prefer', label: 'Prefer' },
];

/** Hands that a teacher would write down, in millimetres; the reach never falls short of the comfortable span. */
const SPAN = { least: 60, most: 180 } as const;

/** The fields for the instrument and the hand of a piece. */
export function HandFields({ piece }: { readonly piece: LinePiece }) {
  const { session } = useAtWork();
  const { instrument, noteNames = 'letters' } = useLesson();
  const { hand } = piece;
  const set = (label: string, change: Partial<HandSettings>, join?: string) =>
    session.lessons.change((lesson) => setHand(lesson, piece.id, change), {
      label,
      ...(join === undefined ? {} : { join: `${join} ${piece.id}` }),
    });
  const setNeck = (label: string, change: Partial<InstrumentSettings>, join?: string) =>
    session.lessons.change((lesson) => setInstrument(lesson, change), {
      label,
      ...(join === undefined ? {} : { join }),
    });
  const [ownSize, setOwnSize] = useState(false);
  const size = ownSize ? 'own' : sizeOf(hand);
  const system = hand.system ?? 'one finger per fret';
  return (
    <div className="aims hand-pad__fields">
      <OwnTuning
        key={noteNames}
        instrument={instrument}
        naming={noteNames}
        onTune={(openStrings) => setNeck('change the tuning', { openStrings })}
      />
      <SelectField
        label="Scale length"
        value={String(instrument.scaleLength)}
        options={[...new Set([LONG_SCALE, SHORT_SCALE, instrument.scaleLength])].map((length) => ({
          value: String(length),
          label: `${scaleName(length)}${length === LONG_SCALE ? ', 34 in' : length === SHORT_SCALE ? ', 30 in' : ''}`,
        }))}
        onChange={(length) => setNeck('change the scale length', { scaleLength: Number(length) })}
      />
      <NumberField
        label="Frets"
        value={instrument.frets}
        least={Math.min(20, instrument.frets)}
        most={Math.max(24, instrument.frets)}
        onChange={(frets) => setNeck('change the frets', { frets }, 'frets')}
      />
      <SelectField
        label="Hand system"
        wide
        value={system}
        options={SYSTEMS}
        onChange={(chosen) => set('change the hand system', { system: chosen })}
      />
      {system === '1-2-4' && (
        <SelectField
          label="1-2-4 in use"
          wide
          value={String(hand.oneTwoFourBelow ?? WHOLE_NECK)}
          options={ONE_TWO_FOUR_RANGES}
          onChange={(below) => set('change where 1-2-4 is used', { oneTwoFourBelow: fret(Number(below)) })}
        />
      )}
      <SelectField
        label="Hand size"
        value={size}
        options={SIZES}
        onChange={(chosen) => {
          setOwnSize(chosen === 'own');
          if (chosen !== 'own') set('change the hand size', HAND_SPANS[chosen]);
        }}
      />
      <SelectField
        label="Open strings"
        value={hand.openStrings}
        options={OPEN_STRINGS}
        onChange={(openStrings) => set('change the use of open strings', { openStrings })}
      />
      {size === 'own' && (
        <>
          <NumberField
            label="Easy span in mm"
            value={hand.comfortableSpan}
            {...SPAN}
            onChange={(span) =>
              set(
                'change the hand size',
                { comfortableSpan: span, reach: Math.max(span, hand.reach) },
                'easy span',
              )
            }
          />
          <NumberField
            label="Reach in mm"
            value={hand.reach}
            {...SPAN}
            onChange={(reach) =>
              set(
                'change the hand size',
                { reach, comfortableSpan: Math.min(reach, hand.comfortableSpan) },
                'reach',
              )
            }
          />
        </>
      )}
      <NumberField
        label="Highest fret"
        value={hand.highestFret}
        least={1}
        most={instrument.frets}
        onChange={(highest) => set('change the highest fret', { highestFret: fret(highest) }, 'highest fret')}
      />
      <div className="hand-pad__check">
        <CheckField
          label="Left-handed"
          checked={instrument.leftHanded === true}
          onChange={(leftHanded) => setNeck('change the player’s hand', { leftHanded })}
        />
      </div>
    </div>
  );
}

const WHOLE_NECK = 36;

const ONE_TWO_FOUR_RANGES = [
  { value: String(WHOLE_NECK), label: 'On the whole neck' },
  ...[3, 5, 7, 9].map((below) => ({ value: String(below), label: `Below position ${romanNumeral(below)}` })),
];

interface OwnTuningProps {
  readonly instrument: InstrumentSettings;
  readonly naming: Naming;
  readonly onTune: (openStrings: InstrumentSettings['openStrings']) => void;
}

/** Any tuning as a player writes it, in the lesson's note names; it counts when the field is left or Enter is pressed. */
function OwnTuning({ instrument, naming, onTune }: OwnTuningProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const settle = () => {
    if (draft === null) return;
    const read = readTuning(draft, naming);
    if (!read.ok) {
      setFault(read.problem.message);
      return;
    }
    setDraft(null);
    setFault(null);
    if (JSON.stringify(read.value) !== JSON.stringify(instrument.openStrings)) onTune(read.value);
  };
  return (
    <div className="field field--wide">
      <label className="field__label" htmlFor={id}>
        Open strings, lowest first
      </label>
      <input
        {...draftMark(draft !== null)}
        id={id}
        className="field__box"
        type="text"
        autoComplete="off"
        spellCheck={false}
        maxLength={60}
        value={draft ?? writeTuning(instrument.openStrings, naming)}
        aria-invalid={fault !== null}
        aria-describedby={`${id}-fault`}
        onChange={(event) => {
          setDraft(event.currentTarget.value);
          setFault(null);
        }}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle();
        }}
      />
      <p className="hand-pad__fault" id={`${id}-fault`} role="status">
        {fault}
      </p>
    </div>
  );
}
