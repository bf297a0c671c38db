/** x, then y. */
export type CurvePoint = readonly [across: number, up: number];

export type CurveInk = 'ink' | 'muted' | 'water' | 'amber' | 'red';

/** A line of a chart; a line with gaps is given in pieces. */
export interface CurveLine {
  readonly pieces: readonly (readonly CurvePoint[])[];
  readonly ink: CurveInk;
  /** Possible, not actual. */
  readonly dashed?: boolean;
  readonly thin?: boolean;
  readonly filled?: boolean;
}

/** A text at a point of the chart. */
export interface CurveWords {
  readonly at: CurvePoint;
  readonly words: string;
  readonly ink: CurveInk;
  /** Side of the point the words are on; `middle` is above it. */
  readonly lie: 'left' | 'right' | 'middle';
  /** Distance above or below the point, px. */
  readonly away?: number;
  readonly strong?: boolean;
  readonly dot?: boolean;
}

/** A vertical fall from one point to another. */
export interface CurveDrop {
  readonly across: number;
  readonly from: number;
  readonly to: number;
}

/** A part of the x axis, named at the top. */
export interface CurvePhase {
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly strong?: boolean;
}

export interface CurveAxis {
  readonly unit: string;
  readonly most: number;
  /** Ticks where something happens; round figures by default. */
  readonly ticks?: readonly number[];
  readonly least?: number;
}

export interface FigureTable {
  readonly headings: readonly string[];
  /** Figures as text. */
  readonly rows: readonly (readonly string[])[];
}

/** A chart, what it shows, and its figures. */
export interface CurveSpec {
  /** What the chart shows. */
  readonly title: string;
  /** What it is based on. */
  readonly under: string;
  /** The same for screen readers. */
  readonly label: string;
  readonly across: CurveAxis;
  readonly up: CurveAxis;
  readonly lines: readonly CurveLine[];
  readonly words?: readonly CurveWords[];
  readonly drops?: readonly CurveDrop[];
  readonly phases?: readonly CurvePhase[];
  readonly table: FigureTable;
}
