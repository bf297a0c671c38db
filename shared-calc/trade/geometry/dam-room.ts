import { belowZero, sayMm } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Depth of soil that the dam leaves at the front, mm. May be negative; warns under 40 mm. */
export const damRoom = tradeFunction({
  name: 'dam_room',
  title: 'Dam room',
  group: 'geometry',
  args: [
    { name: 'dam', takes: 'mm', low: 60, high: 180, says: 'inside floor to the lowest point of the front lip' },
    { name: 'drainage', takes: 'mm', low: 20, high: 60, says: 'drainage layer' },
    { name: 'mesh', takes: 'mm', low: 0, high: 5, says: 'thickness of the mesh' },
    { name: 'capping', takes: 'mm', low: 6, high: 15, says: 'clay over the mesh' },
    { name: 'freeboard', takes: 'mm', low: 8, high: 20, says: 'lip clearance: lip down to the soil' },
  ],
  gives: 'mm',
  sum: 'dam - drainage - mesh - capping - freeboard',
  help: 'What the front lip leaves for soil. Below zero the stack does not fit.',
  examples: [
    { rule: 'dam_room(150 mm, 40 mm, 0 mm, 10 mm, 10 mm)', gives: '90 mm' },
    { rule: 'dam_room(75 mm, 40 mm, 0 mm, 10 mm, 10 mm)', gives: '15 mm' },
  ],
  source: 'geometry; 40 mm is common practice, no source',
  compute: ({ dam, drainage, mesh, capping, freeboard }) =>
    belowZero({ Dam: dam, Drainage: drainage, Mesh: mesh, Capping: capping, 'Lip clearance': freeboard }) ??
    dam - drainage - mesh - capping - freeboard,
  decides: 'Builder',
  warn: (_, room) => {
    if (room < -1e-9) return `Layers are ${sayMm(-room)} higher than the dam. Thin the drainage or capping.`;
    if (room < 40 - 1e-9) return `Only ${sayMm(room)} of soil at the front; most plants need 40 or more.`;
    return undefined;
  },
});
