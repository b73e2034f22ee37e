import type { Lesson } from '../../../core/lesson';
import { lineAtHand } from '../../../core/lesson';
import type { MenuGroup } from '../../controls';
import type { Session } from '../../state';
import { useAtWork, useEditor, useLesson } from '../at-work';
import type { Playback } from '../playing';
import {
  attempt,
  copyLink,
  keepAsFile,
  type LinkedPage,
  onlyPiece,
  printLessonHandout,
  saidOfNames,
  saveAudio,
  saveHandout,
  saveMidi,
  saveMusicXml,
  saveMxl,
  savePracticePage,
  saveTextTab,
} from '../saving';
import { openPracticeView } from './practice-view';

/** Shows what the student will see; the lesson's own page falls silent. */
async function showPractice(lesson: Lesson, playback: Playback): Promise<void> {
  playback.stop();
  await openPracticeView(lesson);
}

/** Copies a link, and says calmly what came of it. */
const copy = (session: Session, page: LinkedPage): Promise<void> =>
  attempt(session, 'The link', async (lesson) => {
    session.editor.setState({ copied: null });
    session.editor.setState({ copied: await copyLink(lesson, page) });
  });

/** What the Export menu offers. */
export function useExports(): readonly MenuGroup[] {
  const { session, playback } = useAtWork();
  const lesson = useLesson();
  const line = lineAtHand(
    lesson,
    useEditor((state) => state.pieceId),
  );
  return [
    {
      heading: 'The sheet',
      items: [
        {
          label: 'Handout (PDF)',
          note: 'To print later or to send. It looks the same everywhere.',
          onChoose: () => void attempt(session, 'The handout', (lesson) => saveHandout(session, lesson)),
        },
        {
          label: 'Print the handout',
          note: 'On paper, now.',
          onChoose: () => void attempt(session, 'The printed page', printLessonHandout),
        },
      ],
    },
    {
      heading: 'For the student',
      items: [
        ...(line === null
          ? []
          : [
              {
                label: 'Tracks',
                note: 'Sound files to play along with: with and without the bass, slow and fast.',
                onChoose: () => session.editor.setState({ sending: 'tracks' }),
              },
              {
                label: 'Clip',
                note: 'A film of the score as it is played, with neck and sound.',
                onChoose: () => session.editor.setState({ sending: 'clip' }),
              },
            ]),
        {
          label: 'Packet',
          note: 'Handout, practice page, tracks and more of this lesson in one ZIP, to save or to send.',
          onChoose: () => session.editor.setState({ sending: 'packet' }),
        },
        {
          label: 'Practice page',
          note: 'One file that plays and shows the lesson anywhere, also without a network.',
          onChoose: () =>
            void attempt(session, 'The practice page', (lesson) => savePracticePage(lesson, session)),
        },
        ...(lesson.pieces.length > 1 && line !== null
          ? [
              {
                label: `Practice page, only ${line.name}`,
                note: 'The same with the line at hand alone.',
                onChoose: () =>
                  void attempt(session, 'The practice page', (whole) =>
                    savePracticePage(onlyPiece(whole, line.id), session),
                  ),
              },
            ]
          : []),
        {
          label: 'Copy a practice link',
          note: 'It opens the practice page with this lesson.',
          onChoose: () => void copy(session, 'practice page'),
        },
        {
          label: 'Look at the practice page',
          note: 'As the student will see it, here and now.',
          onChoose: () =>
            void attempt(session, 'The practice page', (whole) => showPractice(whole, playback), {
              made: false,
            }),
        },
      ],
    },
    {
      heading: 'The line at hand',
      items: [
        {
          label: 'MusicXML',
          note: 'Staff, tab and chords, to go on writing in a notation program.',
          onChoose: () =>
            void attempt(session, 'The MusicXML file', (lesson) => saveMusicXml(session, lesson)),
        },
        {
          label: 'MusicXML, compressed',
          note: 'The same as a small .mxl file, for a notation program that prefers it.',
          onChoose: () => void attempt(session, 'The MusicXML file', (lesson) => saveMxl(session, lesson)),
        },
        {
          label: 'Text tab',
          note: 'Plain letters and numbers, for a message or a forum.',
          onChoose: () => void attempt(session, 'The text tab', (lesson) => saveTextTab(session, lesson)),
        },
        {
          label: 'MIDI',
          note: 'The notes of the parts that are switched on, for a sequencer or a keyboard.',
          onChoose: () => void attempt(session, 'The MIDI file', (lesson) => saveMidi(session, lesson)),
        },
        {
          label: 'Audio (WAV)',
          note: 'To play along with anywhere: as it is played now, once through.',
          onChoose: () => void attempt(session, 'The audio file', (lesson) => saveAudio(session, lesson)),
        },
      ],
    },
    {
      heading: 'The whole lesson',
      items: [
        {
          label: 'Lesson file',
          note: 'To keep, or to open on another device.',
          onChoose: () =>
            void attempt(
              session,
              'The lesson file',
              async () =>
                [keepAsFile(session), await saidOfNames(session.lessons.getState().document)]
                  .filter(Boolean)
                  .join(' '),
              {
                made: false,
              },
            ),
        },
        {
          label: 'Copy a link',
          note: 'The lesson is in the link itself; no server keeps it.',
          onChoose: () => void copy(session, 'lesson'),
        },
      ],
    },
  ];
}
