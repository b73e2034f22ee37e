import { useState } from 'react';
import { counted, timeWords } from '../../../core/base';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { tempoWords } from '../../../core/lesson';
import { boundsOf } from '../../../core/playing';
import { CheckField, NumberWord, SelectWord } from '../../controls';
import { useAtWork } from '../at-work';
import { MadeFiles } from './made-files';
import { type MadeTrack, tracksOf } from './make-tracks';
import { useMaking } from './making';
import {
  BASS_WISHES,
  MOST_ROUNDS,
  OTHERS,
  plansOf,
  proposedWishes,
  type TracksWishes,
  temposOf,
} from './wishes';

interface TracksProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** What the tracks of a line are to be, one step that makes them, and those that are ready. */
export function Tracks({ piece, sheet }: TracksProps) {
  const { session } = useAtWork();
  const [wishes, setWishes] = useState(() => proposedWishes(piece, sheet));
  const [tracks, setTracks] = useState<readonly MadeTrack[]>([]);
  const making = useMaking('The tracks', 'Making the tracks');
  const change = (part: Partial<TracksWishes>) => setWishes({ ...wishes, ...part });
  const plans = plansOf(piece, sheet, wishes);
  const make = () =>
    making.run(async (options) => {
      const { lesson } = session.lessons.getState();
      const made = await tracksOf(lesson, piece, sheet, wishes, options);
      if (made.ok && made.value !== null) setTracks(made.value);
      return made.ok ? null : made.problem;
    });
  return (
    <>
      <TracksSentence piece={piece} sheet={sheet} wishes={wishes} change={change} />
      <PartsAndTempos piece={piece} wishes={wishes} change={change} />
      <CheckField
        label="For a player that repeats the file"
        note="No count-in and no last hit: the end leads into the beginning without a gap."
        checked={wishes.repeats}
        onChange={(repeats) => change({ repeats })}
      />
      {plans.length === 0 ? (
        <p>Tick a part and a tempo, and the tracks can be made.</p>
      ) : (
        !making.isBusy && (
          <button type="button" className="button button--main" onClick={make}>
            Make {counted(plans.length, 'track')}
          </button>
        )
      )}
      {making.shown}
      <MadeFiles
        key={tracks[0]?.stem}
        name="Tracks that are ready"
        zip={`${piece.name}, tracks`}
        files={tracks.map((track) => ({ ...track, said: timeWords(track.seconds) }))}
      />
    </>
  );
}

interface WishProps {
  readonly piece: LinePiece;
  readonly wishes: TracksWishes;
  readonly change: (part: Partial<TracksWishes>) => void;
}

const COUNT_INS = [
  { value: '0', label: 'no bar' },
  { value: '1', label: '1 bar' },
  { value: '2', label: '2 bars' },
] as const;

const CODINGS = [
  { value: 'every telephone', label: 'small files for any phone' },
  { value: 'wav', label: 'WAV files' },
  { value: 'opus', label: 'Opus files' },
] as const;

function TracksSentence({ sheet, wishes, change }: WishProps & TracksProps) {
  const { least, most } = boundsOf(sheet);
  const countIn = COUNT_INS.find(({ value }) => value === String(wishes.countIn))?.value ?? '1';
  return (
    <p className="sending__sentence">
      {'Bars '}
      <NumberWord
        label="First bar of the tracks"
        value={wishes.first}
        least={least}
        most={most}
        onChange={(first) => change({ first })}
      />
      {' to '}
      <NumberWord
        label="Last bar of the tracks"
        value={wishes.last}
        least={least}
        most={most}
        onChange={(last) => change({ last })}
      />
      {', played '}
      <NumberWord
        label="Rounds of the tracks"
        value={wishes.rounds}
        least={1}
        most={MOST_ROUNDS}
        onChange={(rounds) => change({ rounds })}
      />
      {wishes.rounds === 1 ? ' time' : ' times'}
      {!wishes.repeats && (
        <>
          {' after '}
          <SelectWord
            label="Count-in of the tracks"
            value={countIn}
            options={COUNT_INS}
            onChange={(value) => change({ countIn: value === '2' ? 2 : value === '1' ? 1 : 0 })}
          />
          {' of count-in'}
        </>
      )}
      {', '}
      <SelectWord
        label="Bass in the tracks"
        value={wishes.bass}
        options={BASS_WISHES.map((value) => ({ value, label: value }))}
        onChange={(bass) => change({ bass })}
      />
      {', as '}
      <SelectWord
        label="Kind of file of the tracks"
        value={wishes.coding}
        options={CODINGS}
        onChange={(coding) => change({ coding })}
      />
      .
    </p>
  );
}

const toggled = <Value,>(values: readonly Value[], value: Value, on: boolean, order: readonly Value[]) =>
  order.filter((each) => (each === value ? on : values.includes(each)));

const PART_WORDS = { drums: 'Drums', chops: 'Chops', organ: 'Organ', click: 'Click', bass: 'Bass' } as const;

function PartsAndTempos({ piece, wishes, change }: WishProps) {
  const tempos = temposOf(piece);
  return (
    <div className="sending__groups">
      <fieldset className="sending__group">
        <legend>Beside the bass</legend>
        <div className="sending__ticks">
          {OTHERS.map((part) => (
            <CheckField
              key={part}
              label={PART_WORDS[part]}
              where="in the tracks"
              checked={wishes.others.includes(part)}
              onChange={(on) => change({ others: toggled(wishes.others, part, on, OTHERS) })}
            />
          ))}
        </div>
      </fieldset>
      <fieldset className="sending__group">
        <legend>Tempos</legend>
        <div className="sending__ticks">
          {tempos.map((tempo) => (
            <CheckField
              key={tempo}
              label={tempoWords(piece, tempo)}
              where="in the tracks"
              checked={wishes.tempos.includes(tempo)}
              onChange={(on) => change({ tempos: toggled(wishes.tempos, tempo, on, tempos) })}
            />
          ))}
        </div>
      </fieldset>
    </div>
  );
}
