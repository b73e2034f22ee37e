import { useCallback, useEffect, useRef, useState } from 'react';
import { failure, type Result } from '../../../core/base';
import type { Entry } from '../../../core/students';
import { loadRegister, type Register, type RegisterList } from '../../storage';

const NOT_LOADED =
  'What keeps the students could not be loaded. Check that the page is still reachable and load it again.';

const EMPTY: RegisterList = { entries: [], unreadable: [] };

/** The register of this device as the dialog works with it. */
export interface AtRegister extends RegisterList {
  /** It was read; until then nothing is said of what is in it. */
  readonly known: boolean;
  /** Why it cannot be read, or null. */
  readonly problem: string | null;
  readonly add: (entry: Entry) => Promise<Result<null, string>>;
  readonly change: (
    id: string,
    edit: (entry: Entry) => Entry | null,
  ) => Promise<Result<Entry | null, string>>;
  readonly changeEach: Register['changeEach'];
  readonly remove: (id: string) => Promise<Result<null, string>>;
}

/** Reads the register, and again whenever this window or another has changed it. */
export function useRegister(): AtRegister {
  /** What is asked before the register is open waits for it. */
  const opening = useRef<Promise<Register | null>>(Promise.resolve(null));
  const [list, setList] = useState<RegisterList>(EMPTY);
  const [known, setKnown] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const read = useCallback(async (from: Register) => {
    const found = await from.list();
    setProblem(found.ok ? null : found.problem);
    if (!found.ok) return;
    setList(found.value);
    setKnown(true);
  }, []);
  useEffect(() => {
    let gone = false;
    let stop = () => {};
    opening.current = loadRegister().then(
      ({ openRegister }) => {
        const opened = openRegister();
        // What was entered just before the dialog was closed is kept all the same.
        if (gone) return opened;
        stop = opened.watch(() => void read(opened));
        void read(opened);
        return opened;
      },
      () => {
        setProblem(NOT_LOADED);
        return null;
      },
    );
    return () => {
      gone = true;
      stop();
    };
  }, [read]);
  const then = async <Value>(
    work: (register: Register) => Promise<Result<Value, string>>,
  ): Promise<Result<Value, string>> => {
    const register = await opening.current;
    if (register === null) return failure(problem ?? NOT_LOADED);
    const done = await work(register);
    await read(register);
    return done;
  };
  return {
    ...list,
    known,
    problem,
    add: (entry) => then((each) => each.add(entry)),
    change: (id, edit) => {
      // What is ticked or chosen shows at once; what is kept is read again when it is.
      setList((now) => ({
        ...now,
        entries: now.entries.map((entry) => (entry.id === id ? (edit(entry) ?? entry) : entry)),
      }));
      return then((each) => each.change(id, edit));
    },
    changeEach: (ids, edit) => then((each) => each.changeEach(ids, edit)),
    remove: (id) => then((each) => each.remove(id)),
  };
}
