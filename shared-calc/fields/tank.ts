import { choice, code, figure, orEmpty, reference, words, yesNo } from './field.ts';

export const tankShapes = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'] as const;

const measure = (heading: string, list: string, low: number, high: number) =>
  orEmpty(figure(heading, 'mm', { list, low, high }));

/** A measurement is left out while nobody has measured it. */
export const tank = {
  id: code('Code', { list: 'code' }),
  label: words('Name', { list: 'label' }),
  shape: choice('Shape', tankShapes, { list: 'shape' }),
  insideLengthMm: measure('Inside length', 'length', 50, 6_000),
  insideDepthMm: measure('Inside depth', 'depth', 50, 6_000),
  insideHeightMm: measure('Inside height', 'height', 50, 6_000),
  frontBowMm: measure('Front bow', 'bow', 0, 2_000),
  sideReturnMm: measure('Side return', 'return', 0, 6_000),
  damHeightMm: measure('Dam height', 'dam', 0, 2_000),
  frontVentMm: measure('Front vent', 'front vent', 0, 500),
  glassMm: measure('Glass', 'glass', 1, 50),
  baseGlassMm: measure('Base glass', 'base', 1, 50),
  supplier: orEmpty(reference('Supplier', ['supplier'], { list: 'supplier' })),
  clientsOwn: yesNo("Client's own", { list: 'own' }),
  note: words('Note', { list: 'note' }),
};
