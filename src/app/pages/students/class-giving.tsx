import { useState } from 'react';
import { useStore } from 'zustand';
import { counted, listed } from '../../../core/base';
import { giveLesson, meantFor, type SchoolClass, type Student } from '../../../core/students';
import { SelectField } from '../../controls';
import { useAtWork } from '../at-work';
import { THE_TUNE } from '../common';
import type { AtRegister } from '../register';
import { dayNow, givingOf } from './deeds';
import { dayText } from './given-lessons';

/** The values of the choice that are no version. */
const [EACH, TUNE] = ['each', 'tune'];

interface GivingProps {
  readonly group: SchoolClass;
  readonly members: readonly Student[];
  readonly register: AtRegister;
  readonly onSaid: (sentence: string) => void;
}

/** Gives the open lesson to the whole class: one version to all, or to each the one that is meant for them. */
export function GivingToClass({ group, members, register, onSaid }: GivingProps) {
  const { session } = useAtWork();
  const document = useStore(session.lessons, (state) => state.document);
  const { versions = [] } = document;
  const [choice, setChoice] = useState(EACH);
  const [chosen, setChosen] = useState<ReadonlyMap<string, string>>(new Map());
  const options = [
    { value: TUNE, label: THE_TUNE },
    ...versions.map(({ id, name }) => ({ value: id, label: name })),
  ];
  const proposed = (student: Student): string =>
    meantFor(student, group, { lesson: document.id, versions }) ?? document.open ?? TUNE;
  const given = (student: Student): string => {
    const wanted = choice === EACH ? (chosen.get(student.id) ?? proposed(student)) : choice;
    return options.some(({ value }) => value === wanted) ? wanted : TUNE;
  };
  const give = async () => {
    const day = dayNow();
    const what = new Map(members.map((student) => [student.id, givingOf(document, given(student))]));
    const done = await register.changeEach([...what.keys()], (entry) => {
      const giving = what.get(entry.id);
      return entry.kind === 'student' && giving !== undefined ? giveLesson(entry, { ...giving, day }) : entry;
    });
    if (!done.ok) return onSaid(`Nothing was noted. ${done.problem}`);
    const without = members.filter(({ id }) => done.value.includes(id)).map(({ name }) => name);
    const title = document.title === '' ? 'The lesson without a title' : `“${document.title}”`;
    onSaid(
      [
        `${title} is noted as given to ${counted(members.length - without.length, 'student')} of ${group.name}, ${dayText(day)}.`,
        ...(without.length === 0
          ? []
          : [`Not to ${listed(without)}: no longer kept here, or with as many lessons as can be kept.`]),
      ].join(' '),
    );
  };
  return (
    <>
      <div className="register__deeds">
        <button type="button" className="button button--main" onClick={() => void give()}>
          Give the open lesson to the class
        </button>
      </div>
      <p className="register__hint">
        The open lesson is “{document.title === '' ? 'Without a title' : document.title}”.
      </p>
      {versions.length > 0 && (
        <div className="register__fields">
          <SelectField
            label="They get"
            where="the whole class"
            value={choice}
            options={[{ value: EACH, label: 'what is meant for each' }, ...options]}
            onChange={setChoice}
          />
          {choice === EACH &&
            members.map((student) => (
              <SelectField
                key={student.id}
                label={student.name}
                where="gets"
                value={given(student)}
                options={options}
                onChange={(value) => setChosen(new Map(chosen).set(student.id, value))}
              />
            ))}
        </div>
      )}
    </>
  );
}
