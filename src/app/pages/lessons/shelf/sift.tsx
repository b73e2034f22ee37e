import { useMemo } from 'react';
import { capitalised } from '../../../../core/base';
import { feelById } from '../../../../core/feel';
import { levelLimits } from '../../../../core/line';
import {
  choicesOn,
  type OnShelf,
  SHELF_ORDERS,
  type ShelfOrder,
  type ShelfWish,
} from '../../../../core/shelf';
import { SelectField } from '../../../controls';

interface SiftProps {
  readonly lessons: readonly OnShelf[];
  readonly wish: ShelfWish;
  readonly onChange: (wish: ShelfWish) => void;
}

const ANY = '';

const ORDER_WORDS: Record<ShelfOrder, string> = {
  used: 'Last used first',
  saved: 'Last saved first',
  title: 'By title',
  level: 'By level',
};

/** What is looked for on the shelf: words, and each thing that the lessons on it differ in. */
export function Sift({ lessons, wish, onChange }: SiftProps) {
  const choices = useMemo(() => choicesOn(lessons), [lessons]);
  const set = (change: Partial<ShelfWish>) => onChange({ ...wish, ...change });
  /** A choice among values, each with its words; the first, `unasked`, asks for none of them. */
  const among = <Value extends string | number>(
    label: string,
    unasked: string,
    values: readonly Value[],
    words: (value: Value) => string,
    chosen: Value | null,
    choose: (value: Value | null) => void,
  ) =>
    (values.length > 1 || chosen !== null) && (
      <SelectField
        label={label}
        where="of lessons on the shelf"
        value={chosen === null ? ANY : String(chosen)}
        options={[
          { value: ANY, label: unasked },
          ...values.map((value) => ({ value: String(value), label: words(value) })),
        ]}
        onChange={(text) => choose(values.find((value) => String(value) === text) ?? null)}
      />
    );
  return (
    <search className="shelf__sift">
      <div className="field shelf__search">
        <label className="field__label" htmlFor="shelf-search">
          Search in title, notes, chart and student
        </label>
        <input
          id="shelf-search"
          className="field__box"
          type="search"
          maxLength={200}
          value={wish.words}
          onChange={(event) => set({ words: event.currentTarget.value })}
        />
      </div>
      {among(
        'Student',
        'Anyone',
        choices.students,
        (name) => name,
        wish.student,
        (student) => set({ student }),
      )}
      {among(
        'Technique',
        'Any',
        choices.techniques,
        (technique) => capitalised(technique),
        wish.technique,
        (technique) => set({ technique }),
      )}
      {among(
        'Feel',
        'Any',
        choices.feels,
        (feel) => feelById(feel).name,
        wish.feel,
        (feel) => set({ feel }),
      )}
      {among(
        'Key',
        'Any',
        choices.keys,
        (key) => key,
        wish.key,
        (key) => set({ key }),
      )}
      {among(
        'Level',
        'Any',
        choices.levels,
        (level) => `${level}: ${levelLimits(level).words}`,
        wish.level,
        (level) => set({ level }),
      )}
      <SelectField
        label="Order"
        where="of lessons on the shelf"
        value={wish.order}
        options={SHELF_ORDERS.map((order) => ({ value: order, label: ORDER_WORDS[order] }))}
        onChange={(order) => set({ order })}
      />
    </search>
  );
}
