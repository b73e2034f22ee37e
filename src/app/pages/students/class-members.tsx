import {
  membersByName,
  membersOf,
  moveMember,
  REGISTER_LIMITS,
  type SchoolClass,
  type Student,
  setMember,
  studentsIn,
} from '../../../core/students';
import { CheckField } from '../../controls';
import type { AtRegister } from '../register';

interface ClassMembersProps {
  readonly group: SchoolClass;
  readonly register: AtRegister;
  readonly onChange: (edit: (standing: SchoolClass) => SchoolClass) => void;
}

/** Who is in the class: everyone who is kept, to be ticked. */
export function ClassMembers({ group, register, onChange }: ClassMembersProps) {
  const students = studentsIn(register.entries);
  if (students.length === 0)
    return <p className="register__hint">No student is kept yet: add them first, then tick them here.</p>;
  const members = membersOf(group, register.entries);
  const isFull = group.members.length >= REGISTER_LIMITS.members;
  return (
    <fieldset className="register__members">
      <legend>In this class</legend>
      {students.map(({ id, name }) => (
        <CheckField
          key={id}
          label={name}
          where="in this class"
          checked={group.members.includes(id)}
          onChange={(isMember) => onChange((standing) => setMember(standing, id, isMember))}
        />
      ))}
      <p className="register__hint">
        {isFull
          ? `A class holds ${REGISTER_LIMITS.members} students at most: take someone out first.`
          : 'They stand in the class in the order in which they were ticked, until you put them in another.'}
      </p>
      {members.length > 1 && (
        <Order group={group} register={register} members={members} onChange={onChange} />
      )}
    </fieldset>
  );
}

/** The order of the class, in which its handouts come out of the printer. */
function Order({
  group,
  register,
  members,
  onChange,
}: ClassMembersProps & { readonly members: readonly Student[] }) {
  return (
    <details>
      <summary>The order of the class</summary>
      <ol aria-label={`The order of ${group.name}`} className="register__order">
        {members.map(({ id, name }, index) => (
          <li key={id}>
            {name}{' '}
            {index > 0 && (
              <button
                type="button"
                className="button"
                onClick={() => onChange((standing) => moveMember(standing, id, -1))}
              >
                Earlier<span className="visually-hidden"> {name}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
      <button
        type="button"
        className="button"
        onClick={() => onChange((standing) => membersByName(standing, register.entries))}
      >
        Put them in order of name
      </button>
    </details>
  );
}
