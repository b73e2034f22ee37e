import { useId, useState } from 'react';
import { flushSync } from 'react-dom';
import {
  addWeek,
  editSeen,
  lessonFrom,
  markThing,
  moveWeek,
  type Proposal,
  proposals,
  proposalWords,
  type ReadWeek,
  removeWeek,
  weekBrief,
  weekKeys,
} from '../../../core/series';
import { type Entry, REGISTER_LIMITS, type Series, studentsIn } from '../../../core/students';
import { SelectField } from '../../controls';
import { useAtWork, useLesson } from '../at-work';
import { Booklet } from '../booklet';
import type { AtRegister } from '../register';
import { givingOf, TextField } from '../students';
import { DifficultyCurve } from './curve';
import { outcomeOf, studentsOf } from './outcome';
import { lessonOf, useReadWeeks } from './read-weeks';
import { SeriesTable } from './table';

interface ChosenSeriesProps {
  readonly series: Series;
  readonly register: AtRegister;
  readonly onSaid: (sentence: string) => void;
  /** A lesson was opened. */
  readonly onClose: () => void;
}

const TOO_MANY = `More than ${REGISTER_LIMITS.weeks} lessons in a series are not kept: take some out first.`;

const GONE = 'That lesson is no longer in the series: another window has taken it out.';

const titleOf = ({ title }: { readonly title: string }): string => (title === '' ? 'Without a title' : title);

/** The chosen series: its weeks, what they have shown, how hard they are, and what next week could bring. */
export function ChosenSeries({ series, register, onSaid, onClose }: ChosenSeriesProps) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const naming = lesson.noteNames ?? 'letters';
  const id = useId();
  const { weeks, busy } = useReadWeeks(session, series.weeks);
  const change = async (edit: (standing: Series) => Series | null, done: string, not = GONE) => {
    const changed = await register.change(series.id, (entry) =>
      entry.kind === 'series' ? edit(entry) : entry,
    );
    onSaid(!changed.ok ? `It was not kept. ${changed.problem}` : changed.value === null ? not : done);
  };
  const add = () => {
    const { document } = session.lessons.getState();
    const { lesson: opened, version, title } = givingOf(document, document.open ?? null);
    return change(
      (standing) => addWeek(standing, { lesson: opened, version, title }),
      `“${titleOf({ title })}” is week ${series.weeks.length + 1}.`,
      TOO_MANY,
    );
  };
  const remove = async () => {
    const removed = await register.remove(series.id);
    onSaid(
      removed.ok ? 'The series is deleted; its lessons stay.' : `It was not deleted. ${removed.problem}`,
    );
  };
  return (
    <section className="register__chosen" aria-labelledby={id}>
      <h3 id={id}>{series.name}</h3>
      <div className="register__deeds">
        <button type="button" className="button button--main" onClick={() => void add()}>
          Put the open lesson at the end
        </button>
        <button type="button" className="button" onClick={() => void remove()}>
          Delete the series
        </button>
      </div>
      <div className="register__fields">
        <TextField
          label="Name of the series"
          value={series.name}
          most={REGISTER_LIMITS.name}
          onSettle={(name) => {
            if (name.trim() === '') return 'A series has a name.';
            void change((standing) => ({ ...standing, name: name.trim() }), 'It is kept.');
            return null;
          }}
        />
        <SelectField
          label="For whom"
          value={series.of ?? ''}
          options={peopleIn(register.entries)}
          onChange={(of) =>
            void change((standing) => ({ ...standing, of: of === '' ? null : of }), 'It is kept.')
          }
        />
      </div>
      <Weeks weeks={weeks} busy={busy} onChange={(edit, done) => void change(edit, done)} onClose={onClose} />
      <NextWeek series={series} weeks={weeks} busy={busy} entries={register.entries} onClose={onClose} />
      <SeriesTable
        weeks={weeks}
        naming={naming}
        onMark={(week, thing, shown) =>
          void change(
            (standing) => editSeen(standing, weeks, week, (found, at) => markThing(found, at, thing, shown)),
            'It is kept.',
          )
        }
      />
      <DifficultyCurve weeks={weeks} />
      {weeks.length > 0 && !busy && (
        <section className="series__part">
          <h4>Booklet of the term</h4>
          <Booklet
            title={series.name}
            student={register.entries.find((entry) => entry.id === series.of)?.name ?? ''}
            chapters={weeks.map((week, index) => ({
              place: `Week ${index + 1}`,
              title: titleOf(week),
              brief: weekBrief(weeks, index, naming),
              lesson: () => lessonOf(session, week),
            }))}
          />
        </section>
      )}
    </section>
  );
}

/** Students and classes that a series can be for. */
function peopleIn(entries: readonly Entry[]): readonly { readonly value: string; readonly label: string }[] {
  const classes = entries.filter((entry) => entry.kind === 'class');
  return [
    { value: '', label: 'Nobody in particular' },
    ...[...studentsIn(entries), ...classes].map(({ id, name }) => ({ value: id, label: name })),
  ];
}

interface WeeksProps {
  readonly weeks: readonly ReadWeek[];
  readonly busy: boolean;
  readonly onChange: (edit: (standing: Series) => Series | null, done: string) => void;
  readonly onClose: () => void;
}

function Weeks({ weeks, busy, onChange, onClose }: WeeksProps) {
  const { session } = useAtWork();
  const keys = weekKeys(weeks);
  if (weeks.length === 0)
    return <p>No lesson is in it yet: open the first one of the term, and put it here.</p>;
  const open = async (week: ReadWeek) => {
    onClose();
    if (session.lessons.getState().lesson.id !== week.lesson) await session.openSaved(week.lesson);
  };
  return (
    <ol className="series__weeks" aria-label="Weeks">
      {weeks.map((week, index) => {
        const where = `week ${index + 1}, “${titleOf(week)}”`;
        return (
          <li key={keys[index]}>
            <button type="button" className="word" onClick={() => void open(week)}>
              {titleOf(week)}
            </button>
            {week.read === null && !busy && ' (not on this device, or without a line)'}
            <span className="series__moves">
              {index > 0 && (
                <button
                  type="button"
                  className="button"
                  onClick={() =>
                    onChange(
                      (standing) => editSeen(standing, weeks, index, (found, at) => moveWeek(found, at, -1)),
                      'It is a week earlier now.',
                    )
                  }
                >
                  Earlier<span className="visually-hidden"> {where}</span>
                </button>
              )}
              {index < weeks.length - 1 && (
                <button
                  type="button"
                  className="button"
                  onClick={() =>
                    onChange(
                      (standing) => editSeen(standing, weeks, index, (found, at) => moveWeek(found, at, 1)),
                      'It is a week later now.',
                    )
                  }
                >
                  Later<span className="visually-hidden"> {where}</span>
                </button>
              )}
              <button
                type="button"
                className="button"
                onClick={() =>
                  onChange(
                    (standing) => editSeen(standing, weeks, index, removeWeek),
                    'It is out of the series; the lesson stays.',
                  )
                }
              >
                Take out<span className="visually-hidden"> {where}</span>
              </button>
            </span>
          </li>
        );
      })}
    </ol>
  );
}

interface NextWeekProps extends Omit<WeeksProps, 'onChange'> {
  readonly series: Series;
  readonly entries: readonly Entry[];
}

/** As many proposals are told: one for each kind of thing, and what went badly. */
const MOST_PROPOSALS = 6;

function NextWeek({ series, weeks, busy, entries, onClose }: NextWeekProps) {
  const { session } = useAtWork();
  const lesson = useLesson();
  const [said, setSaid] = useState('');
  const last = weeks.at(-1);
  if (last === undefined || busy) return null;
  const levels = studentsOf(series, entries).map(({ level }) => level);
  const level = levels.toSorted((one, other) => one - other)[0] ?? last.read?.difficulty.asked ?? 1;
  const found = proposals(weeks, level, outcomeOf(series, entries)).slice(0, MOST_PROPOSALS);
  const start = async (proposal: Proposal) => {
    const week = proposal.kind === 'again' ? weeks[proposal.week] : last;
    const from = week === undefined ? null : await lessonOf(session, week);
    if (week === undefined || from === null) return setSaid('Its last lesson is not on this device.');
    if (proposal.kind === 'again') {
      onClose();
      if (session.lessons.getState().lesson.id !== week.lesson) await session.openSaved(week.lesson);
    } else await session.openCopy(lessonFrom(from, proposal, session.freshId()), () => flushSync(onClose));
  };
  return (
    <section className="series__part">
      <h4>Next week</h4>
      <ul className="series__next" aria-label="What next week could bring">
        {found.map((proposal) => {
          const sentence = proposalWords(proposal, weeks, lesson.noteNames ?? 'letters');
          return (
            <li key={sentence}>
              {sentence}{' '}
              <button type="button" className="button" onClick={() => void start(proposal)}>
                {proposal.kind === 'again' ? 'Open it' : 'New lesson with it'}
                <span className="visually-hidden"> {sentence}</span>
              </button>
            </li>
          );
        })}
      </ul>
      {said !== '' && <p role="alert">{said}</p>}
    </section>
  );
}
