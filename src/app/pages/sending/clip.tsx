import { useEffect, useState } from 'react';
import { type Bpm, bpm, success, timeWords } from '../../../core/base';
import { type LinePiece, type LineSheet, tempoWords } from '../../../core/lesson';
import { TECHNIQUE_ROWS } from '../../../core/line';
import { SelectWord } from '../../controls';
import { useAtWork } from '../at-work';
import { MadeFiles, useMaking } from '../making';
import { versionStem } from '../saving';
import type { ClipLook } from './clip-film';
import { canMakeClip, clipOf, type MadeClip } from './make-clip';
import { PassageWords } from './passage-words';
import { type PassageWishes, passageAsked, proposedBars, proposedCountIn, temposOf } from './wishes';

interface ClipProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** Rounds that a clip has at most: a film of many is large, and a track repeats better. */
const MOST_ROUNDS = 4;

const NONE = 'none';

interface ClipWishes extends ClipLook, PassageWishes {
  readonly tempo: Bpm;
}

const proposed = (piece: LinePiece, sheet: LineSheet): ClipWishes => ({
  ...proposedBars(piece, sheet),
  rounds: 1,
  tempo: piece.tempo,
  shape: 'wide',
  ground: 'light',
  technique: null,
});

const WORDS = {
  clip: { what: 'The clip', ready: 'The clip is ready.', doing: 'Making the clip' },
  pictures: { what: 'The pictures', ready: 'The pictures are ready.', doing: 'Making the pictures' },
} as const;

/** A film of the moving score with its sound: how it is to be, one step that makes it, and the film that is ready. */
export function Clip({ piece, sheet }: ClipProps) {
  const { session } = useAtWork();
  const [wishes, setWishes] = useState(() => proposed(piece, sheet));
  const films = useFilms(wishes.shape);
  const making = useMaking<MadeClip>(films ? WORDS.clip : WORDS.pictures, async (options) => {
    const version = await versionStem(session);
    const clip = await clipOf(
      session.lessons.getState().lesson,
      piece,
      sheet,
      {
        tempo: wishes.tempo,
        rounds: wishes.rounds,
        countIn: proposedCountIn(piece),
        passage: passageAsked(sheet, wishes),
        repeats: false,
      },
      wishes,
      options,
    );
    return clip.ok && clip.value !== null
      ? success({
          ...clip.value,
          files: clip.value.files.map((file) => ({ ...file, stem: file.stem + version })),
        })
      : clip;
  });
  const { made } = making;
  const change = (part: Partial<ClipWishes>) => setWishes({ ...wishes, ...part });
  return (
    <>
      <ClipSentence piece={piece} sheet={sheet} wishes={wishes} change={change} />
      {!films && (
        <p>This browser cannot write films. Pictures of the score, system by system, are made instead.</p>
      )}
      {making.button(films ? 'Make the clip' : 'Make the pictures')}
      {making.progress}
      {made !== null && (
        <MadeFiles
          key={made.files[0]?.stem}
          name={made.seconds === null ? 'Pictures that are ready' : 'The clip that is ready'}
          zip={made.files[0]?.stem ?? piece.name}
          files={made.files.map((file) => ({
            ...file,
            said: made.seconds === null ? 'a picture' : timeWords(made.seconds),
          }))}
        />
      )}
    </>
  );
}

/** Whether the browser writes films; taken for granted until it has said no. */
function useFilms(shape: ClipLook['shape']): boolean {
  const [films, setFilms] = useState(true);
  useEffect(() => {
    let gone = false;
    canMakeClip(shape).then(
      (can) => !gone && setFilms(can),
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [shape]);
  return films;
}

const SHAPES = [
  { value: 'wide', label: 'wide (1920 × 1080)' },
  { value: 'tall', label: 'upright (1080 × 1920)' },
] as const;

const GROUNDS = [
  { value: 'light', label: 'light' },
  { value: 'dark', label: 'dark' },
] as const;

interface SentenceProps extends ClipProps {
  readonly wishes: ClipWishes;
  readonly change: (part: Partial<ClipWishes>) => void;
}

function ClipSentence({ piece, sheet, wishes, change }: SentenceProps) {
  return (
    <p className="sending__sentence">
      <PassageWords of="clip" sheet={sheet} wishes={wishes} mostRounds={MOST_ROUNDS} change={change} />
      {' at '}
      <SelectWord
        label="Tempo of the clip"
        value={String(wishes.tempo)}
        options={temposOf(piece).map((tempo) => ({ value: String(tempo), label: tempoWords(piece, tempo) }))}
        onChange={(tempo) => change({ tempo: bpm(Number(tempo)) })}
      />
      {', '}
      <SelectWord
        label="Shape of the clip"
        value={wishes.shape}
        options={SHAPES}
        onChange={(shape) => change({ shape })}
      />
      {', on a '}
      <SelectWord
        label="Ground of the clip"
        value={wishes.ground}
        options={GROUNDS}
        onChange={(ground) => change({ ground })}
      />
      {' ground, with '}
      <SelectWord
        label="Lit up in the clip"
        value={wishes.technique ?? NONE}
        options={[
          { value: NONE, label: 'nothing' },
          ...TECHNIQUE_ROWS.map(({ technique }) => ({ value: technique, label: technique })),
        ]}
        onChange={(chosen) =>
          change({
            technique: TECHNIQUE_ROWS.find(({ technique }) => technique === chosen)?.technique ?? null,
          })
        }
      />
      {' lit up. It sounds as the sentence below says, and is counted in.'}
    </p>
  );
}
