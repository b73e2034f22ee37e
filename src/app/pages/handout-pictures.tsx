import { useState } from 'react';
import { deriveSheets, type Lesson, type LineSheet } from '../../core/lesson';
import { barsPicture, fullSettings, pngFile, svgFile } from '../../handout';
import { NumberField, SelectField } from '../controls';
import { fileStem, saveFile } from './files';
import { useAtWork, useEditor } from './session';

/** Pictures of some bars for slides and video. */
export function HandoutPictures({ lesson }: { readonly lesson: Lesson }) {
  const pieceId = useEditor((state) => state.pieceId);
  const [chosenId, setChosenId] = useState(pieceId);
  const lines = deriveSheets(lesson).flatMap((sheet): readonly LineSheet[] =>
    sheet.kind === 'line' && sheet.bars.length > 0 ? [sheet] : [],
  );
  const sheet = lines.find(({ id }) => id === chosenId) ?? lines[0];
  if (sheet === undefined) return null;
  return (
    <fieldset className="designer__group">
      <legend className="pad__heading">Bars as a picture, for slides</legend>
      {lines.length > 1 && (
        <SelectField
          label="Line of the picture"
          value={sheet.id}
          options={lines.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setChosenId}
        />
      )}
      <BarsOf key={sheet.id} sheet={sheet} lesson={lesson} />
    </fieldset>
  );
}

interface BarsOfProps {
  readonly sheet: LineSheet;
  readonly lesson: Lesson;
}

/** Bars are counted as written, so that a pickup is bar 0. */
function BarsOf({ sheet, lesson }: BarsOfProps) {
  const { session } = useAtWork();
  const least = sheet.bars[0]?.written.number ?? 1;
  const most = sheet.bars.at(-1)?.written.number ?? least;
  const [range, setRange] = useState({ first: least, last: Math.min(least + 3, most) });
  const first = Math.min(range.first, most);
  const last = Math.min(range.last, most);
  const save = async (kind: 'svg' | 'png') => {
    session.dismissNotice();
    try {
      const picture = await barsPicture(sheet, first - least, last - least, fullSettings(lesson.handout));
      const name = `${fileStem(lesson.title)}-bars-${first}-${last}`;
      if (kind === 'svg') saveFile(`${name}.svg`, svgFile(picture), 'image/svg+xml');
      else saveFile(`${name}.png`, await pngFile(picture), 'image/png');
    } catch {
      session.editor.setState({
        notice: 'The picture could not be made. Check that the page is still reachable and try again.',
      });
    }
  };
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
