import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Litres of the clay edge along the glass. A fillet is concave: its corner less a quarter of a circle (or ellipse). */
export const beadVolume = tradeFunction({
  name: 'bead_volume',
  title: 'Clay edge',
  group: 'geometry',
  args: [
    { name: 'perimeter', takes: 'm', low: 0.8, high: 6, says: 'inside edge of the floor' },
    { name: 'width', takes: 'mm', low: 0, high: 40, says: 'width on the floor' },
    { name: 'height', takes: 'mm', low: 0, high: 40, says: 'height on the glass' },
    { name: 'profile', takes: ['triangle', 'fillet'], otherwise: 'triangle', says: 'straight or hollow' },
  ],
  gives: 'L',
  sum: 'triangle: perimeter x width x height / 2; fillet: perimeter x width x height x (1 - pi / 4)',
  help: 'Litres of capping that run up the glass all round and close the edge of the mesh.',
  examples: [
    { rule: 'bead_volume(2.69 m, 20 mm, 20 mm)', gives: '0.538 L' },
    { rule: 'bead_volume(2.69 m, 20 mm, 20 mm, "fillet")', gives: '0.2309 L' },
  ],
  source: 'geometry',
  compute: ({ perimeter, width, height, profile }) =>
    belowZero({ Perimeter: perimeter, Width: width, Height: height }) ??
    (perimeter * width * height * (profile === 'fillet' ? 1 - Math.PI / 4 : 1 / 2)) / 1000,
});
