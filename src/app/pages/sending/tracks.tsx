import { useState } from 'react';
import { counted, success, timeWords } from '../../../core/base';
import type { LinePiece, LineSheet } from '../../../core/lesson';
import { tempoWords } from '../../../core/lesson';
import { CheckField, SelectWord } from '../../controls';
import { useAtWork } from '../at-work';
import { MadeFiles, useMaking } from '../making';
import { versionStem } from '../saving';
import { type MadeTrack, tracksOf } from './make-tracks';
import { PassageWords } from './passage-words';
import { Ticks } from './ticks';
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
  const making = useMaking<readonly MadeTrack[]>(
    { what: 'The tracks', ready: 'The tracks are ready.', doing: 'Making the tracks' },
    async (options) => {
      const version = await versionStem(session);
      const made = await tracksOf(session.lessons.getState().lesson, piece, sheet, wishes, options);
      if (!made.ok || made.value === null) return made;
      return success(made.value.map((track) => ({ ...track, stem: track.stem + version })));
    },
  );
  const change = (part: Partial<TracksWishes>) => setWishes({ ...wishes, ...part });
  const plans = plansOf(piece, sheet, wishes);
  const tracks = making.made ?? [];
  return (
    <>
      <TracksSentence sheet={sheet} wishes={wishes} change={change} />
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
        making.button(`Make ${counted(plans.length, 'track')}`)
      )}
      {making.progress}
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

function TracksSentence({ sheet, wishes, change }: WishProps & Pick<TracksProps, 'sheet'>) {
  const countIn = COUNT_INS.find(({ value }) => value === String(wishes.countIn))?.value ?? '1';
  return (
    <p className="sending__sentence">
      <PassageWords of="tracks" sheet={sheet} wishes={wishes} mostRounds={MOST_ROUNDS} change={change} />
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

const PART_WORDS = { drums: 'Drums', chops: 'Chops', organ: 'Organ', click: 'Click', bass: 'Bass' } as const;

const PartsAndTempos = ({ piece, wishes, change }: WishProps & Pick<TracksProps, 'piece'>) => (
  <div className="sending__groups">
    <Ticks
      legend="Beside the bass"
      where="in the tracks"
      values={OTHERS}
      ticked={wishes.others}
      label={(part) => PART_WORDS[part]}
      onChange={(others) => change({ others })}
    />
    <Ticks
      legend="Tempos"
      where="in the tracks"
      values={temposOf(piece)}
      ticked={wishes.tempos}
      label={(tempo) => tempoWords(piece, tempo)}
      onChange={(tempos) => change({ tempos })}
    />
  </div>
);
