import {
  CELL_WORDS,
  isShown,
  KIND_WORDS,
  type ReadWeek,
  type SeriesRow,
  seriesTable,
  thingKey,
  thingName,
  weekKeys,
} from '../../../core/series';
import { THING_KINDS, type Thing } from '../../../core/students';
import type { Naming } from '../../../core/theory';

const SIGNS = { new: 'new', again: 'again', none: '–' } as const;

interface SeriesTableProps {
  readonly weeks: readonly ReadWeek[];
  readonly naming: Naming;
  /** Null goes by the notes again. */
  readonly onMark: (week: number, thing: Thing, shown: boolean | null) => void;
}

/** What a term has shown, a row a thing and a column a week; the teacher can say otherwise in each cell. */
export function SeriesTable({ weeks, naming, onMark }: SeriesTableProps) {
  const rows = seriesTable(weeks);
  const keys = weekKeys(weeks);
  if (rows.length === 0) return null;
  return (
    <div>
      <div className="series__scroll">
        <table className="series__table">
          <caption>
            Read off the notes, week by week; a dash is not shown. Press a cell where you know better.
          </caption>
          <thead>
            <tr>
              <th scope="col">Shown</th>
              {keys.map((key, index) => (
                <th key={key} scope="col">
                  <span className="visually-hidden">Week </span>
                  {index + 1}
                </th>
              ))}
            </tr>
          </thead>
          {THING_KINDS.map((kind) => {
            const own = rows.filter(({ thing }) => thing.kind === kind);
            return own.length === 0 ? null : (
              <tbody key={kind}>
                <tr>
                  <th scope="rowgroup" colSpan={weeks.length + 1}>
                    {KIND_WORDS[kind]}
                  </th>
                </tr>
                {own.map((row) => (
                  <Row key={thingKey(row.thing)} row={row} weeks={weeks} naming={naming} onMark={onMark} />
                ))}
              </tbody>
            );
          })}
        </table>
      </div>
    </div>
  );
}

function Row({ row, weeks, naming, onMark }: SeriesTableProps & { readonly row: SeriesRow }) {
  const name = thingName(row.thing, naming);
  const keys = weekKeys(weeks);
  return (
    <tr>
      <th scope="row">{name}</th>
      {weeks.map((week, index) => {
        const cell = row.cells[index] ?? 'none';
        const own = row.marked[index] === true;
        // Pressed once it says otherwise than the notes; pressed again it goes by them.
        const next = own ? null : !isShown(week, row.thing);
        return (
          <td key={keys[index]}>
            <button
              type="button"
              className={`series__cell series__cell--${cell}${own ? ' series__cell--own' : ''}`}
              aria-label={`${name}, week ${index + 1}: ${CELL_WORDS[cell]}${own ? ', as you said' : ''}`}
              onClick={() => onMark(index, row.thing, next)}
            >
              {SIGNS[cell]}
            </button>
          </td>
        );
      })}
    </tr>
  );
}
