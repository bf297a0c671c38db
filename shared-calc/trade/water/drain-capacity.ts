import { belowZero, sayMm, sayShare } from '#shared-calc/trade/refuse-figure.ts';
import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Litres of water that the drainage can collect below the air gap; 0 if the gap is as deep as the layer. */
export const drainCapacity = tradeFunction({
  name: 'drain_capacity',
  title: 'Room for standing water',
  group: 'water',
  args: [
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    { name: 'drainage', takes: 'mm', low: 20, high: 60, says: 'depth of the drainage layer' },
    { name: 'gap', takes: 'mm', low: 0, high: 50, says: 'air gap under the mesh' },
    { name: 'void', takes: 'share', low: 0.2, high: 0.6, says: 'open space between the grains' },
  ],
  gives: 'L',
  sum: 'area x (drainage - gap) x void',
  help: 'What the drainage takes before water stands within the air gap under the mesh.',
  examples: [
    { rule: 'drain_capacity(0.4005 m2, 40 mm, 10 mm, 40 %)', gives: '4.806 L' },
    { rule: 'drain_capacity(0.198 m2, 30 mm, 10 mm, 0.4)', gives: '1.584 L' },
  ],
  source: 'geometry; void 0.40 of even grains is common practice, no source',
  cautions: ['drainage'],
  compute: ({ area, drainage, gap, void: open }) => {
    if (open > 1) return refused(sayShare('Void', open));
    const wrong = belowZero({ Area: area, Drainage: drainage, 'Air gap': gap, Void: open });
    return wrong ?? area * Math.max(0, drainage - gap) * open;
  },
  decides: 'Builder',
  warn: ({ drainage, gap }) =>
    gap >= drainage ? `The air gap of ${sayMm(gap)} is as deep as the drainage; nothing is left for water.` : undefined,
});
