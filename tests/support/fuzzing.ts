import type { Kind } from './fuzz-kinds';

interface Run {
  readonly seed: number;
  readonly inputs: number;
  /** Hears each fault at once, and how far the run is now and then. */
  readonly tell: (sentence: string) => void;
}

const LONGEST_MS = 1000;

/** How often an input is timed that takes longer: the same work takes longer while others are at the same cores. */
const TIMED = 3;

const TOLD_EVERY = 500;

/** Milliseconds of the processor that a piece of work takes. */
function timed(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Does a piece of work whose fault is told already, or is none of this input. */
function silently(work: () => unknown): void {
  try {
    work();
  } catch {
    // It is told where it is that input's turn.
  }
}

/**
 * So many inputs of a kind, each of a seed of its own, counted up. Gives the faults: what was thrown and what took
 * longer than a second of the processor whenever it was timed, each with the command that brings it again.
 */
export function fuzzed({ name, prepare }: Kind, { seed: first, inputs, tell }: Run): readonly string[] {
  const faults: string[] = [];
  const reached = new Map<string, number>();
  let longest = 0;
  let all = 0;
  let again = 0;
  const fault = (what: string, seed: number): void => {
    const said = `${what}: FUZZ_KINDS=${name} FUZZ_SEED=${seed} FUZZ_INPUTS=1 npm run soak -- fuzz`;
    faults.push(said);
    tell(said);
  };
  for (let index = 0; index < inputs; index += 1) {
    const seed = first + index;
    const work = prepare(seed);
    let took = timed(() => {
      try {
        const stage = work();
        reached.set(stage, (reached.get(stage) ?? 0) + 1);
      } catch (thrown) {
        const [, where = ''] = thrown instanceof Error ? (thrown.stack?.split('\n') ?? []) : [];
        fault(`${thrown instanceof Error ? thrown.message : thrown} ${where}`, seed);
      }
    });
    if (took > LONGEST_MS) again += 1;
    for (let time = 1; took > LONGEST_MS && time < TIMED; time += 1) {
      // Another input in between, so that nothing is known from the last time.
      silently(prepare(seed + 1));
      took = Math.min(
        took,
        timed(() => silently(work)),
      );
    }
    all += took;
    longest = Math.max(longest, took);
    if (took > LONGEST_MS) fault(`took ${Math.round(took)} ms`, seed);
    const done = index + 1;
    if (done % TOLD_EVERY !== 0 && done !== inputs) continue;
    const stages = [...reached].map(([stage, count]) => `${count} ${stage}`).join(', ');
    tell(
      `${name}: ${done} inputs from seed ${first}: ${stages}; ${Math.round(all / done)} ms each, the longest ${Math.round(longest)} ms, ${again} timed again; ${faults.length} faults.`,
    );
  }
  return faults;
}
