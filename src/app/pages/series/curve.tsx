import type { ReadWeek } from '../../../core/series';

const WEEK = 48;
const LEVEL = 14;
const TOP = 10;
const HIGHEST = 5;
const LEFT = 24;

const at = (level: number): number => TOP + (HIGHEST - level) * LEVEL;

/** The difficulty of a term's lessons, as their notes ask for it and as they were asked for. */
export function DifficultyCurve({ weeks }: { readonly weeks: readonly ReadWeek[] }) {
  const points = weeks.flatMap(({ read }, index) =>
    read === null ? [] : [{ week: index + 1, x: LEFT + index * WEEK + WEEK / 2, ...read.difficulty }],
  );
  if (points.length === 0) return null;
  const width = LEFT + weeks.length * WEEK;
  const height = at(0) + 26;
  const told = points
    .map(
      ({ week, measured, notesPerSecond, tempo }) =>
        `week ${week} level ${measured}, ${notesPerSecond.toFixed(1)} notes a second at most, ${tempo} bpm`,
    )
    .join('; ');
  return (
    <figure className="series__curve">
      <figcaption>
        Difficulty by the notes: level 0 to 5 (a ring where another level was asked for), and the most notes a
        second.
      </figcaption>
      <div className="series__scroll">
        <svg
          role="img"
          aria-label={`Difficulty: ${told}.`}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
        >
          {Array.from({ length: HIGHEST + 1 }, (_, level) => (
            <g key={at(level)}>
              <line className="series__line" x1={LEFT} x2={width} y1={at(level)} y2={at(level)} />
              <text x={LEFT - 6} y={at(level) + 4} textAnchor="end">
                {level}
              </text>
            </g>
          ))}
          <polyline
            className="series__path"
            points={points.map(({ x, measured }) => `${x},${at(measured)}`).join(' ')}
          />
          {points.map(({ week, x, measured, asked, notesPerSecond }) => (
            <g key={week}>
              {asked !== measured && <circle className="series__asked" cx={x} cy={at(asked)} r={4} />}
              <circle className="series__point" cx={x} cy={at(measured)} r={4} />
              <text x={x} y={height - 4} textAnchor="middle">
                {notesPerSecond.toFixed(1)}
              </text>
            </g>
          ))}
        </svg>
      </div>
    </figure>
  );
}
