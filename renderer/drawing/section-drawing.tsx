import { useId } from 'preact/hooks';
import type { SectionFigures } from './section-figures.ts';
import { litterLeaves, type Leaf } from './litter-leaves.ts';
import { grainOf, paperGrain, type GrainMarks, type GrainName } from './paper-grain.ts';
import { placeLabels } from './place-labels.ts';
import { sectionGeometry } from './section-geometry.ts';
import type { Lamp, Layer, LinePart, Point, SectionGeometry } from './section-shapes.ts';
import css from './section-drawing.module.css';

/** Distance between labels, px: 72 mm, at least 12 px so that they do not touch, at most 15 px. */
const labelApart = (scale: number) => Math.min(15, Math.max(12, 72 * scale));
/** From the floor to the middle of the lowest label, px. */
const lowestLabel = 5.5;

interface Drawing {
  readonly figures: SectionFigures;
  /** Pixels per millimetre. */
  readonly scale: number;
  /** Whose section it is, for screen readers. */
  readonly of: string;
  readonly labels?: boolean;
  /** Its grain is drawn in strokes, for a printer. */
  readonly onPaper?: boolean;
}

/** The section of a tank to scale, side on, front at the left. */
export function SectionDrawing({ figures, scale, of, labels = true, onPaper = false }: Drawing) {
  const geometry = sectionGeometry(figures);
  if (!geometry) return <p class={css['undrawn']}>no measurements yet</p>;
  const { left, right, bottom, top } = geometry.bounds;
  const size = { width: right - left, height: top - bottom };
  return (
    <svg
      class={css['section']}
      data-state={geometry.over > 0 ? 'stop' : undefined}
      viewBox={`${left} ${-top} ${size.width} ${size.height}`}
      style={{ '--mm': scale, '--w': size.width, '--h': size.height }}
      role="img"
      aria-label={`${of} ${saySection(geometry, figures.inches)}`}
    >
      <Air geometry={geometry} />
      {geometry.layers.map((layer) => (
        <LayerShape key={layer.part} layer={layer} onPaper={onPaper} />
      ))}
      <Tank geometry={geometry} />
      {labels && <Labels geometry={geometry} scale={scale} />}
    </svg>
  );
}

function Air({ geometry: { depth, height, lamps, rayFoot } }: { readonly geometry: SectionGeometry }) {
  return (
    <>
      <rect class={css['air']} x="0" y={-height} width={depth} height={height} />
      <svg x="0" y={-height} width={depth} height={height} viewBox={`0 ${-height} ${depth} ${height}`}>
        {lamps.length > 0 && (
          <path class={css['ray']} d={lamps.map((lamp) => rayPath(lamp, height - 4, rayFoot)).join('')} />
        )}
      </svg>
    </>
  );
}

function rayPath({ centre, width }: Lamp, top: number, foot: number): string {
  const half = width / 2;
  return outlinePath([
    { x: centre - half, y: top },
    { x: centre + half, y: top },
    { x: centre + half + 84, y: foot },
    { x: centre - half - 84, y: foot },
  ]);
}

interface LayerParts {
  readonly layer: Layer;
  readonly onPaper: boolean;
}

function LayerShape({ layer, onPaper }: LayerParts) {
  const d = outlinePath(layer.outline);
  const grain = onPaper ? grainOf[layer.part] : undefined;
  if (grain !== undefined) return <Grained layer={layer} grain={grain} d={d} />;
  switch (layer.part) {
    case 'drainage':
      return <Filled name="drainage" pattern="pellets" d={d} />;
    case 'water':
      return <Water d={d} onPaper={onPaper} />;
    case 'capping':
      return <Filled name="capping" pattern="grains" d={d} />;
    case 'soil':
      return <Filled name="soil" pattern="crumbs" d={d} />;
    case 'litter':
      return <Litter outline={layer.outline} />;
    case 'misfit':
      return <Filled name="misfit" pattern="misfit" d={d} />;
  }
}

interface FilledParts {
  readonly name: Layer['part'];
  readonly pattern: string;
  readonly d: string;
}

function Filled({ name, pattern, d }: FilledParts) {
  return (
    <>
      <path class={css[name]} data-part={name} d={d} />
      <path fill={`url(#${pattern})`} d={d} />
    </>
  );
}

const markLooks: Readonly<Record<GrainMarks['look'], string | undefined>> = {
  pellet: css['pelletMark'],
  pelletInside: css['pelletInsideMark'],
  grain: css['grainMark'],
  fleck: css['fleckMark'],
  crumb: css['crumbMark'],
  hatch: css['hatch'],
};

interface GrainedParts {
  readonly layer: Layer;
  readonly grain: GrainName;
  readonly d: string;
}

function Grained({ layer: { part, outline }, grain, d }: GrainedParts) {
  const clip = useId();
  return (
    <>
      <path class={css[part]} data-part={part} d={d} />
      <clipPath id={clip}>
        <path d={d} />
      </clipPath>
      <g clip-path={`url(#${clip})`}>
        {paperGrain(outline, grain).map(({ look, path }) => (
          <path key={look} class={`${css['marks']} ${markLooks[look]}`} d={path} />
        ))}
      </g>
    </>
  );
}

interface WaterParts {
  readonly d: string;
  readonly onPaper: boolean;
}

/** Pellets stand in the water; on paper it has one tone. */
function Water({ d, onPaper }: WaterParts) {
  return (
    <>
      <path class={css['water']} data-part="water" d={d} />
      {onPaper || <path class={css['wet']} fill="url(#pellets)" d={d} />}
    </>
  );
}

/** The lower half is solid; leaves make up the rest of the depth. */
function Litter({ outline }: { readonly outline: readonly Point[] }) {
  const [front, back, top] = outline;
  if (!front || !back || !top) return null;
  const litter = top.y - back.y;
  const solid = litter / 2;
  const base = [front, back, { x: back.x, y: back.y + solid }, { x: front.x, y: front.y + solid }];
  return (
    <>
      <path class={css['litter']} data-part="litter" d={outlinePath(base)} />
      {litterLeaves(front, back, litter).map((leaf, index) => (
        <path key={index} class={leaf.pale ? css['leaf'] : css['leaf2']} d={leafPath(leaf)} />
      ))}
    </>
  );
}

/** The position is part of the path: with hundreds of leaves, each `transform` would be a separate piece to paint. */
function leafPath({ at, half, turn }: Leaf): string {
  const angle = (turn * Math.PI) / 180;
  const spot = (along: number, over: number) => {
    const x = at.x + along * Math.cos(angle) + over * Math.sin(angle);
    const y = at.y - along * Math.sin(angle) + over * Math.cos(angle);
    return `${round(x)} ${round(-y)}`;
  };
  const [tip, stem] = [spot(half, 0), spot(-half, 0)];
  return `M${stem}Q${spot(0, half * 0.68)} ${tip}Q${spot(0, -half * 0.6)} ${stem}z`;
}

const strokes: Readonly<Record<LinePart, string | undefined>> = {
  mesh: css['mesh'],
  waterline: css['waterline'],
  damline: css['damline'],
  edge: css['edge'],
  door: css['door'],
  cover: css['cover'],
};

function Tank({ geometry: { strokes: lines, glass, lip, lamps } }: { readonly geometry: SectionGeometry }) {
  return (
    <>
      <path class={css['glass']} data-part="glass" d={outlinePath(glass)} />
      {lip.length > 0 && <path class={css['lip']} data-part="lip" d={outlinePath(lip)} />}
      {lines.map(({ part, points }, index) => (
        <path key={index} class={strokes[part]} data-part={part} d={linePath(points)} />
      ))}
      {lamps.map(({ centre, width, foot }) => (
        <g key={centre}>
          <rect
            class={css['lamp']}
            data-part="lamp"
            x={centre - width / 2}
            y={-foot - 19}
            width={width}
            height="20"
            rx="5"
          />
          <rect class={css['led']} x={centre - width / 2 + 6} y={-foot} width={Math.max(2, width - 12)} height="5" />
        </g>
      ))}
    </>
  );
}

function Labels({ geometry, scale }: { readonly geometry: SectionGeometry; readonly scale: number }) {
  const px = (length: number) => length / scale;
  const elbow = geometry.bounds.right + px(2.5);
  const words = elbow + px(11);
  const placed = placeLabels(geometry.labels, px(labelApart(scale)), px(lowestLabel));
  return (
    <>
      <g class={css['leader']}>
        {placed.map(({ at, y, word }) => (
          <path key={word} d={linePath([at, { x: elbow, y: at.y }, { x: words - px(2.5), y }])} />
        ))}
      </g>
      <g class={css['words']}>
        {placed.map(({ word, figure, tone, y }) => (
          <text key={word} data-tone={tone} x={round(words)} y={round(-y)}>
            {word} <tspan class={css['fig']}>{figure}</tspan>
          </text>
        ))}
      </g>
    </>
  );
}

function outlinePath(points: readonly Point[]): string {
  return `${linePath(points)}z`;
}

function linePath(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(-y)}`).join('');
}

function round(mm: number): number {
  return Math.round(mm * 10) / 10 + 0;
}

/** The drawing in words, for screen readers: `side on: drainage 40, water 30, ... millimetres, 3 lamps`. */
function saySection(geometry: SectionGeometry, inches = false): string {
  const layers = geometry.labels.map((label) => `${label.word} ${label.figure}`).join(', ');
  const count = geometry.lamps.length;
  const lamps = count === 0 ? 'no lamps' : count === 1 ? '1 lamp' : `${count} lamps`;
  return layers === ''
    ? `side on: no layers known yet, ${lamps}`
    : `side on: ${layers} ${inches ? 'inches' : 'millimetres'}, ${lamps}`;
}
