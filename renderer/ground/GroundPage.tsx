import { makeEdit, putRow } from '../../core/edits/index.ts';
import { useBook, useOpenYard, useSessionState } from '../app/context.ts';
import type { UnitSystem, YardDetails } from '../../core/yard.ts';
import { readPickedFile } from '../shared/readPickedFile.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { download } from '../shared/download.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { YardHead } from '../shared/YardHead.tsx';
import { pointSigmaFigure, readPointSigma } from '../shared/readSigma.ts';
import { parseName } from '../shared/parseName.ts';
import { PictureLines } from './PictureLines.tsx';
import { PlacePart } from './PlacePart.tsx';
import { SlopeGroundPart } from './SlopeGroundPart.tsx';
import { ComparePart } from './ComparePart.tsx';
import { parseIsoDate } from './parseIsoDate.ts';

const UNIT_CHOICES = [
  ['us', 'feet, gallons, fluid ounces'],
  ['metric', 'metres, litres'],
] as const;

/** The ground itself: which yard, its date and units, what it is traced over, and bringing things in and out. */
export function GroundPage() {
  const { session } = useBook();
  const { file, history } = useSessionState();
  const { yard } = useOpenYard();
  const { details } = yard;
  const units = details.unitSystem;

  function setDetails(label: string, part: Partial<YardDetails>): void {
    session.edit(makeEdit(label, putRow(yard, 'details', { ...details, ...part })));
  }

  async function bringIn(input: HTMLInputElement): Promise<void> {
    const picked = await readPickedFile(input);
    if (picked === null || file === null) return;
    const draft = await session.ask(`Reading ${picked.fileName}`, () =>
      session.host.draftImport({ ...picked, yard: file.handle }),
    );
    if (draft === null) return;
    session.edit(draft.edit, draft.images);
    session.tell(...draft.notes.map((text) => ({ kind: 'note', text }) as const));
  }

  async function writeGeoJson(): Promise<void> {
    if (file === null) return;
    await session.settled();
    const made = await session.ask('Writing outlines', () => session.host.makeGeoJson({ yard: file.handle }));
    if (made === null) return;
    download(made);
    if (made.notes.length > 0) session.tell(...made.notes.map((text) => ({ kind: 'note', text }) as const));
  }

  return (
    <>
      <YardHead title="Ground" />
      <PagePart title="This yard" aside={file?.readOnly ? 'open for reading only' : file?.fileName}>
        <FigureField
          label="name or address"
          size="wide"
          shown={details.name}
          units={units}
          parse={parseName}
          onCommit={(name) => setDetails('rename yard', { name })}
        />
        <FigureField
          label="the ground as it was on"
          size="day"
          shown={details.groundDate}
          units={units}
          parse={parseIsoDate}
          onCommit={(groundDate) => setDetails('date the ground', { groundDate })}
        />
        <ChoiceField<UnitSystem>
          label="measured in"
          value={units}
          choices={UNIT_CHOICES}
          onChoose={(unitSystem) => setDetails('change units', { unitSystem })}
        />
        <FigureField
          label="a corner is within ±"
          shown={details.cornerSigmaM === null ? '' : pointSigmaFigure(details.cornerSigmaM, units)}
          unit={units === 'us' ? 'ft' : 'm'}
          note={
            details.cornerSigmaM === null
              ? 'not stated: no ± of what is placed by hand'
              : 'unless its outline or picture says'
          }
          units={units}
          parse={(typed) => readPointSigma(typed, units)}
          onCommit={(cornerSigmaM) => setDetails('state corner accuracy', { cornerSigmaM })}
        />
      </PagePart>
      <PagePart title="Traced over">
        {yard.pictures.map((picture) => (
          <PictureLines key={picture.id} picture={picture} />
        ))}
        {yard.pictures.length === 0 && (
          <p className="said">No picture: lengths are typed or drawn to scale.</p>
        )}
      </PagePart>
      <PlacePart />
      <SlopeGroundPart />
      <PagePart title="In and out">
        <div className="do-row">
          <label className="do do-file">
            bring in a picture, outlines or heights
            <input
              type="file"
              className="unseen"
              accept=".tif,.tiff,.png,.jpg,.jpeg,.webp,.geojson,.json"
              onChange={(event) => void bringIn(event.target)}
            />
          </label>
          <button
            type="button"
            className="do"
            disabled={details.frame.kind === 'loose'}
            onClick={() => void writeGeoJson()}
          >
            write outlines as GeoJSON
          </button>
        </div>
        <p className="said">
          The yard file itself is a GeoPackage: any GIS program opens it as it is.
          {details.frame.kind === 'loose' &&
            ' This yard has no place on earth yet, so it has no longitudes to write.'}
        </p>
      </PagePart>
      <ComparePart />
      <PagePart title="Taking back" aside="kept in the file, without limit">
        <div className="do-row">
          <button
            type="button"
            className="do"
            disabled={history.undoLabel === null}
            onClick={() => session.undo()}
          >
            undo{history.undoLabel && `: ${history.undoLabel}`}
          </button>
          <button
            type="button"
            className="do"
            disabled={history.redoLabel === null}
            onClick={() => session.redo()}
          >
            redo{history.redoLabel && `: ${history.redoLabel}`}
          </button>
        </div>
      </PagePart>
    </>
  );
}
