import type { Against } from '#shared-calc/derive/against-move.ts';

/** What stands against a move or an issue, a line each. */
export function sayAgainst(against: readonly Against[]): readonly string[] {
  return against.map(({ what, why }) => `Against it, ${what}: ${why}`);
}
