/** Whole exponents over length, mass, time, temperature, money and light, in that order. */
export type Dimension = readonly [number, number, number, number, number, number];

const baseNames = ['length', 'mass', 'time', 'temperature', 'money', 'light'] as const;

export type BaseQuantity = (typeof baseNames)[number];

export const PLAIN: Dimension = [0, 0, 0, 0, 0, 0];

/** A dimension from named exponents: `dimension({ length: 3, time: -1 })` is a flow. */
export function dimension(exponents: Partial<Record<BaseQuantity, number>>): Dimension {
  return mapExponents((name) => exponents[name] ?? 0);
}

export function timesDimension(left: Dimension, right: Dimension): Dimension {
  return combine(left, right, (a, b) => a + b);
}

export function perDimension(left: Dimension, right: Dimension): Dimension {
  return combine(left, right, (a, b) => a - b);
}

/** A dimension raised to a power; `undefined` if an exponent would not be whole. */
export function powerOfDimension(of: Dimension, power: number): Dimension | undefined {
  const raised = combine(of, of, (a) => a * power + 0);
  return raised.every((exponent) => Number.isInteger(exponent)) ? raised : undefined;
}

export function sameDimension(left: Dimension, right: Dimension): boolean {
  return left.every((exponent, at) => exponent === right[at]);
}

export function isPlain(of: Dimension): boolean {
  return sameDimension(of, PLAIN);
}

/** A dimension in words: "length3 / time". */
export function sayDimension(of: Dimension): string {
  const part = (sign: 1 | -1) =>
    baseNames
      .flatMap((name, at) => {
        const exponent = (of[at] ?? 0) * sign;
        return exponent > 0 ? [exponent === 1 ? name : `${name}^${exponent}`] : [];
      })
      .join(' x ');
  const over = part(1) || 'a count';
  const under = part(-1);
  return under ? `${over} / ${under}` : over;
}

function combine(left: Dimension, right: Dimension, join: (a: number, b: number) => number): Dimension {
  return [
    join(left[0], right[0]),
    join(left[1], right[1]),
    join(left[2], right[2]),
    join(left[3], right[3]),
    join(left[4], right[4]),
    join(left[5], right[5]),
  ];
}

function mapExponents(of: (name: BaseQuantity) => number): Dimension {
  return [of('length'), of('mass'), of('time'), of('temperature'), of('money'), of('light')];
}
