import { Fragment, type ReactNode, useId, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { barName, capitalised } from '../../../core/base';
import {
  countWords,
  PLAYING_LIMITS,
  type PlayingSettings,
  toldTempo,
  writtenTempo,
} from '../../../core/lesson';
import { boundsOf, climbs, PARTS, passageOf, passageTyped, practiceTempo } from '../../../core/playing';
import { NumberWord, SelectWord, SwitchWord } from '../../controls';
import { SMALL, useMedia } from '../common';
import { useMore } from './more';
import type { SentenceProps, SetPlaying } from './props';
import { furtherWords, inShort, ladderWords } from './words';

/**
 * How a piece is played, in a sentence whose underlined words can be changed. It is short until more is asked for,
 * and shorter still on a narrow screen. It changes nothing by itself.
 */
export function PlayingSentence({
  folds = SMALL,
  ...props
}: SentenceProps & {
  /** The media query under which it is folded. */
  readonly folds?: string;
}) {
  const narrow = useMedia(folds);
  const [unfolded, setUnfolded] = useState(false);
  const holder = useRef<HTMLDivElement>(null);
  if (!narrow) return <Sentence {...props} />;
  /** The button goes with what it folds; the focus goes on to the one that takes it back. */
  const fold = (open: boolean) => {
    flushSync(() => setUnfolded(open));
    holder.current?.querySelector<HTMLElement>('[data-fold]')?.focus({ preventScroll: true });
  };
  return (
    <div ref={holder} className={unfolded ? 'ledge__unfolded' : undefined}>
      {unfolded ? (
        <Sentence {...props}>
          <button type="button" className="word" data-fold="" aria-expanded onClick={() => fold(false)}>
            Say it in short
          </button>
        </Sentence>
      ) : (
        <p className="ledge__short">
          <span>{inShort(props.piece, props.sheet)}</span>{' '}
          <button
            type="button"
            className="word"
            data-fold=""
            aria-expanded={false}
            onClick={() => fold(true)}
          >
            Change how
          </button>
        </p>
      )}
    </div>
  );
}

interface UnfoldProps {
  readonly open: boolean;
  readonly controls: string;
  /** While folded, and while open. */
  readonly words: readonly [folded: string, open: string];
  readonly onToggle: (open: boolean) => void;
}

const Unfold = ({ open, controls, words, onToggle }: UnfoldProps) => (
  <button
    type="button"
    className="word"
    aria-expanded={open}
    aria-controls={open ? controls : undefined}
    onClick={() => onToggle(!open)}
  >
    {words[open ? 1 : 0]}
  </button>
);

/** @param props.children what else can be done with the sentence, at its end */
function Sentence({ children, ...props }: SentenceProps & { readonly children?: ReactNode }) {
  const { piece, sheet, onChange } = props;
  const { playing } = piece;
  const [open, setOpen] = useState(false);
  const more = useMore(open);
  const id = useId();
  const further = open && more.kind === 'here' ? [] : furtherWords(piece);
  return (
    <>
      <p className="ledge__sentence">
        <Passage piece={piece} sheet={sheet} onChange={onChange} />{' '}
        {playing.loop ? 'round and round in a ' : 'once, without a '}
        <SwitchWord label="Loop" on={playing.loop} onChange={(loop) => onChange({ loop })}>
          loop
        </SwitchWord>
        , {climbs(playing) ? <>up the tempo ladder {ladderWords(piece)}</> : <Speed {...props} />},{' '}
        <PartWords playing={playing} onChange={onChange} />
        <CountIn playing={playing} onChange={onChange} />
        {'. '}
        {further.length > 0 && `${capitalised(further.join('; '))}. `}
        <Unfold open={open} controls={id} words={['Say more', 'Say less']} onToggle={setOpen} />
        {children !== undefined && <> · {children}</>}
      </p>
      {open && (
        <div id={id} className="ledge__more">
          {more.kind === 'here' && <more.More {...props} />}
          {more.kind === 'missing' && (
            <p className="ledge__fault" role="alert">
              The rest of the sentence could not be loaded. Check that the page is still reachable and load it
              again.
            </p>
          )}
        </div>
      )}
    </>
  );
}

/** A bar by its number; where there is a pickup, which nobody counts, by its name. */
function BarWord(props: Parameters<typeof NumberWord>[0]) {
  const { label, value, least, most, onBegin, onChange } = props;
  if (least > 0) return <NumberWord {...props} />;
  const options = Array.from({ length: most + 1 }, (_, bar) => ({ value: `${bar}`, label: barName(bar) }));
  return (
    <SelectWord
      label={label}
      value={`${value}`}
      options={options}
      onChange={(bar) => {
        onBegin?.();
        onChange(Number(bar));
      }}
    />
  );
}

type PassageProps = Pick<SentenceProps, 'piece' | 'sheet' | 'onChange'>;

function Passage({ piece, sheet, onChange }: PassageProps) {
  const { least, most } = boundsOf(sheet);
  const { first, last } = passageOf(piece, sheet) ?? { first: least, last: most };
  const begun = useRef({ first, last });
  const onBegin = () => {
    begun.current = { first, last };
  };
  const choose = (end: 'first' | 'last') => (bar: number) =>
    onChange(passageTyped(sheet, begun.current, end, bar), 'passage');
  return (
    <>
      <span className="ledge__verb">{least === 0 ? 'From ' : 'Bars '}</span>
      <BarWord
        label="First bar"
        value={first}
        least={least}
        most={most}
        onBegin={onBegin}
        onChange={choose('first')}
      />
      {' to '}
      <BarWord
        label="Last bar"
        value={last}
        least={least}
        most={most}
        onBegin={onBegin}
        onChange={choose('last')}
      />
      ,
    </>
  );
}

/** Hundredths of a per cent are kept, so that every whole number of beats a minute can be had. */
const share = (tempo: number, whole: number): number => Math.round((tempo / whole) * 10_000) / 100;

function Speed({ piece, onChange }: SentenceProps) {
  const { tempo, playing } = piece;
  const least = Math.max(PLAYING_LIMITS.share.least, share(PLAYING_LIMITS.tempo.least, tempo));
  const most = Math.min(PLAYING_LIMITS.share.most, share(PLAYING_LIMITS.tempo.most, tempo));
  return (
    <>
      {'at '}
      <NumberWord
        label="Speed in bpm"
        value={toldTempo(piece, practiceTempo(piece))}
        least={Math.ceil(toldTempo(piece, (tempo * least) / 100))}
        most={Math.floor(toldTempo(piece, (tempo * most) / 100))}
        onChange={(told) => onChange({ tempoShare: share(writtenTempo(piece, told), tempo) }, 'speed')}
      />
      {` bpm${countWords(piece)} `}
      <span className="ledge__together">
        {'('}
        <NumberWord
          label="Speed in per cent"
          value={Math.round(playing.tempoShare)}
          least={Math.ceil(least)}
          most={Math.floor(most)}
          step={5}
          onChange={(tempoShare) => onChange({ tempoShare }, 'speed')}
        />
        {' %)'}
      </span>
    </>
  );
}

interface PartProps {
  readonly playing: PlayingSettings;
  readonly onChange: SetPlaying;
}

/** `with bass, drums and chops, without organ and click`: the order stays, only the small words change. */
function PartWords({ playing, onChange }: PartProps): ReactNode {
  return PARTS.map((part, index) => {
    const on = playing[part];
    const before = PARTS[index - 1];
    const after = PARTS[index + 1];
    const goesOn = before !== undefined && playing[before] === on;
    const isLast = after === undefined || playing[after] !== on;
    const small = goesOn ? (isLast ? 'and ' : '') : `${on ? 'with' : 'without'} `;
    const afterNext = PARTS[index + 2];
    const andNext = !isLast && (afterNext === undefined || playing[afterNext] !== on);
    return (
      <Fragment key={part}>
        {before === undefined ? '' : ' '}
        {small}
        <span className="ledge__together">
          <SwitchWord label={capitalised(part)} on={on} onChange={(next) => onChange({ [part]: next })}>
            {part}
          </SwitchWord>
          {after === undefined || andNext ? '' : ','}
        </span>
      </Fragment>
    );
  });
}

function CountIn({ playing, onChange }: PartProps) {
  return (
    <>
      {playing.countIn === 0 ? ', without a ' : ', after '}
      {playing.countIn > 0 && (
        <>
          <SelectWord
            label="Bars of counting in"
            value={playing.countIn === 1 ? 'one bar' : 'two bars'}
            options={[
              { value: 'one bar', label: 'one bar' },
              { value: 'two bars', label: 'two bars' },
            ]}
            onChange={(text) => onChange({ countIn: text === 'one bar' ? 1 : 2 })}
          />
          {' of '}
        </>
      )}
      <SwitchWord
        label="Count-in"
        on={playing.countIn > 0}
        onChange={(on) => onChange({ countIn: on ? 1 : 0 })}
      >
        count-in
      </SwitchWord>
    </>
  );
}
