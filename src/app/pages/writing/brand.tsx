import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Later, laterPart } from '../at-work';

const WHAT_IS_NEW = laterPart('What is new', async () => (await import('../news')).WhatIsNew);

interface BrandProps {
  /** Whether it is the heading of the page. */
  readonly heading: boolean;
}

/** The app's name as a button; under it, on request, what the version brought and what it is built with. */
export function Brand({ heading }: BrandProps) {
  const [open, setOpen] = useState(false);
  const root = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!open) return;
    const closeOutside = (event: PointerEvent) => {
      if (event.target instanceof Node && !root.current?.contains(event.target)) setOpen(false);
    };
    document.addEventListener('pointerdown', closeOutside);
    return () => document.removeEventListener('pointerdown', closeOutside);
  }, [open]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !open) return;
    event.stopPropagation();
    setOpen(false);
    button.current?.focus();
  };
  const name = (
    <button
      ref={button}
      type="button"
      className="brand__name"
      aria-expanded={open}
      aria-controls={open ? 'what-is-new' : undefined}
      title="What is new"
      onClick={() => setOpen(!open)}
    >
      Ground Bass
    </button>
  );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what the button within has opened.
    <div className="brand" ref={root} onKeyDown={onKeyDown}>
      {heading ? <h1 className="header__brand">{name}</h1> : name}
      {open && (
        <section className="brand__news" id="what-is-new" aria-label="What is new">
          <Later part={WHAT_IS_NEW} given={{}} />
          <p>
            <a href="./third-party.txt" target="_blank" rel="noreferrer">
              Licences of the packages and fonts it is built with
            </a>
          </p>
        </section>
      )}
    </div>
  );
}
