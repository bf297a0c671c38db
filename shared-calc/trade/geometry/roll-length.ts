/** Overlap of mesh strips that must be joined, mm. */
export const MESH_OVERLAP = 50;

/** True if both sides of the cut are wider than the roll, so that strips must be joined. All in mm. */
export function mustJoin(length: number, depth: number, roll: number): boolean {
  return Math.min(length, depth) > roll + 1e-9;
}

/**
 * Mesh off the roll for one cut, mm: the shorter side if the longer fits the roll's width, otherwise the longer; if
 * strips must be joined, the direction that uses less. `undefined` if the roll is too narrow even to overlap.
 */
export function rollLength(length: number, depth: number, roll: number): number | undefined {
  if (mustJoin(length, depth, roll)) return joinedLength(length, depth, roll);
  return Math.max(length, depth) > roll + 1e-9 ? Math.max(length, depth) : Math.min(length, depth);
}

function joinedLength(length: number, depth: number, roll: number): number | undefined {
  if (roll <= MESH_OVERLAP) return undefined;
  const strips = (across: number) => Math.ceil((across - MESH_OVERLAP) / (roll - MESH_OVERLAP) - 1e-9);
  return Math.min(strips(depth) * length, strips(length) * depth);
}
