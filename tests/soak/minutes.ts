/** How long a run takes, in minutes: as the environment variable says, else as long as it is meant to. */
export function minutesOf(variable: string, usual: number): number {
  const asked = Number(process.env[variable] ?? usual);
  if (!(asked > 0)) throw new RangeError(`${variable} is a number of minutes above 0.`);
  return asked;
}

/** Tells how far a long run is. */
export const tell = (line: string): void => {
  process.stdout.write(`${line}\n`);
};
