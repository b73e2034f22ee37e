import '../../styles/versions.css';
import { useState } from 'react';
import { createPortal } from 'react-dom';
import * as versionsRoom from '../../../core/versions';
import { MenuButton, SelectWord } from '../../controls';
import { useAtWork } from '../at-work';
import { THE_TUNE } from '../common';
import { TUNE, useVersionChoice } from './choice';
import { Differences } from './differs';
import { NameOfVersion } from './name';
import { useSendingVersions } from './send';
import { freeName } from './words';

const { addVersion, openVersionOf, removeVersion, renameVersion } = versionsRoom;

interface VersionsProps {
  /** Where a first version is offered, at the foot of the sheet: an offer is not worth a row above it. */
  readonly offerAt: HTMLElement | null;
}

/** Which version of the lesson is on the page, and the ways to another one. */
export function Versions({ offerAt }: VersionsProps) {
  const { session } = useAtWork();
  const { lessons } = session;
  const { document, open, options, choose } = useVersionChoice();
  const [named, setNamed] = useState<string | null>(null);
  const sending = useSendingVersions();
  const make = () => {
    lessons.knowVersions(versionsRoom);
    lessons.changeDocument((before) => addVersion(before, freeName(before)), {
      label: 'make a version',
      join: 'new version',
    });
    const made = openVersionOf(lessons.getState().document);
    if (made !== null && made.id !== open?.id) setNamed(made.id);
  };
  if (document.versions === undefined) {
    if (offerAt === null) return null;
    return createPortal(
      <p className="versions__offer">
        <button type="button" className="word" onClick={make}>
          Make a version
        </button>{' '}
        of this lesson for another student or class.
      </p>,
      offerAt,
    );
  }
  const rename = (name: string | null) => {
    setNamed(null);
    if (open !== null && name !== null) {
      lessons.changeDocument((before) => renameVersion(before, open.id, name), {
        label: `call a version “${name}”`,
        join: 'new version',
      });
    }
  };
  return (
    <>
      <div className="versions__strip">
        <p className="versions__open">
          On the page:{' '}
          {open !== null && named === open.id ? (
            <NameOfVersion name={open.name} onName={rename} />
          ) : (
            <SelectWord
              label="Version on the page"
              value={open?.id ?? TUNE}
              options={options}
              onChange={choose}
            />
          )}
        </p>
        <p role="status" className="visually-hidden">
          On the page: {open?.name ?? THE_TUNE}
        </p>
        <MenuButton
          label="Versions"
          className="button button--quiet"
          groups={[
            {
              items: [
                {
                  label: 'New version',
                  note: 'It begins as what is on the page; what you change in it is its own.',
                  onChoose: make,
                },
                ...(open === null
                  ? []
                  : [
                      { label: 'Rename', onChoose: () => setNamed(open.id) },
                      {
                        label: 'Remove',
                        note: 'What it has of its own goes with it. Undo brings it back.',
                        onChoose: () =>
                          lessons.changeDocument((before) => removeVersion(before, open.id), {
                            label: `remove the version “${open.name}”`,
                          }),
                      },
                    ]),
              ],
            },
            ...sending,
          ]}
        />
      </div>
      <Differences key={open?.id} document={document} />
    </>
  );
}
