import type { HandoutBlock, HandoutSettings } from '../../core/lesson';
import { USUAL_STEPS } from './steps';

/** Handout settings with every choice made. */
export interface FullSettings extends Required<Omit<HandoutSettings, 'logo'>> {
  readonly logo: string | null;
}

/** What is printed unless the teacher chooses: the line with its key, the notes, the cautions. */
const USUAL_BLOCKS: readonly HandoutBlock[] = ['facts', 'music', 'explained', 'notes', 'cautions'];

/** As many as a page holds with blanks beside the line (common practice, no source). */
const USUAL_QUESTIONS = { count: 6, difficulty: 2 } as const;

/** The settings with the usual choice wherever the lesson makes none. */
export function fullSettings(settings: HandoutSettings): FullSettings {
  return {
    paper: settings.paper,
    degrees: settings.degrees,
    fingers: settings.fingers,
    counting: settings.counting ?? false,
    numerals: settings.numerals ?? false,
    positions: settings.positions ?? false,
    parts: settings.parts ?? 'both',
    blocks: settings.blocks ?? USUAL_BLOCKS,
    print: settings.print ?? 'normal',
    onePage: settings.onePage ?? false,
    twoUp: settings.twoUp ?? false,
    binding: settings.binding ?? false,
    code: settings.code ?? false,
    header: settings.header ?? '',
    student: settings.student ?? '',
    steps: settings.steps ?? USUAL_STEPS,
    questions: settings.questions ?? USUAL_QUESTIONS,
    logo: settings.logo ?? null,
  };
}
