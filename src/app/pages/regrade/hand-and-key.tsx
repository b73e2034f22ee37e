import { useEffect, useState } from 'react';
import { KEY_HANDS, type KeyChoice, type KeyHand } from '../../../core/composing';
import { TUNINGS, writeTuning } from '../../../core/fretboard';
import type { Lesson } from '../../../core/lesson';
import { type Key, sameKey } from '../../../core/theory';
import { CheckField, SelectField } from '../../controls';
import { useAtWork } from '../at-work';

/** What of hand and key is to be another one; null leaves it. */
export interface HandAndKey {
  readonly how: KeyHand | null;
  readonly key: Key | null;
  /** Id of a tuning. */
  readonly tuning: string | null;
  readonly leftHanded: boolean | null;
}

export const UNCHANGED: HandAndKey = { how: null, key: null, tuning: null, leftHanded: null };

interface HandAndKeyProps {
  /** With the line that is to be played, on the chosen strings. */
  readonly lesson: Lesson;
  /** Whether the lesson itself is for a left-handed bass. */
  readonly leftNow: boolean;
  readonly pieceId: string;
  /** Of the piece. */
  readonly name: string;
  readonly chosen: HandAndKey;
  readonly onChoose: (chosen: HandAndKey) => void;
}

const AS_IT_IS = '';

/** Another key by shape or with open strings, another tuning, the other hand. */
export function HandAndKeyChoice({ lesson, leftNow, pieceId, name, chosen, onChoose }: HandAndKeyProps) {
  const { noteNames = 'letters' } = lesson;
  const keys = useKeys(lesson, pieceId, chosen.how);
  const known = keys.find(({ key }) => chosen.key !== null && sameKey(key, chosen.key));
  return (
    <div className="regrade__hand">
      <SelectField
        label="Another key"
        where={`for ${name}`}
        value={chosen.how ?? AS_IT_IS}
        options={[
          { value: AS_IT_IS, label: 'the key as it is' },
          ...KEY_HANDS.map((how) => ({ value: how, label: how })),
        ]}
        onChange={(how) => {
          const hand = KEY_HANDS.find((each) => each === how) ?? null;
          onChoose({ ...chosen, how: hand, key: hand === null ? null : chosen.key });
        }}
      />
      {chosen.how !== null && keys.length > 0 && (
        <SelectField
          label={`Key, the easiest ${chosen.how} first`}
          where={`for ${name}`}
          value={known?.name ?? AS_IT_IS}
          options={[
            { value: AS_IT_IS, label: 'choose one' },
            ...keys.map((each) => ({ value: each.name, label: each.name })),
          ]}
          onChange={(key) =>
            onChoose({ ...chosen, key: keys.find((each) => each.name === key)?.key ?? null })
          }
        />
      )}
      <SelectField
        label="Another tuning"
        where={`for ${name}`}
        value={chosen.tuning ?? AS_IT_IS}
        options={[
          { value: AS_IT_IS, label: 'the tuning as it is' },
          ...TUNINGS.map(({ id, name: called, openStrings }) => ({
            value: id,
            label: `${writeTuning(openStrings, noteNames)} · ${called(noteNames)}`,
          })),
        ]}
        onChange={(tuning) => onChoose({ ...chosen, tuning: tuning === AS_IT_IS ? null : tuning })}
      />
      <CheckField
        label={leftNow ? 'For a right-handed bass' : 'For a left-handed bass'}
        checked={chosen.leftHanded !== null}
        onChange={(other) => onChoose({ ...chosen, leftHanded: other ? !leftNow : null })}
      />
      {known !== undefined && (
        <p className="regrade__key">
          {known.name}, {known.words}.
        </p>
      )}
    </div>
  );
}

/** The keys that the line can go to, made in the worker; none before they are here. */
function useKeys(lesson: Lesson, pieceId: string, how: KeyHand | null): readonly KeyChoice[] {
  const { session } = useAtWork();
  const [known, setKnown] = useState<{ readonly how: KeyHand; readonly keys: readonly KeyChoice[] } | null>(
    null,
  );
  useEffect(() => {
    if (how === null) return;
    let gone = false;
    session.composer.keysFor(lesson, pieceId, how).then((answer) => {
      if (!gone && answer.ok) setKnown({ how, keys: answer.value });
    });
    return () => {
      gone = true;
    };
  }, [session, lesson, pieceId, how]);
  return known?.how === how ? known.keys : [];
}
