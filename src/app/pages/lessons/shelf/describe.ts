import { counted, listed } from '../../../../core/base';
import { feelById } from '../../../../core/feel';
import type { OnShelf } from '../../../../core/shelf';
import { momentText } from '../words';

/** A lesson's keys, feels and levels. */
export const whatItIs = ({ facts }: OnShelf): string =>
  [
    facts.keys.join(', '),
    facts.feels.map((feel) => feelById(feel).name).join(', '),
    facts.levels.length === 0 ? '' : `level ${facts.levels.join(', ')}`,
  ]
    .filter((part) => part !== '')
    .join(' · ');

/** What a row of the shelf says under the title: whom it is for, and what it is. */
export const inBrief = (lesson: OnShelf): string =>
  [lesson.facts.student, whatItIs(lesson)].filter((part) => part !== '').join(' · ');

/** What is said of an earlier state while it is looked at. */
export const describeEarlier = (title: string, at: number): readonly string[] => [
  `This is “${title}” as it was on ${momentText(at)}. It is only shown: play it, print it, bring it back in place of the lesson, or make a copy of it.`,
  'What stands now is kept as an earlier state, too, and bringing back can be taken back with Undo.',
];

/** The chosen lesson in a few sentences. */
export function describeLesson(lesson: OnShelf): readonly string[] {
  const { facts, savedAt, usedAt } = lesson;
  return [
    ...(facts.bars === 0 ? [] : [`${counted(facts.bars, 'bar')}: ${inBrief(lesson)}.`]),
    ...(facts.techniques.length === 0 ? [] : [`Ticked to be shown: ${listed(facts.techniques)}.`]),
    `Saved ${momentText(savedAt)}; last used ${momentText(usedAt)}.`,
  ];
}
