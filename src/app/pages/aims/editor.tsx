import { capitalised, type Fret, fret, type MidiNumber, midiNumber } from '../../../core/base';
import { rangeOf, romanNumeral } from '../../../core/fretboard';
import {
  type AimTerms,
  changeBarAims,
  type LinePiece,
  type LineSheet,
  markOf,
  markTechnique,
  type Say,
  SILENT_ONES,
  type SilentOnes,
  sayOf,
  setAim,
  setSectionAim,
  type TechniqueMark,
  withSay,
} from '../../../core/lesson';
import { TECHNIQUE_ROWS, type Technique } from '../../../core/line';
import { formatPitchIn, spellMidi } from '../../../core/theory';
import { SelectField } from '../../controls';
import { useAtWork } from '../at-work';
import { Degrees } from './degrees';
import { barsIn, type EditedPlace, editedName, editedTerms } from './edited-place';

interface AimEditorProps {
  /** As it is this moment. */
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly place: EditedPlace;
}

const UNSAID = 'unsaid';

/** The terms with one of them changed; undefined says nothing of it. */
function withTerm<Term extends keyof AimTerms>(
  terms: AimTerms,
  term: Term,
  value: AimTerms[Term] | undefined,
): AimTerms {
  const { [term]: _, ...rest } = terms;
  return value === undefined ? rest : { ...rest, [term]: value };
}

/** The terms without what they say of the silent one as a technique: its own wish speaks of it. */
const withSilence = (terms: AimTerms): AimTerms => withSay(terms, 'beat one silent', null);

const SILENCES = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75];

/** Everything that can be asked of the line, a section or a bar beyond its level. */
export function AimEditor({ piece, sheet, place }: AimEditorProps) {
  const { session } = useAtWork();
  const name = editedName(sheet, place);
  const terms = editedTerms(piece, place);
  const ofLine = place.kind === 'line';
  const where = `in ${name}`;
  const unsaid = ofLine ? 'any' : place.kind === 'bars' ? 'as each has it' : 'as for the line';
  const set = (change: (terms: AimTerms) => AimTerms) =>
    session.lessons.change(
      (lesson) => {
        if (place.kind === 'section') return setSectionAim(lesson, piece.id, place.section, change(terms));
        if (place.kind === 'line') return setAim(lesson, piece.id, place, change(terms));
        return changeBarAims(lesson, piece.id, place.kind === 'bar' ? [place.bar] : barsIn(place), change);
      },
      { label: `change the aims for ${name}` },
    );
  const markInLine = (technique: Technique, mark: TechniqueMark | null) =>
    session.lessons.change((lesson) => markTechnique(lesson, piece.id, technique, mark), {
      label: `change the aims for ${name}`,
    });
  return (
    <div className="aims aim-fields">
      <p className="aim-fields__hint">{HINTS[place.kind]}</p>
      {TECHNIQUE_ROWS.map(({ technique, always }) =>
        ofLine ? (
          <SelectField<TechniqueMark | typeof UNSAID>
            key={technique}
            label={capitalised(technique)}
            where={where}
            value={markOf(piece, technique) ?? UNSAID}
            options={always ? MARKS_OF_ALWAYS : MARKS}
            onChange={(mark) => markInLine(technique, mark === UNSAID ? null : mark)}
          />
        ) : (
          <SelectField<Say | typeof UNSAID>
            key={technique}
            label={capitalised(technique)}
            where={where}
            value={sayOf(terms, technique) ?? UNSAID}
            options={SAYS}
            onChange={(say) => set((own) => withSay(own, technique, say === UNSAID ? null : say))}
          />
        ),
      )}
      {(ofLine || place.kind === 'section') && (
        <SelectField<SilentOnes | typeof UNSAID>
          label="Beat one, how often it is silent"
          where={where}
          wide
          value={terms.silentOnes ?? UNSAID}
          options={[
            { value: UNSAID, label: ofLine ? 'as the techniques say' : 'as for the line' },
            ...SILENT_ONES.map((often) => ({ value: often, label: often })),
          ]}
          onChange={(often) =>
            set((own) => withTerm(withSilence(own), 'silentOnes', often === UNSAID ? undefined : often))
          }
        />
      )}
      <Degrees
        where={where}
        degrees={terms.degrees}
        onChange={(degrees) => set((own) => withTerm(own, 'degrees', degrees))}
      />
      <SelectField<NonNullable<AimTerms['density']> | typeof UNSAID>
        label="Notes"
        where={where}
        wide
        value={terms.density ?? UNSAID}
        options={[
          { value: UNSAID, label: unsaid },
          ...(ofLine ? [] : [{ value: 'any', label: 'any number' } as const]),
          { value: 'sparse', label: 'fewer than beats' },
          { value: 'busy', label: 'more than beats' },
        ]}
        onChange={(density) =>
          set((own) => withTerm(own, 'density', density === UNSAID ? undefined : density))
        }
      />
      <SelectField
        label="Silence"
        where={where}
        wide
        value={terms.silence === undefined ? UNSAID : String(terms.silence)}
        options={[
          { value: UNSAID, label: unsaid },
          ...(ofLine ? [] : [{ value: '0', label: 'any amount' }]),
          ...[...new Set([...SILENCES, ...(terms.silence ? [terms.silence] : [])])]
            .sort((one, other) => one - other)
            .map((share) => ({
              value: String(share),
              label: `at least ${Math.round(share * 100)} % of a bar`,
            })),
        ]}
        onChange={(text) =>
          set((own) => withTerm(own, 'silence', text === UNSAID ? undefined : Number(text)))
        }
      />
      <PitchField
        label="Lowest note"
        where={where}
        sheet={sheet}
        value={terms.lowest}
        unsaid={unsaid}
        onChange={(midi) => set((own) => withTerm(own, 'lowest', midi))}
      />
      <PitchField
        label="Highest note"
        where={where}
        sheet={sheet}
        value={terms.highest}
        unsaid={unsaid}
        onChange={(midi) => set((own) => withTerm(own, 'highest', midi))}
      />
      <PositionField
        where={where}
        most={sheet.instrument.frets}
        ofLine={ofLine}
        value={terms.position}
        onChange={(position) => set((own) => withTerm(own, 'position', position))}
      />
    </div>
  );
}

/** What is wanted is shown in a bar of every phrase, or in the very bar. */
const HINTS: Readonly<Record<EditedPlace['kind'], string>> = {
  line: 'What is to be shown comes in a bar at least, or in every phrase; what may be used comes where it suits, and need not.',
  section: 'What is to be shown comes in every phrase of the section; what may be used need not.',
  bar: 'What is to be shown comes in this bar; what may be used need not.',
  bars: 'What is to be shown comes in each of these bars; what else is asked of them stays.',
};

/** In sections and bars more may be used than in the line, or less. */
const SAYS = [
  { value: UNSAID, label: 'as for the line' },
  { value: 'wanted', label: 'is to be shown' },
  { value: 'allowed', label: 'may be used' },
  { value: 'forbidden', label: 'is not used' },
] as const;

const SHOWN = [
  { value: 'shown', label: 'is to be shown' },
  { value: 'in every phrase', label: 'in every phrase' },
] as const;

/** In the line: the two ticks under its chart, and what is more than they say. */
const MARKS = [
  { value: UNSAID, label: 'is not used' },
  { value: 'used', label: 'may be used' },
  ...SHOWN,
] as const;

/** Of a technique that is part of every line. */
const MARKS_OF_ALWAYS = [{ value: UNSAID, label: 'may be used' }, ...SHOWN] as const;

interface PitchFieldProps {
  readonly label: string;
  readonly where: string;
  readonly sheet: LineSheet;
  readonly value: MidiNumber | undefined;
  readonly unsaid: string;
  readonly onChange: (midi: MidiNumber | undefined) => void;
}

function PitchField({ label, where, sheet, value, unsaid, onChange }: PitchFieldProps) {
  const { lowest, highest } = rangeOf(sheet.instrument);
  const pitches = Array.from({ length: highest - lowest + 1 }, (_, index) => lowest + index);
  const listed = value === undefined || pitches.includes(value) ? pitches : [value, ...pitches];
  const naming = sheet.noteNames ?? 'letters';
  return (
    <SelectField
      label={label}
      where={where}
      value={value === undefined ? UNSAID : String(value)}
      options={[
        { value: UNSAID, label: unsaid },
        ...listed.map((midi) => ({
          value: String(midi),
          label: formatPitchIn(naming, spellMidi(midiNumber(midi), { key: sheet.key })),
        })),
      ]}
      onChange={(text) => onChange(text === UNSAID ? undefined : midiNumber(Number(text)))}
    />
  );
}

/** Positions in which a beginner's method is written; higher ones are reached by keeping a bar there. */
const HIGHEST_POSITION = 12;

interface PositionFieldProps {
  readonly where: string;
  readonly most: number;
  readonly ofLine: boolean;
  readonly value: Fret | undefined;
  readonly onChange: (position: Fret | undefined) => void;
}

function PositionField({ where, most, ofLine, value, onChange }: PositionFieldProps) {
  const positions = Array.from({ length: Math.min(most, HIGHEST_POSITION) }, (_, index) => index + 1);
  const listed =
    value === undefined || value === 0 || positions.includes(value) ? positions : [...positions, value];
  return (
    <SelectField
      label="Hand position"
      where={where}
      wide
      value={value === undefined ? UNSAID : String(value)}
      options={[
        { value: UNSAID, label: ofLine ? 'free' : 'as for the line' },
        ...(ofLine ? [] : [{ value: '0', label: 'free' }]),
        ...listed.map((position) => ({
          value: String(position),
          label: `position ${romanNumeral(position)}`,
        })),
      ]}
      onChange={(text) => onChange(text === UNSAID ? undefined : fret(Number(text)))}
    />
  );
}
