import { useState } from 'react';
import { listed } from '../../../core/base';
import type { Lesson } from '../../../core/lesson';
import {
  type Copy,
  classesIn,
  copiesOf,
  foldersOf,
  membersOf,
  type PacketFolder,
  type PacketWishes,
  studentsIn,
  versionGiven,
} from '../../../core/students';
import { CheckField, SelectField } from '../../controls';
import { THE_TUNE } from '../common';
import { useRegister } from '../register';

/** The values of the choice that are no class. */
const [ONE, EACH] = ['one', 'each'];

interface ForWhom {
  /** The folders of a packet for several; null for what is on the page. */
  readonly folders: readonly PacketFolder[] | null;
  /** The copies that come out of a printer; none for what is on the page. */
  readonly copies: readonly Copy[];
  readonly named: boolean;
  /** The choice, and what comes of it. */
  readonly fields: React.ReactNode;
}

/** For whom something is made of a lesson that has versions: for whoever gets what is on the page, for all, or a class. */
export function useForWhom(document: Lesson): ForWhom {
  const register = useRegister();
  const [choice, setChoice] = useState(ONE);
  const [named, setNamed] = useState(false);
  const { versions = [] } = document;
  const { entries, unreadable, known, problem } = register;
  if (versions.length === 0) return { folders: null, copies: [], named, fields: null };
  const classes = classesIn(entries);
  const group = classes.find(({ id }) => id === choice);
  const isMany = group !== undefined || choice === EACH;
  const wishes: PacketWishes = {
    versions,
    tune: THE_TUNE,
    named,
    students: [...studentsIn(entries), ...unreadable].map(({ name }) => name),
    members:
      group === undefined
        ? null
        : membersOf(group, entries).map((student) => ({
            name: student.name,
            version: versionGiven(student, { lesson: document.id, versions }),
          })),
  };
  const folders = isMany ? foldersOf(wishes) : null;
  const fields = (
    <>
      {problem !== null && <p role="alert">{problem}</p>}
      <SelectField
        label="For"
        value={isMany ? choice : ONE}
        options={[
          { value: ONE, label: 'whoever gets what is on the page' },
          // Whose names are not to be in it is known when the students are read.
          ...(known ? [{ value: EACH, label: 'everyone: all versions' }] : []),
          ...classes.map(({ id, name }) => ({ value: id, label: `the class ${name}` })),
        ]}
        onChange={setChoice}
      />
      {isMany && (
        <CheckField
          label="With students’ names"
          note="on folders, in the text, and where they are typed on handouts"
          checked={named}
          onChange={setNamed}
        />
      )}
      {folders !== null && <Folders folders={folders} isClass={group !== undefined} />}
    </>
  );
  return { folders, copies: isMany ? copiesOf(wishes) : [], named, fields };
}

interface FoldersProps {
  readonly folders: readonly PacketFolder[];
  readonly isClass: boolean;
}

/** Which folders there will be, and for whom each is: seen here, whatever is ticked. */
function Folders({ folders, isClass }: FoldersProps) {
  if (folders.length === 0)
    return <p>Nobody is in this class yet: its students are ticked under Lessons, Students.</p>;
  return (
    <>
      <ul className="sending__files" aria-label="Folders of the packet">
        {folders.map(({ name, called, students }) => (
          <li key={name}>
            {name}: {called}
            {students.length > 0 && `, for ${listed(students)}`}
          </li>
        ))}
      </ul>
      {isClass && (
        <p>
          Each has the version they were given last; who was given none has {THE_TUNE}. Whose folder is whose
          is told here, and in the packet only where names are ticked.
        </p>
      )}
    </>
  );
}
