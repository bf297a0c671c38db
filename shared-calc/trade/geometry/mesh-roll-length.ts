import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { MESH_OVERLAP, mustJoin, rollLength } from './roll-length.ts';
import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Metres of mesh off the roll for one cut. Strips that must be joined are counted with their overlap, with a warning.
 */
export const meshRollLength = tradeFunction({
  name: 'mesh_roll_length',
  title: 'Mesh off the roll',
  group: 'geometry',
  args: [
    { name: 'length', takes: 'mm', low: 100, high: 3000, says: 'length of the cut, turned-up edges included' },
    { name: 'depth', takes: 'mm', low: 100, high: 3000, says: 'depth of the cut, turned-up edges included' },
    { name: 'roll', takes: 'mm', low: 300, high: 2000, says: 'width of the roll' },
  ],
  gives: 'm',
  sum: `the shorter side where the longer fits the roll, else the longer; else strips, ${MESH_OVERLAP} mm over each other`,
  help: 'The length that is cut off the roll for one piece of mesh.',
  examples: [
    { rule: 'mesh_roll_length(960 mm, 505 mm, 1200 mm)', gives: '0.505 m' },
    { rule: 'mesh_roll_length(1260 mm, 660 mm, 1200 mm)', gives: '1.26 m' },
  ],
  source: 'geometry; overlap is common practice, no source',
  compute: ({ length, depth, roll }) => {
    const wrong = belowZero({ Length: length, Depth: depth }) ?? notAboveZero({ 'Roll width': roll });
    if (wrong) return wrong;
    const needed = rollLength(length, depth, roll);
    return needed === undefined ? refused('The roll is too narrow to join; take a wider one.') : needed / 1000;
  },
  decides: 'Builder',
  warn: ({ length, depth, roll }) =>
    mustJoin(length, depth, roll) ? `Mesh must be joined: overlap ${MESH_OVERLAP} mm.` : undefined,
});
