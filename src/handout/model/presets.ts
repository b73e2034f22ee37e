import { fieldTable, sameFields } from '../../core/base';
import type { HandoutSettings } from '../../core/lesson';
import { type FullSettings, fullSettings } from './settings';

/** A set of choices for an occasion; common practice, no source. */
export interface HandoutPreset {
  readonly id: 'first lesson' | 'homework' | 'test' | 'clapping' | 'band class';
  readonly name: string;
  /** One sentence for the teacher. */
  readonly description: string;
  readonly settings: Required<
    Pick<
      HandoutSettings,
      'blocks' | 'degrees' | 'fingers' | 'counting' | 'numerals' | 'positions' | 'parts' | 'print' | 'onePage'
    >
  > & {
    /** The code leads to the practice page, which has everything that a test must not show. */
    readonly code?: false;
  };
}

export const HANDOUT_PRESETS: readonly HandoutPreset[] = [
  {
    id: 'first lesson',
    name: 'First lesson',
    description:
      'The line first, in large print on staff and tab with counting and fingers; then what it teaches, the rhythm to clap and the shapes it uses.',
    settings: {
      blocks: ['facts', 'music', 'explained', 'rhythm', 'shapes', 'notes', 'cautions'],
      degrees: false,
      fingers: true,
      counting: true,
      numerals: false,
      positions: false,
      parts: 'both',
      print: 'large',
      onePage: false,
    },
  },
  {
    id: 'homework',
    name: 'Homework',
    description:
      'Staff and tab with degrees, fingers and hand positions, what to practise in it, and the steps to do it by; on one page if it fits.',
    settings: {
      blocks: ['facts', 'music', 'explained', 'practice', 'notes', 'cautions'],
      degrees: true,
      fingers: true,
      counting: false,
      numerals: false,
      positions: true,
      parts: 'both',
      print: 'normal',
      onePage: true,
    },
  },
  {
    id: 'test',
    name: 'Test',
    description:
      'The staff alone, to be read, under places for name, date and mark: no tab, degrees, fingers, counting or hand positions, nothing that helps.',
    settings: {
      blocks: ['name', 'facts', 'music', 'notes', 'cautions'],
      degrees: false,
      fingers: false,
      counting: false,
      numerals: false,
      positions: false,
      parts: 'staff',
      print: 'normal',
      onePage: true,
      code: false,
    },
  },
  {
    id: 'clapping',
    name: 'Rhythm',
    description: 'The rhythm alone on one line, counted, to be clapped before a note is played.',
    settings: {
      blocks: ['facts', 'clapping', 'notes'],
      degrees: false,
      fingers: false,
      counting: true,
      numerals: false,
      positions: false,
      parts: 'both',
      print: 'normal',
      onePage: true,
    },
  },
  {
    id: 'band class',
    name: 'Band class',
    description: 'The line with the chops, the organ and the drums written out, as the playback plays them.',
    settings: {
      blocks: ['facts', 'music', 'chops', 'organ', 'drums', 'notes', 'cautions'],
      degrees: false,
      fingers: false,
      counting: false,
      numerals: false,
      positions: false,
      parts: 'both',
      print: 'normal',
      onePage: false,
    },
  },
];

/** The settings with a preset's choices; paper, header, student and logo stay. */
export const applyPreset = (settings: HandoutSettings, preset: HandoutPreset): HandoutSettings => ({
  ...settings,
  ...preset.settings,
});

/** What an occasion chooses, the blocks aside, which are compared one by one; a new setting is refused until it stands here. */
const BY_OCCASION = fieldTable<FullSettings>()({
  paper: false,
  degrees: true,
  fingers: true,
  counting: true,
  numerals: true,
  positions: true,
  parts: true,
  blocks: false,
  print: true,
  onePage: true,
  // How the sheets are cut and bound is the same for every occasion.
  twoUp: false,
  binding: false,
  questions: false,
  header: false,
  student: false,
  logo: false,
  code: false,
  steps: false,
});

/** The preset whose choices are in force; null when the teacher has made others. */
export function presetOf(settings: HandoutSettings): HandoutPreset | null {
  const chosen = fullSettings(settings);
  const matches = ({ settings: wanted }: HandoutPreset) =>
    sameFields(BY_OCCASION, chosen, { ...chosen, ...wanted }) &&
    chosen.blocks.join() === wanted.blocks.join();
  return HANDOUT_PRESETS.find(matches) ?? null;
}
