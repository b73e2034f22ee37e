import type { HandoutSettings } from '../../core/lesson';

/** A set of choices for an occasion; common practice, no source. */
export interface HandoutPreset {
  readonly id: 'first lesson' | 'homework' | 'test';
  readonly name: string;
  /** One sentence for the teacher. */
  readonly description: string;
  readonly settings: Required<
    Pick<HandoutSettings, 'blocks' | 'degrees' | 'fingers' | 'counting' | 'print' | 'onePage'>
  >;
}

export const HANDOUT_PRESETS: readonly HandoutPreset[] = [
  {
    id: 'first lesson',
    name: 'First lesson',
    description: 'Large print with the counting, the fingers and the rhythm to clap.',
    settings: {
      blocks: ['facts', 'rhythm', 'music', 'notes', 'cautions'],
      degrees: false,
      fingers: true,
      counting: true,
      print: 'large',
      onePage: false,
    },
  },
  {
    id: 'homework',
    name: 'Homework',
    description: 'Everything to practise by, on one page if it fits.',
    settings: {
      blocks: ['facts', 'music', 'practice', 'notes', 'cautions'],
      degrees: true,
      fingers: true,
      counting: false,
      print: 'normal',
      onePage: true,
    },
  },
  {
    id: 'test',
    name: 'Test',
    description: 'The line alone: no degrees, fingers or counting to read it from.',
    settings: {
      blocks: ['facts', 'music', 'notes'],
      degrees: false,
      fingers: false,
      counting: false,
      print: 'normal',
      onePage: true,
    },
  },
];

/** The settings with a preset's choices; paper, header, student and logo stay. */
export const applyPreset = (settings: HandoutSettings, preset: HandoutPreset): HandoutSettings => ({
  ...settings,
  ...preset.settings,
});

/** The preset whose choices the settings are; null when the teacher has made others. */
export function presetOf(settings: HandoutSettings): HandoutPreset | null {
  const matches = (preset: HandoutPreset) => {
    const wanted = preset.settings;
    return (
      settings.degrees === wanted.degrees &&
      settings.fingers === wanted.fingers &&
      settings.counting === wanted.counting &&
      settings.print === wanted.print &&
      settings.onePage === wanted.onePage &&
      settings.blocks?.join() === wanted.blocks.join()
    );
  };
  return HANDOUT_PRESETS.find(matches) ?? null;
}
