import { useState } from 'react';
import { SAMPLE_TITLES } from '../../../core/lesson';
import { MenuButton, type MenuGroup } from '../../controls';
import type { ListedLesson } from '../../storage';
import { Later, laterPart, useAtWork, useLesson } from '../at-work';
import { savedText, shelfTitle } from './shelf';

const REMOVAL = laterPart(
  'The list of lessons to remove',
  async () => (await import('./removal')).LessonRemoval,
);

/** New lessons, samples and every lesson on this device. */
export function LessonsMenu() {
  const { session } = useAtWork();
  const currentId = useLesson().id;
  const [saved, setSaved] = useState<readonly ListedLesson[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  const [removing, setRemoving] = useState(false);
  const others = saved.filter((lesson) => lesson.id !== currentId);
  const list = async () => {
    const found = await session.storage.list();
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
      ...(problem === null ? {} : { sentence: `The lessons kept here cannot be listed. ${problem}` }),
      items: others.map((lesson) => ({
        id: lesson.id,
        label: shelfTitle(lesson),
        note: savedText(lesson),
        onChoose: () => void session.openSaved(lesson.id),
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
