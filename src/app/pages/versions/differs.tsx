import { useState } from 'react';
import { capitalised, counted } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import {
  apartFromTune,
  carryMend,
  dropOwn,
  keptElsewhere,
  leaveMend,
  type Mend,
  mendsOf,
  type Own,
  openVersionOf,
  ownOf,
  shareOwn,
  versionOf,
} from '../../../core/versions';
import { useAtWork } from '../at-work';
import { wasWords } from './was-words';
import { apartWords, keepWords, ownName, placeOfBar } from './words';

/** In what the open version differs from the tune, and what of it goes to the others. */
export function Differences({ document }: { readonly document: Lesson }) {
  const { session } = useAtWork();
  const [done, setDone] = useState('');
  const open = openVersionOf(document);
  const mends = mendsOf(document).filter(({ version }) => open === null || version === open.id);
  const own = open === null ? [] : ownOf(document, open);
  const apart = open === null ? '' : apartWords(apartFromTune(document, open.id), document.noteNames);
  const change = (command: (document: Lesson) => Lesson, label: string, said: string) => {
    session.lessons.changeDocument(command, { label });
    setDone(said);
  };
  return (
    <>
      {apart !== '' && <p className="versions__apart">{capitalised(apart)}.</p>}
      <p role="status" className="versions__done">
        {done}
      </p>
      {mends.length > 0 && (
        <ul className="versions__mends" aria-label="Mended in the tune">
          {mends.map((mend) => (
            <MendRow key={`${mend.version} ${mend.bar}`} document={document} mend={mend} change={change} />
          ))}
        </ul>
      )}
      {open !== null && own.length > 0 && (
        <details className="versions__own">
          <summary>{counted(own.length, 'thing')} not as in the tune</summary>
          <ul aria-label="Not as in the tune">
            {own.map((each) => (
              <OwnRow
                key={JSON.stringify(each)}
                document={document}
                version={open.id}
                own={each}
                change={change}
              />
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

type ChangeVersions = (command: (document: Lesson) => Lesson, label: string, said: string) => void;

interface RowProps {
  readonly document: Lesson;
  readonly change: ChangeVersions;
}

/** A bar that was mended in the tune, where a version has notes of its own: both were changed, so it is asked. */
function MendRow({ document, mend, change }: RowProps & { readonly mend: Mend }) {
  const name = versionOf(document, mend.version)?.name ?? '';
  const place = placeOfBar(document, mend);
  return (
    <li>
      {capitalised(place)} was changed in the tune since; “{name}” has notes of its own there.{' '}
      <button
        type="button"
        className="word"
        aria-label={`Take the tune’s notes: ${place}, ${name}`}
        onClick={() =>
          change(
            (before) => carryMend(before, mend),
            `take the tune’s ${place}`,
            `“${name}” has the tune’s notes in ${place} now.`,
          )
        }
      >
        Take the tune’s notes
      </button>{' '}
      or{' '}
      <button
        type="button"
        className="word"
        aria-label={`Keep its own: ${place}, ${name}`}
        onClick={() =>
          change(
            (before) => leaveMend(before, mend),
            `keep ${place} of a version`,
            `“${name}” keeps its own notes in ${place}.`,
          )
        }
      >
        keep its own
      </button>
    </li>
  );
}

interface OwnRowProps extends RowProps {
  readonly version: string;
  readonly own: Own;
}

/** Something that the version has of its own: the others can have it too, or it goes. */
function OwnRow({ document, version, own, change }: OwnRowProps) {
  const name = ownName(document, version, own);
  const keep = keptElsewhere(document, version, own);
  return (
    <li>
      {capitalised(name)}.{wasWords(document, version, own)}
      {keepWords(keep)}{' '}
      <button
        type="button"
        className="word"
        aria-label={`Carry it to the tune and the others: ${name}`}
        onClick={() =>
          change(
            (before) => shareOwn(before, version, own),
            `carry ${name} to the others`,
            `${capitalised(name)}: the tune and the others have it too now.${keepWords(keep)}`,
          )
        }
      >
        Carry it to the tune and the others
      </button>{' '}
      or{' '}
      <button
        type="button"
        className="word"
        aria-label={`Have it as in the tune: ${name}`}
        onClick={() =>
          change(
            (before) => dropOwn(before, version, own),
            `have ${name} as in the tune`,
            `${capitalised(name)}: as in the tune again.`,
          )
        }
      >
        have it as in the tune
      </button>
    </li>
  );
}
