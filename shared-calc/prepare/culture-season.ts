import type { CultureKind } from '#shared-calc/records/records.ts';
import { areMet, serveClaims, type BoardTub, type Claim, type ServedClaim } from './serve-claims.ts';
import { freshTub, type TubStock } from './tub-stock.ts';

/** Claims of one kind, the tubs that stand for them, and how new ones grow. */
export interface Season {
  readonly kind: CultureKind;
  readonly claims: readonly Claim[];
  readonly standing: readonly BoardTub[];
  readonly perDay: number;
  /** Of a new tub. */
  readonly founders: number;
}

export function newTub({ kind, perDay, founders }: Season, start: number): TubStock {
  return freshTub(kind, perDay, { started: start, founders });
}

/** The claims served by the standing tubs in order of their start, then by new ones started on these days. */
export function serveWith(season: Season, starts: readonly number[]): readonly ServedClaim[] {
  return serveClaims(tubsWith(season, starts), season.claims);
}

export function isMet(season: Season, starts: readonly number[]): boolean {
  return areMet(tubsWith(season, starts), season.claims);
}

function tubsWith(season: Season, starts: readonly number[]): readonly BoardTub[] {
  return [...season.standing, ...starts.map((start, at) => ({ id: `new ${at + 1}`, stock: newTub(season, start) }))];
}
