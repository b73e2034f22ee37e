import { deriveSheets, type Lesson, printLesson } from '../../core/lesson';
import type { MenuGroup } from '../controls';
import type { Session } from '../state';
import { fileStem, saveFile } from './files';
import { useAtWork } from './session';

const FAILED = 'could not be made. Check that the page is still reachable and try again.';

/** Runs an export and says so when it fails; the lesson is never touched. */
async function attempt(
  session: Session,
  what: string,
  work: (lesson: Lesson) => Promise<void>,
): Promise<void> {
  session.editor.setState({ notice: null });
  try {
    await work(session.lessons.getState().lesson);
  } catch {
    session.editor.setState({ notice: `${what} ${FAILED}` });
  }
}

async function savePdf(session: Session, lesson: Lesson): Promise<void> {
  const { buildHandout, handoutPdf } = await import('../../handout');
  const handout = await buildHandout(lesson, deriveSheets(lesson));
  const { bytes, missing } = await handoutPdf(handout);
  saveFile(`${fileStem(lesson.title)}.pdf`, bytes, 'application/pdf');
  const remarks = [
    ...handout.remarks,
    ...(missing.length === 0 ? [] : [`The handout’s type has no sign for ${missing.join(' ')}.`]),
  ];
  if (remarks.length > 0) session.editor.setState({ notice: remarks.join(' ') });
}

async function print(lesson: Lesson): Promise<void> {
  const { buildHandout, printHandout } = await import('../../handout');
  printHandout(await buildHandout(lesson, deriveSheets(lesson)));
}

export const saveLessonFile = (lesson: Lesson): void =>
  saveFile(`${fileStem(lesson.title)}.lesson.json`, printLesson(lesson), 'application/json');

/** What the Export menu offers. */
export function useExports(): readonly MenuGroup[] {
  const { session } = useAtWork();
  return [
    {
      items: [
        {
          label: 'Handout (PDF)',
          note: 'The sheet as a file to print or send.',
          onChoose: () => void attempt(session, 'The handout', (lesson) => savePdf(session, lesson)),
        },
        {
          label: 'Print the handout',
          onChoose: () => void attempt(session, 'The printed page', print),
        },
      ],
    },
    {
      items: [
        {
          label: 'Lesson file',
          note: 'Everything, to keep or to open on another device.',
          onChoose: () => saveLessonFile(session.lessons.getState().lesson),
        },
      ],
    },
  ];
}
