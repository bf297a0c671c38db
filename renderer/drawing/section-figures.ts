import type { Tank } from '#shared-calc/records/records.ts';

/**
 * The input of a section drawing, all in mm and counts, from the column's own cells.
 * `undefined` is a figure not known yet: what depends on it is left out, and the drawing says so.
 */
export interface SectionFigures {
  readonly shape: Tank['shape'];
  /** Inside, front to back, at the deepest. */
  readonly overallDepth: number | undefined;
  readonly insideHeight: number | undefined;
  readonly damHeight: number | undefined;
  readonly glass: number | undefined;
  readonly baseGlass: number | undefined;
  readonly frontBow: number | undefined;
  readonly sideReturn: number | undefined;
  readonly frontVent: number | undefined;
  readonly drainage: number | undefined;
  readonly drainGap: number | undefined;
  readonly meshThickness: number | undefined;
  readonly meshUpturn: number | undefined;
  readonly capping: number | undefined;
  readonly beadWidth: number | undefined;
  readonly beadHeight: number | undefined;
  /** Negative if the layers leave no room under the dam. */
  readonly soilFront: number | undefined;
  readonly soilRise: number | undefined;
  readonly litter: number | undefined;
  readonly coverVent: number | undefined;
  readonly lamps: number | undefined;
  /** The workshop reads depths in inches. */
  readonly inches?: boolean;
}
