import { useStore } from 'zustand';
import { openVersion, openVersionOf } from '../../../core/versions';
import { SelectField } from '../../controls';
import { useAtWork } from '../at-work';
import { THE_TUNE } from '../common';

/** The value of the choice that is no version. */
export const TUNE = '';

/** The versions of a lesson to choose from, and the one that is on the page. */
export function useVersionChoice() {
  const { session } = useAtWork();
  const document = useStore(session.lessons, (state) => state.document);
  return {
    document,
    open: openVersionOf(document),
    options: [
      { value: TUNE, label: THE_TUNE },
      ...(document.versions ?? []).map(({ id, name }) => ({ value: id, label: name })),
    ],
    choose: (id: string) =>
      session.lessons.changeDocument((before) => openVersion(before, id === TUNE ? null : id), null),
  };
}

/** On the practice page: which version is practised. */
export function VersionToPractise() {
  const { open, options, choose } = useVersionChoice();
  return (
    <div className="practice__choice">
      <SelectField label="Version" value={open?.id ?? TUNE} options={options} onChange={choose} />
    </div>
  );
}
