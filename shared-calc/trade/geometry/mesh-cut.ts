import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { MESH_OVERLAP, mustJoin, rollLength } from './roll-length.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

export interface MeshCut {
  /** mm, with the turned-up edges; the corners are notched. */
  readonly length: number;
  readonly depth: number;
  /** Off the roll, m. */
  readonly rollLength: number;
  readonly warning?: string;
}

export interface MeshSizes {
  /** Overall inside measurements, turned-up edge and roll width, all in mm. */
  readonly length: number;
  readonly depth: number;
  readonly upturn: number;
  readonly roll: number;
}

/** The piece of barrier mesh to cut: inside size and a turned-up edge all round. */
export function meshCut({ length, depth, upturn, roll }: MeshSizes): MeshCut | { readonly refused: string } {
  const wrong =
    notAboveZero({ Length: length, Depth: depth, 'Roll width': roll }) ?? belowZero({ 'Turned-up edge': upturn });
  if (wrong) return wrong;
  const cut = { length: length + 2 * upturn, depth: depth + 2 * upturn };
  const needed = rollLength(cut.length, cut.depth, roll);
  if (needed === undefined) return refused('The roll is too narrow to join; take a wider one.');
  const warning = mustJoin(cut.length, cut.depth, roll) && `Mesh must be joined: overlap ${MESH_OVERLAP} mm.`;
  return { ...cut, rollLength: needed / 1000, ...(warning && { warning }) };
}

export const meshCutEntry = listFunction({
  name: 'MESH_CUT',
  title: 'Mesh cut',
  group: 'geometry',
  takes: 'inside length and depth, turned-up edge, roll width',
  gives: 'length x depth, and metres off the roll',
  sum: '(length + 2 x edge) x (depth + 2 x edge)',
  help: 'The piece of mesh to cut, corners notched. In rules: the sides by hand and mesh_roll_length.',
  examples: [
    { rule: '900 mm, 445 mm, edge 30 mm, roll 1200 mm', gives: '960 x 505 mm, 0.505 m off the roll' },
    { rule: '1200 mm, 600 mm, edge 30 mm, roll 1200 mm', gives: '1260 x 660 mm, 1.26 m off the roll' },
  ],
  source: 'geometry',
  cautions: ['glassEdges'],
});
