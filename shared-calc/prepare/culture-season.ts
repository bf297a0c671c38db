import type { CultureKind } from '#shared-calc/records/records.ts';
import { isShort, serveClaims, type BoardTub, type Claim, type ServedClaim } from './serve-claims.ts';
import { dayOfNumber, tubStock, type TubStock } from './tub-stock.ts';

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
  return tubStock(kind, perDay, { startedOn: dayOfNumber(start), founders });
}

/** The claims served by the standing tubs in order of their start, then by new ones started on these days. */
export function serveWith(season: Season, starts: readonly number[]): readonly ServedClaim[] {
  const added = starts.map((start, at) => ({ id: `new ${at + 1}`, stock: newTub(season, start) }));
  return serveClaims([...season.standing, ...added], season.claims);
}

export function isMet(season: Season, starts: readonly number[]): boolean {
  return !serveWith(season, starts).some(isShort);
}
