/** Across, then up. */
export type CurvePoint = readonly [across: number, up: number];

export type CurveInk = 'ink' | 'muted' | 'water' | 'amber' | 'red';

/** A line of a picture; what breaks off and goes on elsewhere is told in pieces. */
export interface CurveLine {
  readonly pieces: readonly (readonly CurvePoint[])[];
  readonly ink: CurveInk;
  /** What would be, not what is. */
  readonly dashed?: boolean;
  readonly thin?: boolean;
  readonly filled?: boolean;
}

/** Words that stand where something runs or happens. */
export interface CurveWords {
  readonly at: CurvePoint;
  readonly words: string;
  readonly ink: CurveInk;
  /** How the words lie to the point; `middle` above it. */
  readonly lie: 'left' | 'right' | 'middle';
  /** Above or below the point, in px. */
  readonly away?: number;
  readonly strong?: boolean;
  readonly dot?: boolean;
}

/** A fall from one point straight down to another. */
export interface CurveDrop {
  readonly across: number;
  readonly from: number;
  readonly to: number;
}

/** A part of the way across, told at the top. */
export interface CurvePhase {
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly strong?: boolean;
}

export interface CurveAxis {
  readonly unit: string;
  readonly most: number;
  /** Where something happens; round figures where left out. */
  readonly ticks?: readonly number[];
  readonly least?: number;
}

export interface FigureTable {
  readonly headings: readonly string[];
  /** Figures as they are read. */
  readonly rows: readonly (readonly string[])[];
}

/** A picture, what it shows and its figures. */
export interface CurveSpec {
  /** What is seen. */
  readonly title: string;
  /** On what grounds. */
  readonly under: string;
  /** The same for those who do not see it. */
  readonly label: string;
  readonly across: CurveAxis;
  readonly up: CurveAxis;
  readonly lines: readonly CurveLine[];
  readonly words?: readonly CurveWords[];
  readonly drops?: readonly CurveDrop[];
  readonly phases?: readonly CurvePhase[];
  readonly table: FigureTable;
}
