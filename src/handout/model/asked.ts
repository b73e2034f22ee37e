import { listed } from '../../core/base';
import type { HandoutBlock } from '../../core/lesson';
import type { FullSettings } from './settings';

/** Parts that say what a question asks for, with their words in a sentence. */
const TELLING: Partial<Readonly<Record<HandoutBlock, string>>> = {
  shapes: 'the shapes',
  neck: 'the line on the neck',
  rhythm: 'the tricky rhythm',
  clapping: 'the rhythm to clap',
  stages: 'the build-up',
  explained: 'what to practise',
  study: 'the key facts',
};

const tells = (block: HandoutBlock): boolean => TELLING[block] !== undefined;

/** Whether a sheet asks questions, so that nothing on it may state an answer. */
export const asksQuestions = ({ blocks }: Pick<FullSettings, 'blocks'>): boolean =>
  blocks.includes('questions');

/**
 * What the student's sheet is set with. Where it asks questions, nothing on it states an answer: the notes stand on the
 * staff alone (or the tab, where a student reads that alone), without degrees, fingers, counting or hand positions.
 */
export function studentSettings(settings: FullSettings): FullSettings {
  const blocks = settings.blocks.filter((block) => block !== 'answers');
  if (!asksQuestions(settings)) return { ...settings, blocks };
  return {
    ...settings,
    blocks: blocks.filter((block) => !tells(block)),
    degrees: false,
    fingers: false,
    counting: false,
    positions: false,
    parts: settings.parts === 'tab' ? 'tab' : 'staff',
  };
}

/** What the answer sheet is set with: the answers, and what the questions kept off their sheet; null without one. */
export function answerSettings(settings: FullSettings): FullSettings | null {
  const { blocks } = settings;
  if (!blocks.includes('answers')) return null;
  const kept = asksQuestions(settings) ? blocks.filter((block) => block === 'music' || tells(block)) : [];
  return { ...settings, blocks: ['answers', ...kept], onePage: false, code: false };
}

/** What is not on a sheet that asks questions although it was chosen, in a sentence. */
export function askedRemarks(settings: FullSettings): readonly string[] {
  if (!asksQuestions(settings)) return [];
  const student = studentSettings(settings);
  const off = [
    ...(settings.degrees ? ['degrees'] : []),
    ...(settings.fingers ? ['fingers'] : []),
    ...(settings.counting ? ['counting'] : []),
    ...(settings.positions ? ['hand positions'] : []),
    ...(settings.parts !== student.parts ? ['the tab'] : []),
    ...settings.blocks.flatMap((block) => TELLING[block] ?? []),
  ];
  if (off.length === 0) return [];
  const where = settings.blocks.includes('answers')
    ? 'stands on the answer sheet instead'
    : 'is not printed with them';
  return [`What would answer the questions ${where}: ${listed(off)}.`];
}
