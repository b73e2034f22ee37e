import '../../styles/whole-dialog.css';
import '../../styles/students.css';
import '../../styles/series.css';
import { useId, useState } from 'react';
import { counted } from '../../../core/base';
import { newSeries } from '../../../core/students';
import { useModal } from '../../controls';
import { useAtWork } from '../at-work';
import { useRegister } from '../register';
import { Adding } from '../students';
import { ChosenSeries } from './chosen';
import { Closeness } from './closeness';

/** The series of this device: the lessons of a term in their order, and what each has shown. */
export function SeriesOfLessons({ onClose }: { readonly onClose: () => void }) {
  const { session } = useAtWork();
  const dialog = useModal();
  const register = useRegister();
  const id = useId();
  const [chosen, setChosen] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const all = register.entries.filter((entry) => entry.kind === 'series');
  const shown = all.find((entry) => entry.id === chosen);
  const close = () => dialog.current?.close();
  const add = async (name: string) => {
    const made = newSeries(session.freshId(), name, null);
    const added = await register.add(made);
    setSaid(added.ok ? `${name} is kept on this device.` : `${name} was not kept. ${added.problem}`);
    if (added.ok) setChosen(made.id);
  };
  return (
    <dialog ref={dialog} className="dialog whole-dialog register" aria-labelledby={id} onClose={onClose}>
      <div className="whole-dialog__head">
        <h2 id={id}>Series</h2>
        <p className="whole-dialog__count">{register.known && counted(all.length, 'series', 'series')}</p>
        <button type="button" className="button" onClick={close}>
          Close the series
        </button>
      </div>
      <p className="register__hint">
        The lessons of a term in their order, one new thing a week. They are kept on this device alone, beside
        the students.
      </p>
      {register.problem !== null && <p role="alert">{register.problem}</p>}
      <p role="status" aria-label="Done with the series" className="register__said">
        {said}
      </p>
      <div className="register__body">
        <div className="register__left">
          <Adding what="series" onAdd={add} />
          {all.length > 0 && (
            <fieldset className="register__list">
              <legend>Choose a series</legend>
              {all.map((series) => (
                <label key={series.id} className="register__row">
                  <input
                    type="radio"
                    name={id}
                    checked={series.id === chosen}
                    onChange={() => setChosen(series.id)}
                  />
                  <span>
                    {series.name}
                    <span className="register__brief"> {counted(series.weeks.length, 'week')}</span>
                  </span>
                </label>
              ))}
            </fieldset>
          )}
          <Closeness entries={register.entries} />
        </div>
        {shown !== undefined && (
          <ChosenSeries key={shown.id} series={shown} register={register} onSaid={setSaid} onClose={close} />
        )}
      </div>
    </dialog>
  );
}
