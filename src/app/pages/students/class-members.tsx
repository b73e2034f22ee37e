import { REGISTER_LIMITS, type SchoolClass, setMember, studentsIn } from '../../../core/students';
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
          : 'They stand in the class in the order in which they were ticked.'}
      </p>
    </fieldset>
  );
}
