import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { floorOf, tankShapes, type TankFloor, type TankSizes } from './tank-floor.ts';
import { refused, type Answer } from '#shared-calc/trade/trade-function.ts';

const shape = { name: 'shape', takes: tankShapes, says: 'shape of the floor' } as const;
const length = {
  name: 'length',
  takes: 'mm',
  low: 100,
  high: 3000,
  says: 'inside length; side of a hexagon or corner tank, diameter of a cylinder',
} as const;
const depth = { name: 'depth', takes: 'mm', low: 100, high: 3000, says: 'inside depth at the side' } as const;
const bow = { name: 'bow', takes: 'mm', low: 0, high: 400, says: 'how far a bow front stands out' } as const;
const sideReturn = {
  name: 'side_return',
  takes: 'mm',
  low: 0,
  high: 3000,
  says: 'short side of a corner tank, from the wall to the cut edge',
} as const;

/** The arguments for a tank's measurements, in their fixed order. */
export const floorArguments = [shape, length, depth, bow, sideReturn] as const;
export const lengthArguments = [shape, length] as const;
export const depthArguments = [shape, length, depth, bow] as const;
export const wallArguments = [shape, length, depth, sideReturn] as const;

const lengthNames = {
  rectangle: 'Length',
  bow: 'Length',
  corner: 'Side',
  hexagon: 'Side',
  cylinder: 'Diameter',
} as const;

/** Refuses an impossible tank; otherwise works out the sum over its floor. Measurements its shape lacks are ignored. */
export function onFloor(sizes: TankSizes, sum: (floor: TankFloor) => Answer): Answer {
  return notALength(sizes) ?? wrongFront(sizes) ?? sum(floorOf(sizes));
}

/** Refuses a length of zero, by the name of the length in this shape. */
export function notALength(sizes: Pick<TankSizes, 'shape' | 'length'>): { readonly refused: string } | undefined {
  return notAboveZero({ [lengthNames[sizes.shape]]: sizes.length });
}

function wrongFront(sizes: TankSizes): { readonly refused: string } | undefined {
  switch (sizes.shape) {
    case 'rectangle':
      return notAboveZero({ Depth: sizes.depth });
    case 'bow':
      return notAboveZero({ Depth: sizes.depth }) ?? wrongBow(sizes);
    case 'corner':
      return wrongReturn(sizes);
    case 'hexagon':
    case 'cylinder':
      return undefined;
  }
}

function wrongBow(sizes: TankSizes): { readonly refused: string } | undefined {
  if (sizes.bow > sizes.length / 2) return refused('The bow is deeper than a half circle; check the sagitta.');
  return belowZero({ Bow: sizes.bow });
}

function wrongReturn(sizes: TankSizes): { readonly refused: string } | undefined {
  if (sizes.side_return >= sizes.length) return refused('The side return must be shorter than the side.');
  return belowZero({ 'Side return': sizes.side_return });
}
