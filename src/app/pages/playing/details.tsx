import { Fragment } from 'react';
import { feelById } from '../../../core/feel';
import {
  type BassPlan,
  CLICK_BEATS,
  type ClickPlan,
  COUNTS,
  countOf,
  PLAYING_LIMITS,
} from '../../../core/lesson';
import { bassAlone, EVERY_BEAT, EVERY_ROUND, PARTS, type Part } from '../../../core/playing';
import { NumberWord, SelectWord, SwitchWord } from '../../controls';
import { keysInWords } from './keys';
import { LadderWords } from './ladder';
import type { SentenceProps } from './props';
import { CLICKS, drumWayOf, drumWaysOf } from './words';

/** The rest of the sentence: what a teacher changes now and then. */
export function Details(props: SentenceProps) {
  const { piece, onChange, onCount } = props;
  const { playing } = piece;
  const count = countOf(piece);
  return (
    <>
      <p className="ledge__sentence">
        {playing.bass ? 'The bass plays ' : 'When it is switched on, the bass plays '}
        <BassWords {...props} />.{' '}
        {playing.click ? 'The click sounds on ' : 'When it is switched on, the click sounds on '}
        <ClickWords {...props} />.
      </p>
      <VolumeWords {...props} />
      <PatternWords {...props} />
      <FormWords {...props} />
      <p className="ledge__sentence">
        {playing.emptyBar === true ? 'Rounds are parted by an ' : 'Rounds follow each other without an '}
        <SwitchWord
          label="Empty bar between rounds"
          on={playing.emptyBar === true}
          onChange={(emptyBar) => onChange({ emptyBar })}
        >
          empty bar
        </SwitchWord>
        {playing.humanised === false ? '; nobody is ' : '; everyone is '}
        <SwitchWord
          label="Humanised"
          on={playing.humanised !== false}
          onChange={(humanised) => onChange({ humanised })}
        >
          a little early or late
        </SwitchWord>
        {playing.humanised === false
          ? ', all play exactly on the beat, and every round alike.'
          : ', as people are, and every round is played anew.'}
        {count !== null && (
          <>
            {' The tempo is told in the '}
            <SelectWord
              label="Count of the tempo"
              value={count}
              options={COUNTS.map((each) => ({ value: each, label: `${each} count` }))}
              onChange={onCount}
            />
            {count === 'fast' ? ', the drop on 3.' : ', the drop on 2 and 4.'}
          </>
        )}
      </p>
      <LadderWords {...props} />
      <p className="ledge__keys">{keysInWords(props.spaceInWords)}</p>
    </>
  );
}

/** How loud each part is, and the two mixes that are asked for most. */
function VolumeWords({ piece, onChange }: SentenceProps) {
  const { playing } = piece;
  const { volumes = {} } = playing;
  const band = playing.drums || playing.chops || playing.organ;
  const all = playing.bass && playing.drums && playing.chops && playing.organ;
  const mixes = [
    { name: 'bass alone', on: playing.bass && !band, mix: bassAlone(true) },
    {
      name: 'all but bass',
      on: !playing.bass && playing.drums && playing.chops && playing.organ,
      mix: bassAlone(false),
    },
    { name: 'everyone', on: all, mix: { ...bassAlone(false), bass: true } },
  ];
  const set = (part: Part, volume: number) => onChange({ volumes: { ...volumes, [part]: volume } }, 'volume');
  return (
    <p className="ledge__sentence">
      {'Volumes, in per cent of a part’s place in the mix: '}
      {PARTS.map((part, index) => (
        <Fragment key={part}>
          <span className="ledge__together">
            {`${part} `}
            <NumberWord
              label={`Volume of the ${part}`}
              value={volumes[part] ?? PLAYING_LIMITS.volume.most}
              least={PLAYING_LIMITS.volume.least}
              most={PLAYING_LIMITS.volume.most}
              step={5}
              onChange={(volume) => set(part, volume)}
            />
            {index === PARTS.length - 1 ? '.' : ','}
          </span>{' '}
        </Fragment>
      ))}
      {'In one step: '}
      {mixes.map(({ name, on, mix }, index) => (
        <Fragment key={name}>
          <button type="button" className="word" aria-pressed={on} onClick={() => onChange(mix)}>
            {name}
          </button>
          {[', ', ' or ', '.'][index]}
        </Fragment>
      ))}
    </p>
  );
}

/** Which of the published patterns the drums play; nothing in a feel that has one only. */
function PatternWords({ piece, onChange }: SentenceProps) {
  const ways = drumWaysOf(piece);
  if (ways === null) return null;
  return (
    <p className="ledge__sentence">
      {`Books differ about the drums of ${feelById(piece.feel).name.toLowerCase()}; here they have the `}
      <SelectWord
        label="Pattern of the drums"
        value={drumWayOf(piece)}
        options={[
          { value: 'usual', label: ways.usual },
          ...ways.others.map(({ name }) => ({ value: name, label: name })),
        ]}
        onChange={(drumWay) => onChange({ drumWay })}
      />
      .
    </p>
  );
}

/** How it begins and ends. */
function FormWords({ piece, onChange }: SentenceProps) {
  const { intro = false, ending = true, loop } = piece.playing;
  return (
    <p className="ledge__sentence">
      {intro ? 'The rhythm section plays an ' : 'It begins with the first bar, without an '}
      <SwitchWord label="Intro" on={intro} onChange={(on) => onChange({ intro: on })}>
        intro
      </SwitchWord>
      {intro ? ' of one bar before the first one' : ''}
      {loop ? '; where it does not go round, it ends ' : ', and it ends '}
      {ending ? 'with a ' : 'without a '}
      <SwitchWord label="Last hit" on={ending} onChange={(on) => onChange({ ending: on })}>
        last hit
      </SwitchWord>
      .
    </p>
  );
}

const BASS_OPTIONS = [
  { value: 'every round', label: 'in every round' },
  { value: 'every second round', label: 'in every second round' },
  { value: 'call and response', label: 'in call and response' },
] as const satisfies readonly { readonly value: BassPlan['kind']; readonly label: string }[];

/** Bars of call and response to begin with. */
const FIRST_TURN = 2;

const planOf = (kind: BassPlan['kind']): BassPlan =>
  kind === 'call and response' ? { kind, bars: FIRST_TURN } : { kind };

function BassWords({ piece, onChange }: SentenceProps) {
  const { bassPlan = EVERY_ROUND } = piece.playing;
  return (
    <>
      <SelectWord
        label="When the bass plays"
        value={bassPlan.kind}
        options={BASS_OPTIONS}
        onChange={(kind) => onChange({ bassPlan: planOf(kind) })}
      />
      {bassPlan.kind === 'call and response' && (
        <>
          {': it plays '}
          <NumberWord
            label="Bars of call and response"
            value={bassPlan.bars}
            least={1}
            most={PLAYING_LIMITS.turn}
            onChange={(bars) => onChange({ bassPlan: { ...bassPlan, bars } }, 'turn')}
          />
          {bassPlan.bars === 1 ? ' bar, then rests for as long' : ' bars, then rests for as many'}
        </>
      )}
    </>
  );
}

/** Bars by turns to begin with. */
const FIRST_DROP_OUT = { sounding: 2, silent: 2 } as const;

function ClickWords({ piece, onChange }: SentenceProps) {
  const { clickPlan = EVERY_BEAT } = piece.playing;
  const { dropOut } = clickPlan;
  const set = (change: Partial<ClickPlan>, join?: string) =>
    onChange({ clickPlan: { ...clickPlan, ...change } }, join);
  return (
    <>
      <SelectWord
        label="Where the click sounds"
        value={clickPlan.beats}
        options={CLICK_BEATS.map((beats) => ({ value: beats, label: CLICKS[beats] }))}
        onChange={(beats) => set({ beats })}
      />
      {' and '}
      <SelectWord
        label="Whether the click drops out"
        value={dropOut === null ? 'never' : 'by turns'}
        options={[
          { value: 'never', label: 'never drops out' },
          { value: 'by turns', label: 'drops out' },
        ]}
        onChange={(text) => set({ dropOut: text === 'never' ? null : FIRST_DROP_OUT })}
      />
      {dropOut !== null && (
        <>
          {' for '}
          <NumberWord
            label="Bars without the click"
            value={dropOut.silent}
            least={1}
            most={PLAYING_LIMITS.turn}
            onChange={(silent) => set({ dropOut: { ...dropOut, silent } }, 'drop out')}
          />
          {' after every '}
          <NumberWord
            label="Bars with the click"
            value={dropOut.sounding}
            least={1}
            most={PLAYING_LIMITS.turn}
            onChange={(sounding) => set({ dropOut: { ...dropOut, sounding } }, 'drop out')}
          />
          {' bars'}
        </>
      )}
    </>
  );
}
