import { useEffect, useState } from 'react';
import { SAMPLE_TITLES } from '../../../core/lesson';
import { MenuButton, type MenuGroup } from '../../controls';
import type { ListedLesson, Persistence } from '../../storage';
import { Later, laterPart, useAtWork, useLesson } from '../at-work';
import { savedText, shelfTitle } from './words';

/** What the menu gives to what it opens. */
interface FromMenu {
  readonly onClose: () => void;
  /** The lessons as the menu listed them; null where it could not. */
  readonly known: readonly ListedLesson[] | null;
}

const SHELF = laterPart<FromMenu>('The shelf', async () => (await import('./shelf')).Shelf);

const STUDENTS = laterPart<FromMenu>('The students', async () => (await import('../students')).Students);

const SERIES = laterPart<FromMenu>('The series', async () => (await import('../series')).SeriesOfLessons);

const CAN_BE_TRUSTED: Record<Persistence, string | null> = {
  granted: 'The browser has agreed to keep them until you remove them.',
  'not granted':
    'The browser may clear them when the device runs out of room: save as a file what you want to be sure of.',
  unknown: null,
};

/** The lessons that the menu itself lists; the shelf has all of them. */
const MOST_LISTED = 8;

/** What is to be said of the lessons on this device as a whole. */
function shelfSentence(
  problem: string | null,
  persistence: Persistence,
  reminder: string | null,
): { readonly sentence?: string } {
  const sentence =
    problem === null ? CAN_BE_TRUSTED[persistence] : `The lessons kept here cannot be listed. ${problem}`;
  const said = [sentence, reminder].filter((part) => part !== null).join(' ');
  return said === '' ? {} : { sentence: said };
}

/** New lessons, samples, the lessons that were used last, and the way to the shelf with all of them. */
export function LessonsMenu() {
  const { session } = useAtWork();
  const currentId = useLesson().id;
  const [listed, setListed] = useState<readonly ListedLesson[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [over, setOver] = useState<typeof SHELF | null>(null);
  const [reminder, setReminder] = useState<string | null>(null);
  const saved = listed ?? [];
  const others = saved.filter((lesson) => lesson.id !== currentId);
  const latest = others.filter(({ readable }) => readable).slice(0, MOST_LISTED);
  const unreadable = others.filter(({ readable }) => !readable);
  const [persistence, setPersistence] = useState<Persistence>('unknown');
  const list = async () => {
    const found = await session.storage.list();
    setPersistence(await session.storage.persistence());
    setProblem(found.ok ? null : found.problem);
    setListed(found.ok ? found.value : null);
    const shelf = await import('./shelf').catch(() => null);
    setReminder((await shelf?.reminderOf(session, found.ok ? found.value : [])) ?? null);
  };
  const groups: readonly MenuGroup[] = [
    {
      items: [
        {
          label: 'New lesson',
          note: 'The lesson at hand stays on this device.',
          onChoose: () => void session.startNewLesson(),
        },
        {
          label: 'The whole shelf',
          note: 'Search, rename, copy and remove lessons, and look at earlier states.',
          onChoose: () => setOver(SHELF),
        },
        { label: 'Students', onChoose: () => setOver(STUDENTS) },
        { label: 'Series', onChoose: () => setOver(SERIES) },
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
      heading: 'Last used on this device',
      ...shelfSentence(problem, saved.length === 0 ? 'unknown' : persistence, reminder),
      items: [...latest, ...unreadable.slice(0, MOST_LISTED)].map((lesson) => ({
        id: lesson.id,
        label: shelfTitle(lesson),
        note: savedText(lesson),
        onChoose: () => {
          if (lesson.readable) void session.openSaved(lesson.id);
          else session.offerAsFile(lesson.id, lesson.sentence);
        },
      })),
    },
  ];
  useEffect(() => {
    // The folder of the lessons, where one was chosen, is looked into when the page has come to rest.
    const timer = setTimeout(() => void import('./shelf').then(({ folderOf }) => folderOf(session)), 3000);
    return () => clearTimeout(timer);
  }, [session]);
  const refresh = async () => {
    await session.saveNow();
    await list();
  };
  return (
    <>
      <MenuButton label="Lessons" className="button" groups={groups} onOpen={() => void refresh()} />
      {over !== null && <Later part={over} given={{ onClose: () => setOver(null), known: listed }} />}
    </>
  );
}
