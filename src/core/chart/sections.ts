import { sectionId } from './lines';
import type { Section } from './types';

interface SectionDraft {
  readonly name: string | null;
  /** Its first bar, counted from 0. */
  readonly start: number;
  readonly again: boolean;
}

/** The sections of a chart while it is read. */
export class Sections {
  private readonly drafts: SectionDraft[] = [];
  /** The section that each name stands for: the last one written out under it. */
  private readonly written = new Map<string, number>();

  get count(): number {
    return this.drafts.length;
  }

  /** The section read last, counted from 0; −1 before the first. */
  get last(): number {
    return this.drafts.length - 1;
  }

  /** Whether a section of this name was written out. */
  has(name: string): boolean {
    return this.written.has(sectionId(name));
  }

  /** A section of this name begins with bar `start`. */
  open(name: string, start: number): void {
    this.written.set(sectionId(name), this.drafts.length);
    this.drafts.push({ name, start, again: false });
  }

  /** The section written out under this name, with its bars from `start` up to, but without, `end` of `bars` bars. */
  find(name: string, bars: number): (SectionDraft & { readonly end: number }) | null {
    const known = this.written.get(sectionId(name));
    const section = known === undefined ? undefined : this.drafts[known];
    if (known === undefined || !section) return null;
    return { ...section, end: this.drafts[known + 1]?.start ?? bars };
  }

  /** A known section comes again from bar `start`. */
  repeat(name: string | null, start: number): void {
    this.drafts.push({ name, start, again: true });
  }

  /** The section of a bar written at `start`: bars after a section that came again have one without a name. */
  forBar(start: number): number {
    const last = this.drafts[this.drafts.length - 1];
    if (!last || last.again) this.drafts.push({ name: null, start, again: false });
    return this.last;
  }

  /** The first bars of all sections, counted from 0. */
  starts(): ReadonlySet<number> {
    return new Set(this.drafts.map(({ start }) => start));
  }

  /** All sections of a chart of `bars` bars. */
  finished(bars: number): readonly Section[] {
    return this.drafts.map((section, index): Section => {
      const end = this.drafts[index + 1]?.start ?? bars;
      return { ...section, length: end - section.start };
    });
  }
}
