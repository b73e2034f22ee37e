import { useState } from 'react';
import { deriveSheets, type Lesson, type LineSheet, lineAtHand, neckShapes } from '../../../core/lesson';
import { barsPicture, fullSettings, type Letters } from '../../../handout';
import { CheckField, NumberField, SelectField } from '../../controls';
import { useAtWork, useEditor } from '../at-work';
import { LINE_NOTES, NECK_LABELS, type NeckLabel, neckChoices, neckPicture } from '../neck';
import { fileStem, type PictureKind, savePicture, standAloneNeck } from '../saving';

/** Pictures of some bars, and of the neck, for slides and video. */
export function HandoutPictures({ lesson }: { readonly lesson: Lesson }) {
  const pieceId = useEditor((state) => state.pieceId);
  const [chosenId, setChosenId] = useState(pieceId);
  const [letters, setLetters] = useState<Letters>('outlines');
  const lines = deriveSheets(lesson).flatMap((sheet): readonly LineSheet[] =>
    sheet.kind === 'line' && sheet.bars.length > 0 ? [sheet] : [],
  );
  const sheet = lines.find(({ id }) => id === chosenId) ?? lines[0];
  if (sheet === undefined) return null;
  return (
    <>
      <fieldset className="designer__group">
        <legend className="pad__heading">Bars as a picture, for slides</legend>
        {lines.length > 1 && (
          <SelectField
            label="Line of the pictures"
            value={sheet.id}
            options={lines.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setChosenId}
          />
        )}
        <BarsOf key={sheet.id} sheet={sheet} lesson={lesson} letters={letters} />
      </fieldset>
      <fieldset className="designer__group">
        <legend className="pad__heading">The neck as a picture, for slides</legend>
        <NeckOf key={sheet.id} sheet={sheet} lesson={lesson} letters={letters} />
      </fieldset>
      <CheckField
        label="Letters of an SVG stay text"
        note="to search, edit and read aloud; a program without the font shows its own"
        checked={letters === 'text'}
        onChange={(text) => setLetters(text ? 'text' : 'outlines')}
      />
    </>
  );
}

interface PictureProps {
  readonly sheet: LineSheet;
  readonly lesson: Lesson;
  /** Of an SVG; a PNG has none. */
  readonly letters: Letters;
}

/** A PNG is drawn by the browser as a picture apart from the page, which has not the page's fonts. */
const lettersOf = (kind: PictureKind, letters: Letters): Letters => (kind === 'svg' ? letters : 'outlines');

/** Bars are counted as written, so that a pickup is bar 0. */
const numbersOf = (sheet: LineSheet) => {
  const least = sheet.bars[0]?.written.number ?? 1;
  return { least, most: sheet.bars.at(-1)?.written.number ?? least };
};

function BarsOf({ sheet, lesson, letters }: PictureProps) {
  const { session } = useAtWork();
  const { least, most } = numbersOf(sheet);
  const [range, setRange] = useState({ first: least, last: Math.min(least + 3, most) });
  const first = Math.min(range.first, most);
  const last = Math.min(range.last, most);
  const save = (kind: PictureKind) =>
    savePicture(session, kind, `${fileStem(lesson.title)}-bars-${first}-${last}`, () =>
      barsPicture(sheet, first - least, last - least, fullSettings(lesson.handout), lettersOf(kind, letters)),
    );
  return (
    <>
      <div className="designer__pair">
        <NumberField
          label="First bar of the picture"
          value={first}
          least={least}
          most={most}
          onChange={(bar) => setRange({ first: bar, last: Math.max(bar, last) })}
        />
        <NumberField
          label="Last bar of the picture"
          value={last}
          least={least}
          most={most}
          onChange={(bar) => setRange({ first: Math.min(bar, first), last: bar })}
        />
      </div>
      <div className="designer__actions">
        <button type="button" className="button" onClick={() => void save('svg')}>
          Save as SVG
        </button>
        <button type="button" className="button" onClick={() => void save('png')}>
          Save as PNG
        </button>
      </div>
    </>
  );
}

function NeckOf({ sheet, lesson, letters }: PictureProps) {
  const { session } = useAtWork();
  const { least, most } = numbersOf(sheet);
  const [number, setNumber] = useState(least);
  const [shown, setShown] = useState<string>(LINE_NOTES);
  const [show, setShow] = useState<NeckLabel>('degree');
  const index = Math.min(number, most) - least;
  const bar = sheet.bars[index];
  const piece = lineAtHand(lesson, sheet.id);
  const views = bar === undefined || piece === null ? [] : neckShapes(sheet, bar, piece.hand);
  const view = views.find(({ id }) => id === shown);
  const save = (kind: PictureKind) => {
    const picture = neckPicture(sheet, index, view, null);
    if (picture === null) return;
    const stem = `${fileStem(lesson.title)}-neck-bar-${index + least}`;
    void savePicture(session, kind, stem, () =>
      standAloneNeck({ ...picture, show }, lettersOf(kind, letters)),
    );
  };
  return (
    <>
      <div className="designer__pair">
        <NumberField
          label="Bar of the neck"
          value={index + least}
          least={least}
          most={most}
          onChange={setNumber}
        />
        <SelectField label="Written on its notes" value={show} options={NECK_LABELS} onChange={setShow} />
      </div>
      <SelectField
        label="The neck shows"
        value={view?.id ?? LINE_NOTES}
        options={neckChoices(views)}
        onChange={setShown}
      />
      <div className="designer__actions">
        <button type="button" className="button" onClick={() => save('svg')}>
          Neck as SVG
        </button>
        <button type="button" className="button" onClick={() => save('png')}>
          Neck as PNG
        </button>
      </div>
    </>
  );
}
