import { type ComponentType, type ReactNode, useEffect, useState } from 'react';
import { whenIdle } from '../common';
import { useAtWork } from './session';

/** The longest wait for a moment's rest after the first look, in milliseconds. */
const LONGEST_WAIT = 3000;

/** A part of the page that the first look does without. */
interface LaterPart<Props> {
  /** What a sentence calls it when it cannot be fetched, for example `The fretboard`. */
  readonly name: string;
  /** The part once it is here. */
  readonly part: () => ComponentType<Props> | null;
  readonly fetch: () => Promise<void>;
}

const parts: (() => Promise<void>)[] = [];

/**
 * Names a part that is fetched when it is first shown, or when the page has come to rest after its start (see
 * {@link useLaterParts}), so that in practice it is there when it is asked for. {@link Later} shows it.
 */
export function laterPart<Props extends object>(
  name: string,
  load: () => Promise<ComponentType<Props>>,
): LaterPart<Props> {
  let part: ComponentType<Props> | null = null;
  const fetch = async () => {
    part ??= await load();
  };
  parts.push(fetch);
  return { name, part: () => part, fetch };
}

interface LaterProps<Props> {
  readonly part: LaterPart<Props>;
  /** What the part itself is given. */
  readonly given: Props;
  /** Stands in its place until it has arrived. */
  readonly meanwhile?: ReactNode;
}

/** Shows a part that comes later; when it cannot be fetched, a sentence says so. */
export function Later<Props extends object>({ part, given, meanwhile = null }: LaterProps<Props>) {
  const { session } = useAtWork();
  const [, setArrived] = useState(false);
  useEffect(() => {
    if (part.part() !== null) return;
    let gone = false;
    part.fetch().then(
      () => {
        if (!gone) setArrived(true);
      },
      () => {
        session.editor.setState({
          notice: `${part.name} could not be loaded. Check that the page is still reachable and load it again.`,
        });
      },
    );
    return () => {
      gone = true;
    };
  }, [part, session]);
  const Part = part.part();
  return Part === null ? meanwhile : <Part {...given} />;
}

/** Fetches all parts that come later once the page is at rest; one that fails is tried again when it is shown. */
export function useLaterParts(): void {
  useEffect(
    () =>
      whenIdle(() => {
        for (const fetch of parts) fetch().catch(() => undefined);
      }, LONGEST_WAIT),
    [],
  );
}
