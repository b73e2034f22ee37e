import { useState } from 'react';
import { SAMPLE_TITLES } from '../../../core/lesson';
import { MenuButton, type MenuGroup } from '../../controls';
import type { ListedLesson, Persistence } from '../../storage';
import { Later, laterPart, useAtWork, useLesson } from '../at-work';
import { savedText, shelfTitle } from './shelf';

const REMOVAL = laterPart(
  'The list of lessons to remove',
  async () => (await import('./removal')).LessonRemoval,
);

const CAN_BE_TRUSTED: Record<Persistence, string | null> = {
  granted: 'The browser has agreed to keep them until you remove them.',
  'not granted':
    'The browser may clear them when the device runs out of room: save as a file what you want to be sure of.',
  unknown: null,
};

/** What is to be said of the lessons on this device as a whole. */
function shelfSentence(problem: string | null, persistence: Persistence): { readonly sentence?: string } {
  const sentence =
    problem === null ? CAN_BE_TRUSTED[persistence] : `The lessons kept here cannot be listed. ${problem}`;
  return sentence === null ? {} : { sentence };
}

/** New lessons, samples and every lesson on this device. */
export function LessonsMenu() {
  const { session } = useAtWork();
  const currentId = useLesson().id;
  const [saved, setSaved] = useState<readonly ListedLesson[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  const [removing, setRemoving] = useState(false);
  const others = saved.filter((lesson) => lesson.id !== currentId);
  const [persistence, setPersistence] = useState<Persistence>('unknown');
  const list = async () => {
    const found = await session.storage.list();
    setPersistence(await session.storage.persistence());
    setProblem(found.ok ? null : found.problem);
    setSaved(found.ok ? found.value : []);
  };
  const groups: readonly MenuGroup[] = [
    {
      items: [
        {
          label: 'New lesson',
          note: 'The lesson at hand stays on this device.',
          onChoose: () => void session.startNewLesson(),
        },
      ],
    },
    {
      heading: 'Samples to try',
      items: SAMPLE_TITLES.map((title, index) => ({
        label: title,
        onChoose: () => void session.startSample(index),
      })),
    },
    {
      heading: 'On this device',
      ...shelfSentence(problem, saved.length === 0 ? 'unknown' : persistence),
      items: others.map((lesson) => ({
        id: lesson.id,
        label: shelfTitle(lesson),
        note: savedText(lesson),
        onChoose: () => {
          if (lesson.readable) void session.openSaved(lesson.id);
          else session.offerAsFile(lesson.id, lesson.sentence);
        },
      })),
    },
    {
      items:
        others.length === 0
          ? []
          : [
              {
                label: 'Remove a lesson',
                note: 'You choose which, and are asked once more.',
                onChoose: () => setRemoving(true),
              },
            ],
    },
  ];
  const refresh = async () => {
    await session.saveNow();
    await list();
  };
  return (
    <>
      <MenuButton label="Lessons" className="button" groups={groups} onOpen={() => void refresh()} />
      {removing && (
        <Later
          part={REMOVAL}
          given={{ lessons: others, onRemoved: () => void list(), onClose: () => setRemoving(false) }}
        />
      )}
    </>
  );
}
