import '../../styles/booklet.css';
import { useId, useState } from 'react';
import { counted, failure, type Result, success } from '../../../core/base';
import { deriveSheets, LESSON_LIMITS, type Lesson } from '../../../core/lesson';
import type { BookletPart, Handout } from '../../../handout';
import type { MakeOptions } from '../../../tracks';
import { CheckField } from '../../controls';
import { practiceAddress } from '../common';
import { InOne } from '../making';

/** A lesson that is to be in a booklet. */
interface Chapter {
  /** Its place in the term, such as *Week 3*; '' for none. */
  readonly place: string;
  readonly title: string;
  /** What it is, in a few words; '' for none. */
  readonly brief: string;
  /** Null where it is not on this device, or cannot be read. */
  readonly lesson: () => Promise<Lesson | null>;
}

interface BookletProps {
  /** What it is called unless the teacher types something else. */
  readonly title: string;
  readonly chapters: readonly Chapter[];
  /** Whom it is for, who is named where that is ticked; '' for nobody. */
  readonly student: string;
}

const NOTHING = 'None of these lessons can be read on this device, so there is nothing to print.';

/** The chapters that are here, read one by one, and a sentence for each that is not. */
async function readChapters(chapters: readonly Chapter[]) {
  const parts: BookletPart[] = [];
  const remarks: string[] = [];
  for (const { lesson: read, title, place, brief } of chapters) {
    const lesson = await read();
    if (lesson === null)
      remarks.push(`“${title}” is not on this device, or cannot be read, and is left out.`);
    else parts.push({ place, brief, lesson, sheets: deriveSheets(lesson) });
  }
  return { parts, remarks };
}

/** Lessons as one booklet with a page of contents: out of the printer, or as a PDF. */
export function Booklet({ title, chapters, student }: BookletProps) {
  const id = useId();
  const [called, setCalled] = useState(title);
  const [sheets, setSheets] = useState(false);
  const [named, setNamed] = useState(false);
  const build = async ({ signal, onShare }: MakeOptions): Promise<Result<Handout | null, string>> => {
    const [{ buildBooklet }, { parts, remarks }] = await Promise.all([
      import('../../../handout'),
      readChapters(chapters),
    ]);
    if (parts.length === 0) return failure(NOTHING);
    const booklet = await buildBooklet(
      parts,
      { title: called, student: named ? student : '', sheets },
      { address: practiceAddress(window.location.href), signal, onShare },
    );
    return success(booklet && { ...booklet, remarks: [...remarks, ...booklet.remarks] });
  };
  return (
    <div className="booklet">
      <p>
        {counted(chapters.length, 'lesson')} behind a page of contents, in one run of page numbers; the
        cautions stand once, on the first page.
      </p>
      <div className="field field--wide">
        <label className="field__label" htmlFor={id}>
          Title of the booklet
        </label>
        <input
          id={id}
          type="text"
          className="field__box"
          autoComplete="off"
          maxLength={LESSON_LIMITS.title}
          value={called}
          onChange={(event) => setCalled(event.currentTarget.value)}
        />
      </div>
      <CheckField
        label="Each lesson begins on a sheet of its own"
        note="for printing on both sides"
        checked={sheets}
        onChange={setSheets}
      />
      {student !== '' && (
        <CheckField
          label={`With the name ${student}`}
          note="on the first page; else nobody is named"
          checked={named}
          onChange={setNamed}
        />
      )}
      <InOne noun="booklet" said="the whole booklet" file={called} build={build} />
    </div>
  );
}
