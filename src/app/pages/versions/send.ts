import type { Lesson } from '../../../core/lesson';
import type { MenuGroup } from '../../controls';
import { useAtWork } from '../at-work';
import {
  attempt,
  copyLink,
  type LinkedPage,
  saidOfNames,
  saveLessonFile,
  savePracticePage,
  versionStem,
} from '../saving';

/** What can be sent beside what Export makes: the version on the page alone as a lesson file, or all of them together. */
export function useSendingVersions(): readonly MenuGroup[] {
  const { session } = useAtWork();
  /** The lesson with all of its versions. */
  const whole = (): Lesson => session.lessons.getState().document;
  const copy = (page: LinkedPage) =>
    void attempt(session, 'The link', async () => {
      session.editor.setState({ copied: null });
      session.editor.setState({ copied: await copyLink(whole(), page) });
    });
  return [
    {
      heading: 'What is on the page, alone',
      items: [
        {
          label: 'Save as a lesson file',
          note: 'Without the other versions and without their names. Export, Lesson file holds them all.',
          onChoose: () =>
            void attempt(
              session,
              'The lesson file',
              async (lesson) => {
                saveLessonFile(lesson, await versionStem(session));
                return saidOfNames(lesson);
              },
              { made: false },
            ),
        },
      ],
    },
    {
      heading: 'All versions together',
      sentence: 'The names of the versions go with them.',
      items: [
        {
          label: 'Practice page of all',
          note: 'One file; the version is chosen on it.',
          onChoose: () => void attempt(session, 'The practice page', () => savePracticePage(whole())),
        },
        { label: 'Copy a practice link to all', onChoose: () => copy('practice page') },
        { label: 'Copy a lesson link to all', onChoose: () => copy('lesson') },
      ],
    },
  ];
}
