import '../../styles/handout.css';
import { useEffect, useId, useRef, useState } from 'react';
import {
  type HandoutSettings,
  LESSON_LIMITS,
  type Lesson,
  removeLogo,
  setHandout,
} from '../../../core/lesson';
import { applyPreset, fullSettings, HANDOUT_PRESETS, preparePdf, presetOf, readLogo } from '../../../handout';
import { CheckField, FileButton, SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { picturesBeside } from '../opening';
import { HandoutBlocks } from './blocks';
import { NoteMarks, PaperField } from './choices';
import { HandoutPictures } from './pictures';
import { HandoutPieces } from './pieces';
import { HandoutSaving } from './saving';
import { HandoutSteps } from './steps';

interface HandoutPanelProps {
  readonly settled: Lesson;
  readonly onClose: () => void;
}

type Set = (change: Partial<HandoutSettings>, join?: string) => void;

/** Everything that can be chosen about the printed page. */
export function HandoutPanel({ settled, onClose }: HandoutPanelProps) {
  const { session } = useAtWork();
  const { handout } = useLesson();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    void preparePdf();
  }, []);
  const set: Set = (change, join) =>
    session.lessons.change((lesson) => setHandout(lesson, change), {
      label: 'change the handout',
      ...(join === undefined ? {} : { join: `handout ${join}` }),
    });
  return (
    <aside className="pad designer" aria-label="Handout design">
      <div className="designer__top">
        <h2 className="designer__title" ref={heading} tabIndex={-1}>
          Handout
        </h2>
        <button type="button" className="button" onClick={onClose}>
          Back to the line
        </button>
      </div>
      <HandoutSaving />
      <Presets handout={handout} set={set} />
      <HandoutBlocks handout={handout} onChange={set} />
      <HandoutPieces />
      <HandoutSteps handout={handout} onChange={set} />
      <Music handout={handout} set={set} />
      <PaperAndPrint handout={handout} set={set} />
      <Head handout={handout} set={set} />
      <HandoutPictures lesson={settled} />
    </aside>
  );
}

interface PartProps {
  readonly handout: HandoutSettings;
  readonly set: Set;
}

function Presets({ handout, set }: PartProps) {
  const current = presetOf(handout);
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">Made for</legend>
      <div className="designer__presets">
        {HANDOUT_PRESETS.map((preset) => (
          <button
            key={preset.id}
            type="button"
            className="button designer__preset"
            aria-pressed={preset === current}
            title={preset.description}
            onClick={() => set(applyPreset(handout, preset))}
          >
            {preset.name}
          </button>
        ))}
      </div>
      <p className="designer__hint">{current?.description ?? 'Your own choice of parts.'}</p>
    </fieldset>
  );
}

function Music({ handout, set }: PartProps) {
  const settings = fullSettings(handout);
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">With the notes</legend>
      <div>
        <NoteMarks handout={settings} set={set} />
        <CheckField label="Counting" checked={settings.counting} onChange={(counting) => set({ counting })} />
        <CheckField
          label="Hand positions"
          checked={settings.positions}
          onChange={(positions) => set({ positions })}
        />
      </div>
      <SelectField
        label="The line on"
        value={settings.parts}
        options={[
          { value: 'both', label: 'Staff and tab' },
          { value: 'staff', label: 'Staff alone' },
          { value: 'tab', label: 'Tab alone' },
        ]}
        onChange={(parts) => set({ parts })}
      />
    </fieldset>
  );
}

function PaperAndPrint({ handout, set }: PartProps) {
  const settings = fullSettings(handout);
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">On paper</legend>
      <div className="designer__pair">
        <PaperField handout={settings} set={set} />
        <SelectField
          label="Size of print"
          value={settings.print}
          options={[
            { value: 'normal', label: 'Normal' },
            { value: 'large', label: 'Large' },
          ]}
          onChange={(print) => set({ print })}
        />
      </div>
      <div>
        <CheckField
          label="On one page if it fits"
          checked={settings.onePage}
          onChange={(onePage) => set({ onePage })}
        />
        <CheckField
          label="Two pages a sheet, to cut or fold"
          checked={settings.twoUp}
          onChange={(twoUp) => set({ twoUp })}
        />
        <CheckField
          label="Wider margin at the left, for holes"
          checked={settings.binding}
          onChange={(binding) => set({ binding })}
        />
        <CheckField
          label="QR code that opens the lesson"
          checked={settings.code}
          onChange={(code) => set({ code })}
        />
      </div>
    </fieldset>
  );
}

function Head({ handout, set }: PartProps) {
  const settings = fullSettings(handout);
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">At the head of the page</legend>
      <TextField
        label="Class or student"
        value={settings.student}
        onChange={(student) => set({ student }, 'student')}
      />
      <TextField
        label="Further words"
        value={settings.header}
        onChange={(header) => set({ header }, 'header')}
      />
      <Logo has={settings.logo !== null} set={set} />
    </fieldset>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

function TextField({ label, value, onChange }: TextFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field__label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="field__box"
        value={value}
        maxLength={LESSON_LIMITS.title}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </div>
  );
}

function Logo({ has, set }: { readonly has: boolean; readonly set: Set }) {
  const { session } = useAtWork();
  const [refusal, setRefusal] = useState<string | null>(null);
  const choose = async (file: File) => {
    setRefusal(null);
    const read = await readLogo(file, picturesBeside(session, file.name));
    if (read.ok) set({ logo: read.value });
    else setRefusal(read.problem);
  };
  return (
    <>
      <div className="designer__actions">
        <FileButton accept="image/png,image/jpeg,image/svg+xml" onChoose={choose}>
          {has ? 'Choose another logo' : 'Choose a logo'}
        </FileButton>
        {has && (
          <button
            type="button"
            className="button button--quiet"
            onClick={() => {
              setRefusal(null);
              session.lessons.change(removeLogo, { label: 'remove the logo' });
            }}
          >
            Remove the logo
          </button>
        )}
      </div>
      <p role="alert" className="designer__refusal">
        {refusal}
      </p>
    </>
  );
}
