import { type ChildProcess, spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The first of some executable files that is there: a name is looked for where programs are, a path is taken as it is. */
export function findExecutable(names: readonly (string | undefined)[]): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter);
  for (const name of names) {
    if (name === undefined || name === '') continue;
    const places = name.includes('/') ? [name] : folders.map((folder) => join(folder, name));
    const found = places.find(isExecutable);
    if (found !== undefined) return found;
  }
  return null;
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** A program that was started here. */
export interface Started {
  readonly process: ChildProcess;
  /** Waits for words on its outputs and gives what the pattern caught. */
  says(pattern: RegExp, seconds: number): Promise<string>;
  end(): Promise<void>;
}

/** Starts a program in a group of its own, so that what it starts ends with it. */
export function start(path: string, args: readonly string[], environment: NodeJS.ProcessEnv = {}): Started {
  const child = spawn(path, [...args], {
    env: { ...process.env, ...environment },
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stdout.on('data', (bytes: Buffer) => {
    said += bytes.toString();
  });
  child.stderr.on('data', (bytes: Buffer) => {
    said += bytes.toString();
  });
  const gone = new Promise<void>((resolve) => child.once('close', () => resolve()));
  return {
    process: child,
    async says(pattern, seconds) {
      for (let waited = 0; waited < seconds * 10; waited += 1) {
        const found = pattern.exec(said)?.[1];
        if (found !== undefined) return found;
        if (child.exitCode !== null) break;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error(`${path} did not say ${pattern.source}: ${said.slice(-600)}`);
    },
    async end() {
      if (child.pid !== undefined && child.exitCode === null) process.kill(-child.pid, 'SIGTERM');
      await gone;
    },
  };
}
