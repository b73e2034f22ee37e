import { type ReactNode, useId, useMemo, useState } from 'react';
import { countedIn } from '../../../core/chart';
import { type Passage, waysToPlay } from '../../../core/lesson';
import { formatNameIn } from '../../../core/theory';
import { SelectField } from '../../controls';
import { type BarOnNeck, placesText, useChange } from './bar-on-neck';

const BAR = 'bar';
const LINE = 'line';

/** The next best ways to play a note, the bar or the whole line, each with what it costs and saves. */
export function Elsewhere({ piece, instrument, sheet, bar }: BarOnNeck) {
  const change = useChange();
  const id = useId();
  const [asked, setAsked] = useState(BAR);
  const notes = sheet.bars[bar]?.notes ?? [];
  const note = Number(asked);
  const value = asked === BAR || asked === LINE || notes[note] !== undefined ? asked : BAR;
  const passage = useMemo(
    (): Passage =>
      value === LINE
        ? { kind: 'line' }
        : value === BAR
          ? { kind: 'bar', bar }
          : { kind: 'note', bar, note: Number(value) },
    [value, bar],
  );
  const ways = useMemo(() => waysToPlay(piece, instrument, passage), [piece, instrument, passage]);
  const placed = countedIn(sheet.chart, bar, sheet.metre);
  const what = value === LINE ? 'the line' : value === BAR ? 'the bar' : 'the note';
  return (
    <div className="elsewhere">
      <SelectField
        label="Elsewhere on the neck"
        value={value}
        options={[
          { value: BAR, label: 'This bar' },
          ...notes.map((each, index) => ({
            value: String(index),
            label: `Only ${formatNameIn(sheet.noteNames ?? 'letters', each.note.pitch)} on ${placed(each.note.start)}`,
          })),
          { value: LINE, label: 'The whole line' },
        ]}
        onChange={setAsked}
      />
      <ol className="ways" aria-label={`Ways to play ${what}`}>
        {ways.map(({ way, places, take }, index) => (
          <li key={JSON.stringify(places)} className={`way${way.current ? ' way--current' : ''}`}>
            <p id={`${id}-${index}`}>
              {value !== LINE && <strong className="way__places">{placesText(sheet, places)}</strong>}{' '}
              {way.description}
            </p>
            {way.current ? (
              <Now />
            ) : (
              <button
                type="button"
                className="word"
                id={`${id}-${index}-take`}
                aria-labelledby={`${id}-${index}-take ${id}-${index}`}
                onClick={() => change(`play ${what} elsewhere on the neck`, take)}
              >
                Play it there
              </button>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}

const Now = (): ReactNode => <span className="way__now">as it is now</span>;
