import { readdirSync, readFileSync } from 'node:fs';

/** Ticks in which Linux counts a thread's time (USER_HZ, proc(5)), a second. */
const TICKS = 100;

/** Where these figures are to be had: Linux keeps them in files. */
export const threadsAreKnown = process.platform === 'linux';

/** Seconds of a processor that each thread of a process has used, by the thread's name. */
export function timesOfThreads(pid: number): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const task of readdirSync(`/proc/${pid}/task`)) {
    try {
      const stat = readFileSync(`/proc/${pid}/task/${task}/stat`, 'utf8');
      // The name stands in brackets and may hold blanks; user and system time are the 14th and 15th field.
      const end = stat.lastIndexOf(')');
      const fields = stat.slice(end + 2).split(' ');
      const name = stat.slice(stat.indexOf('(') + 1, end);
      const time = (Number(fields[11]) + Number(fields[12])) / TICKS;
      times.set(name, (times.get(name) ?? 0) + time);
    } catch {
      // A thread that has just ended.
    }
  }
  return times;
}

/** Bytes of memory that a process has for itself alone. */
export function ownMemory(pid: number): number {
  const rows = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8').matchAll(/^Private_\w+:\s+(\d+) kB$/gm);
  return [...rows].reduce((sum, [, kilobytes]) => sum + Number(kilobytes) * 1024, 0);
}
