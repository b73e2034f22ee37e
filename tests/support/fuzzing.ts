import type { Kind } from './fuzz-kinds';

interface Run {
  readonly seed: number;
  readonly inputs: number;
  /** Hears each fault at once, and how far the run is now and then. */
  readonly tell: (sentence: string) => void;
}

const LONGEST_MS = 1000;
const TOLD_EVERY = 500;

/**
 * So many inputs of a kind, each of a seed of its own, counted up. Gives the faults: what was thrown and what took
 * longer than a second of the processor, each with the command that brings it again.
 */
export function fuzzed({ name, prepare }: Kind, { seed: first, inputs, tell }: Run): readonly string[] {
  const faults: string[] = [];
  const reached = new Map<string, number>();
  let longest = 0;
  let all = 0;
  const fault = (what: string, seed: number): void => {
    const said = `${what}: FUZZ_KINDS=${name} FUZZ_SEED=${seed} FUZZ_INPUTS=1 npm run soak -- fuzz`;
    faults.push(said);
    tell(said);
  };
  for (let index = 0; index < inputs; index += 1) {
    const seed = first + index;
    const work = prepare(seed);
    const before = process.cpuUsage();
    try {
      const stage = work();
      reached.set(stage, (reached.get(stage) ?? 0) + 1);
    } catch (thrown) {
      fault(
        thrown instanceof Error ? `${thrown.message} ${thrown.stack?.split('\n')[1] ?? ''}` : String(thrown),
        seed,
      );
    }
    const { user, system } = process.cpuUsage(before);
    const took = (user + system) / 1000;
    all += took;
    longest = Math.max(longest, took);
    if (took > LONGEST_MS) fault(`took ${Math.round(took)} ms`, seed);
    const done = index + 1;
    if (done % TOLD_EVERY !== 0 && done !== inputs) continue;
    const stages = [...reached].map(([stage, count]) => `${count} ${stage}`).join(', ');
    tell(
      `${name}: ${done} inputs from seed ${first}: ${stages}; ${Math.round(all / done)} ms each, the longest ${Math.round(longest)} ms; ${faults.length} faults.`,
    );
  }
  return faults;
}
