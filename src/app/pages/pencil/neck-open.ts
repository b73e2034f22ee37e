import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Whether the neck lies open beside the pencil: then a small screen has room for little else. */
const open = createStore<{ readonly neck: boolean }>(() => ({ neck: false }));

export const useNeckOpen = (): boolean => useStore(open, ({ neck }) => neck);

/** The neck is open as long as its part is on the page. */
export function useTellsNeckOpen(): void {
  useEffect(() => {
    open.setState({ neck: true });
    return () => open.setState({ neck: false });
  }, []);
}
