import { parseAngle, parseLength, formatNumber, lengthFigure, USUAL_UNITS } from '../../core/units/index.ts';
import type { Outline, Traced, TracedCorner, UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import { arcFigures, edgeLengthM, type Handle, withEdge } from '../drawing/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { EdgeRow } from './EdgeRow.tsx';
import { readStripWidth } from './readStripWidth.ts';

type Cornered = Extract<Traced, { kind: 'corners' }>;
type Oval = Exclude<Traced, Cornered>;
type Redraw = (traced: Traced, label: string) => void;

/** The edge in hand, which is the one from the chosen corner on, or the sizes of a circle or an ellipse. */
export function EdgePart({ outline }: { readonly outline: Outline }) {
  const { view } = useBook();
  const { drawing } = useViewState();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  if (drawing.kind !== 'reshape' || drawing.outlineId !== outline.id) return null;
  const ring = drawing.chosen?.ring ?? 0;
  const traced = ring === 0 ? outline.outer : outline.holes[ring - 1];
  if (traced === undefined) return null;
  const redraw: Redraw = (changed, label) =>
    view.input({ kind: 'redraw', ring, traced: changed, label: `${label} ${outline.name}` });
  if (traced.kind !== 'corners') return <OvalSizes traced={traced} units={units} redraw={redraw} />;
  const { chosen } = drawing;
  const corner = chosen === null ? undefined : traced.corners[chosen.at];
  if (chosen === null || corner === undefined) return null;
  return <Edge traced={traced} handle={chosen} corner={corner} units={units} redraw={redraw} />;
}

interface EdgeProps {
  readonly traced: Cornered;
  readonly handle: Handle;
  readonly corner: TracedCorner;
  readonly units: UnitSystem;
  readonly redraw: Redraw;
}

function Edge({ traced, handle: { at }, corner, units, redraw }: EdgeProps) {
  const { view } = useBook();
  const unit = lengthFigure(0, units).unit;
  const next = ((at + 1) % traced.corners.length) + 1;
  const arc = arcFigures(traced, at);
  const bend = (part: Partial<NonNullable<typeof arc>>): void => {
    if (arc !== null) view.input({ kind: 'run', edge: { kind: 'radius', ...arc, ...part } });
  };
  const setWidth = (keepOffM: number | null): void => {
    const { keepOffM: _, ...rest } = corner;
    const changed = keepOffM === null ? rest : { ...rest, keepOffM };
    redraw({ ...traced, corners: traced.corners.with(at, changed) }, 'keep off an edge of');
  };
  return (
    <PagePart title={`Edge ${at + 1}`} aside={`from corner ${at + 1} to corner ${next}`}>
      <EdgeRow
        name={`Edge ${at + 1}`}
        run={corner.run?.kind ?? 'straight'}
        onRun={(edge) => view.input({ kind: 'run', edge })}
      />
      <div className="line">
        <span>along it</span>
        <span>
          {lengthFigure(edgeLengthM(traced, at), units).text} <span className="unit">{unit}</span>
        </span>
      </div>
      {arc !== null && (
        <>
          <FigureField
            label="radius"
            shown={lengthFigure(arc.radiusM, units).text}
            unit={unit}
            units={units}
            parse={(typed) => {
              const radius = parseLength(typed, 'radius', USUAL_UNITS[units].length);
              if (!radius.ok) return radius;
              const fits = withEdge(traced, at, { kind: 'radius', ...arc, radiusM: radius.value });
              return fits.ok ? radius : fits;
            }}
            onCommit={(radiusM) => bend({ radiusM })}
          />
          <ChoiceField
            label="bulges to the"
            value={arc.side}
            choices={[
              ['left', 'left'],
              ['right', 'right'],
            ]}
            onChoose={(side) => bend({ side })}
          />
          <ChoiceField
            label="part of its circle"
            value={arc.long ? 'long' : 'short'}
            choices={[
              ['short', 'less than half'],
              ['long', 'more than half'],
            ]}
            onChoose={(part) => bend({ long: part === 'long' })}
          />
        </>
      )}
      <FigureField
        label="keep off along it"
        shown={corner.keepOffM === undefined ? '' : lengthFigure(corner.keepOffM, units).text}
        unit={unit}
        note={corner.keepOffM === undefined ? 'nothing kept off' : 'left untreated'}
        units={units}
        parse={(typed) => readStripWidth(typed, units)}
        onCommit={setWidth}
      />
    </PagePart>
  );
}

interface OvalProps {
  readonly traced: Oval;
  readonly units: UnitSystem;
  readonly redraw: Redraw;
}

function OvalSizes({ traced, units, redraw }: OvalProps) {
  const unit = lengthFigure(0, units).unit;
  const size = (label: string, sizeM: number, changed: (sizeM: number) => Traced) => (
    <FigureField
      label={label}
      shown={lengthFigure(sizeM, units).text}
      unit={unit}
      units={units}
      parse={(typed) => parseLength(typed, label, USUAL_UNITS[units].length)}
      onCommit={(typedM) => redraw(changed(typedM), 'size')}
    />
  );
  if (traced.kind === 'circle') {
    return (
      <PagePart title="Circle">
        {size('radius', traced.radiusM, (radiusM) => ({ ...traced, radiusM }))}
      </PagePart>
    );
  }
  return (
    <PagePart title="Ellipse">
      {size('whole length', 2 * traced.halfLengthM, (m) => ({ ...traced, halfLengthM: m / 2 }))}
      {size('whole width', 2 * traced.halfWidthM, (m) => ({ ...traced, halfWidthM: m / 2 }))}
      <FigureField
        label="bearing of its length"
        shown={formatNumber(traced.bearingDeg, 1)}
        unit="°"
        units={units}
        parse={(typed) => parseAngle(typed, 'bearing')}
        onCommit={(deg) => redraw({ ...traced, bearingDeg: ((deg % 360) + 360) % 360 }, 'turn')}
      />
    </PagePart>
  );
}
