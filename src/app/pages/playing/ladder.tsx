import { bpm } from '../../../core/base';
import {
  type LinePiece,
  PLAYING_LIMITS,
  type Rung,
  type TempoLadder,
  toldTempo,
  writtenTempo,
} from '../../../core/lesson';
import { proposeLadder } from '../../../core/playing';
import { NumberWord, SwitchWord } from '../../controls';
import type { SentenceProps } from './props';

/** A ladder in whole beats a minute of the count that the tempo is told in. */
const proposal = (piece: LinePiece): readonly Rung[] =>
  proposeLadder(bpm(toldTempo(piece, piece.tempo))).map(({ tempo, rounds }) => ({
    tempo: writtenTempo(piece, tempo),
    rounds,
  }));

/** The tempo ladder: whether it is climbed, and its rungs, each with its tempo and its rounds. */
export function LadderWords(props: SentenceProps) {
  const { piece, onChange } = props;
  const { ladder } = piece.playing;
  const climbed = ladder?.climbed === true;
  const climb = (on: boolean) =>
    onChange({ ladder: { climbed: on, rungs: ladder?.rungs ?? proposal(piece) } });
  return (
    <>
      <p className="ledge__sentence">
        {climbed ? 'It goes up a ' : 'It stays at one tempo, without a '}
        <SwitchWord label="Tempo ladder" on={climbed} onChange={climb}>
          tempo ladder
        </SwitchWord>
        {climbed ? `, rung by rung${piece.playing.loop ? ', and stays on the last one' : ''}:` : '.'}
      </p>
      {climbed && ladder !== undefined && <Rungs {...props} ladder={ladder} />}
    </>
  );
}

interface RungsProps extends SentenceProps {
  readonly ladder: TempoLadder;
}

function Rungs({ piece, onChange, ladder }: RungsProps) {
  const { rungs } = ladder;
  const set = (next: readonly Rung[], join?: string) =>
    onChange({ ladder: { ...ladder, rungs: next } }, join);
  const edit = (index: number, change: Partial<Rung>) =>
    set(
      rungs.map((rung, at) => (at === index ? { ...rung, ...change } : rung)),
      `rung ${index}`,
    );
  const last = rungs.at(-1);
  const { least, most } = PLAYING_LIMITS.tempo;
  return (
    <>
      <ol className="rungs" aria-label="Rungs of the ladder">
        {rungs.map((rung, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a rung is known by its place only
          <li key={index} className="rungs__rung">
            <NumberWord
              label={`Speed on rung ${index + 1}`}
              value={toldTempo(piece, rung.tempo)}
              least={Math.ceil(toldTempo(piece, least))}
              most={Math.floor(toldTempo(piece, most))}
              onChange={(told) => edit(index, { tempo: writtenTempo(piece, told) })}
            />
            {' bpm, '}
            <NumberWord
              label={`Rounds on rung ${index + 1}`}
              value={rung.rounds}
              least={1}
              most={PLAYING_LIMITS.rounds}
              onChange={(rounds) => edit(index, { rounds })}
            />
            {rung.rounds === 1 ? ' time' : ' times'}
            {rungs.length > 1 && (
              <>
                {'; '}
                <button
                  type="button"
                  className="word"
                  aria-label={`Take out rung ${index + 1}`}
                  onClick={() => set(rungs.filter((_, at) => at !== index))}
                >
                  take out
                </button>
              </>
            )}
          </li>
        ))}
      </ol>
      <p className="ledge__sentence">
        {rungs.length < PLAYING_LIMITS.rungs && last !== undefined && (
          <>
            <button type="button" className="word" onClick={() => set([...rungs, last])}>
              Add a rung
            </button>
            {', or '}
          </>
        )}
        <button type="button" className="word" onClick={() => set(proposal(piece))}>
          propose from 50 %
        </button>
        .
      </p>
    </>
  );
}
