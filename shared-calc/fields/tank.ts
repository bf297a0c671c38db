import { choice, code, figure, orEmpty, reference, words, yesNo } from './field.ts';
import { typedFields } from './typed.ts';

export const tankShapes = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'] as const;

const measure = (heading: string, called: string, list: string, bounds: { readonly low: number; high: number }) =>
  orEmpty(figure(heading, 'mm', { called, list, ...bounds }));

/** A measurement is left out until somebody has measured it. */
export const tank = {
  id: code('Code', { list: 'code' }),
  label: words('Name', { list: 'label' }),
  shape: choice('Shape', tankShapes, { list: 'shape' }),
  insideLengthMm: measure('Length', 'Inside length', 'length', { low: 50, high: 6_000 }),
  insideDepthMm: measure('Depth', 'Inside depth', 'depth', { low: 50, high: 6_000 }),
  insideHeightMm: measure('Height', 'Inside height', 'height', { low: 50, high: 6_000 }),
  frontBowMm: measure('Bow', 'Front bow', 'bow', { low: 0, high: 2_000 }),
  sideReturnMm: measure('Return', 'Side return', 'return', { low: 0, high: 6_000 }),
  damHeightMm: measure('Dam', 'Dam height', 'dam', { low: 0, high: 2_000 }),
  frontVentMm: measure('Vent', 'Front vent', 'front vent', { low: 0, high: 500 }),
  glassMm: measure('Glass', 'Glass', 'glass', { low: 1, high: 50 }),
  baseGlassMm: measure('Base', 'Base glass', 'base', { low: 1, high: 50 }),
  supplier: orEmpty(reference('Supplier', ['supplier'], { list: 'supplier' })),
  clientsOwn: yesNo("Client's own", { list: 'own' }),
  note: words('Note', { list: 'note' }),
  ...typedFields,
};
