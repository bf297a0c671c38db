/** A point in the section: mm from the inside of the front glass, mm up from the inside floor. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export type LayerPart = 'drainage' | 'water' | 'capping' | 'soil' | 'litter' | 'misfit';
export type LinePart = 'mesh' | 'waterline' | 'damline' | 'edge' | 'door' | 'cover';

export interface Layer {
  readonly part: LayerPart;
  readonly outline: readonly Point[];
}

export interface Stroke {
  readonly part: LinePart;
  readonly points: readonly Point[];
}

export interface Lamp {
  readonly centre: number;
  readonly width: number;
  /** Underside of the bar, mm above the floor. */
  readonly foot: number;
}

export interface LabelWanted {
  readonly word: string;
  readonly figure: string;
  /** The point its leader points at. */
  readonly at: Point;
  readonly tone: 'plain' | 'water' | 'wrong';
}

export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export interface SectionGeometry {
  readonly depth: number;
  readonly height: number;
  /** Bottom to top, in the order they are laid. */
  readonly layers: readonly Layer[];
  readonly strokes: readonly Stroke[];
  /** Floor and back pane, and any full-height glass at the front. */
  readonly glass: readonly Point[];
  /** The front pane up to the dam; none if the front is one pane. */
  readonly lip: readonly Point[];
  readonly lamps: readonly Lamp[];
  /** Height at which the lamps' light ends on its way down. */
  readonly rayFoot: number;
  readonly labels: readonly LabelWanted[];
  readonly bounds: Bounds;
  /** By how much the layers are too high, mm; 0 if they fit. */
  readonly over: number;
}

/** Room above the tank for lamps, mm. */
export const lampRoom = 62;
