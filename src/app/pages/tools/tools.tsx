import '../../styles/tools.css';
import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { SpelledPitch } from '../../../core/base';
import { bpm, COMMON_TIME, midiOf } from '../../../core/base';
import { type HeardString, nearestString } from '../../../core/fretboard';
import { type ClickPlan, PLAYING_LIMITS } from '../../../core/lesson';
import { formatNameIn, type Naming } from '../../../core/theory';
import type { Ear } from '../../../sound';
import { NumberWord, SelectWord } from '../../controls';
import { useAtWork } from '../at-work';

interface ToolsProps {
  readonly openStrings: readonly SpelledPitch[];
  readonly noteNames: Naming;
}

/** What else a practice room has: a metronome, reference tones, and a tuner that listens. */
export function Tools({ openStrings, noteNames }: ToolsProps) {
  return (
    <div className="tools">
      <Metronome />
      <Tuning openStrings={openStrings} noteNames={noteNames} />
    </div>
  );
}

const NEVER = 'never';

function Metronome() {
  const { playback } = useAtWork();
  const sounding = useStore(playback, ({ heard }) => heard?.kind === 'alone' && heard.name === 'click');
  const [tempo, setTempo] = useState(80);
  const [beats, setBeats] = useState(4);
  const [silent, setSilent] = useState(0);
  const plan: ClickPlan = {
    beats: 'every beat',
    dropOut: silent === 0 ? null : { sounding: 2, silent },
  };
  const play = () =>
    void playback.playAlone('click', ({ clickAlone }) =>
      clickAlone(bpm(tempo), { ...COMMON_TIME, count: beats }, plan),
    );
  const changed = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what sounds follows what is set
  useEffect(() => {
    if (changed.current && sounding) play();
    changed.current = true;
  }, [tempo, beats, silent]);
  return (
    <section aria-labelledby="tools-metronome">
      <h3 id="tools-metronome">Metronome</h3>
      <p className="tools__sentence">
        <NumberWord
          label="Tempo of the metronome"
          value={tempo}
          least={PLAYING_LIMITS.tempo.least}
          most={PLAYING_LIMITS.tempo.most}
          onChange={setTempo}
        />
        {' bpm, '}
        <NumberWord
          label="Beats in a bar of the metronome"
          value={beats}
          least={2}
          most={7}
          onChange={setBeats}
        />
        {' beats a bar; the click '}
        <SelectWord
          label="Dropping out of the metronome"
          value={silent === 0 ? NEVER : String(silent)}
          options={[
            { value: NEVER, label: 'never drops out' },
            { value: '1', label: 'drops out for one bar after every 2' },
            { value: '2', label: 'drops out for 2 bars after every 2' },
          ]}
          onChange={(chosen) => setSilent(chosen === NEVER ? 0 : Number(chosen))}
        />
        .
      </p>
      <button type="button" className="button" onClick={() => (sounding ? playback.stop() : play())}>
        {sounding ? 'Stop the metronome' : 'Start the metronome'}
      </button>
    </section>
  );
}

/** Beats a minute at which a tone is kept; it has none itself. */
const TONE_TEMPO = bpm(60);

function Tuning({ openStrings, noteNames }: ToolsProps) {
  const { playback } = useAtWork();
  const tone = useStore(playback, ({ heard }) => (heard?.kind === 'alone' ? heard.name : null));
  const nameOf = (pitch: SpelledPitch) => formatNameIn(noteNames, pitch);
  // From the lowest, as strings are tuned.
  const strings = openStrings.map((pitch, index) => ({ pitch, index })).reverse();
  return (
    <section aria-labelledby="tools-tuning">
      <h3 id="tools-tuning">Tuning</h3>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form */}
      <div className="tools__tones" role="group" aria-label="Reference tones">
        {strings.map(({ pitch, index }) => {
          const name = `string ${index}`;
          return (
            <button
              key={index}
              type="button"
              className="button"
              aria-pressed={tone === name}
              aria-label={`Tone of the ${nameOf(pitch)} string (string ${index + 1})`}
              onClick={() =>
                tone === name
                  ? playback.stop()
                  : void playback.playAlone(name, ({ toneAlone }) => toneAlone(TONE_TEMPO, midiOf(pitch)))
              }
            >
              {nameOf(pitch)}
            </button>
          );
        })}
      </div>
      <Tuner openStrings={openStrings} nameOf={nameOf} />
    </section>
  );
}

interface TunerProps {
  readonly openStrings: readonly SpelledPitch[];
  readonly nameOf: (pitch: SpelledPitch) => string;
}

function Tuner({ openStrings, nameOf }: TunerProps) {
  const ear = useRef<Ear | null>(null);
  const [listening, setListening] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const [heard, setHeard] = useState<HeardString | null>(null);
  const close = () => {
    ear.current?.close();
    ear.current = null;
    setListening(false);
    setHeard(null);
  };
  const gone = useRef(false);
  useEffect(() => {
    gone.current = false;
    return () => {
      gone.current = true;
      ear.current?.close();
    };
  }, []);
  const open = async () => {
    setFault(null);
    const { listen } = await import('../../../sound');
    const opened = await listen(
      (pitch) => setHeard((before) => (pitch === null ? before : nearestString(pitch.hz, openStrings))),
      (problem) => {
        close();
        setFault(problem);
      },
    );
    if (!opened.ok) {
      setFault(opened.problem);
      return;
    }
    // Who has folded it away meanwhile is not listened to.
    if (gone.current) {
      opened.value.close();
      return;
    }
    ear.current = opened.value;
    setListening(true);
  };
  const pitch = heard === null ? undefined : openStrings[heard.string];
  return (
    <>
      <p>
        <button type="button" className="button" onClick={listening ? close : () => void open()}>
          {listening ? 'Stop listening' : 'Listen and tune'}
        </button>
        {!listening && ' It asks for the microphone. What it hears stays on this device, and is not kept.'}
      </p>
      {fault !== null && <p role="alert">{fault}</p>}
      {listening && (
        <div className="tuner">
          <p className="tuner__note" role="status" aria-label="Tuner">
            {heard === null || pitch === undefined
              ? 'Play one open string.'
              : `${nameOf(pitch)} string: ${heard.verdict}.`}
          </p>
          {heard !== null && (
            <p aria-hidden="true">
              {Math.abs(heard.cents)} cents {heard.cents < 0 ? 'below' : 'above'}
              <meter min={-50} max={50} low={-5} high={5} optimum={0} value={heard.cents} />
            </p>
          )}
        </div>
      )}
    </>
  );
}
