/** A number sequence that is the same in every run (Park and Miller), so that a failing rule can be reproduced. */
export function seeded(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

export type Random = ReturnType<typeof seeded>;

function oneOf<T>(random: Random, of: readonly [T, ...T[]]): T {
  return of[random(of.length)] ?? of[0];
}

const gap = (random: Random) => oneOf(random, ['', '', ' ', '  ']);

/** A rule of numbers, names, calls and every sign, in the syntax that our rules and the engine share. */
export function sharedRule(random: Random, depth: number): string {
  if (depth === 0 || random(4) === 0)
    return oneOf(random, ['x_a', 'x_b', '2', '0.5', '.25', '1e-3', '7 %', '12%', '"full"', '30']);
  const part = () => sharedRule(random, depth - 1);
  const space = gap(random);
  switch (random(7)) {
    case 0:
      return `(${space}${part()}${space})`;
    case 1:
      return oneOf(random, ['-', '+']) + space + part();
    case 2:
      return `${oneOf(random, ['max', 'if', 'power', 'sum'])}(${part()},${space}${part()}${space},${part()})`;
    case 3:
      return `${part()}${space}${oneOf(random, ['=', '<>', '<', '<=', '>', '>='])}${gap(random)}${part()}`;
    default:
      return `${part()}${space}${oneOf(random, ['+', '-', '*', '/', '^'])}${gap(random)}${part()}`;
  }
}

/** A rule whose parts have the right kinds; its result is a figure. */
export function figureRule(random: Random, depth: number): string {
  if (depth === 0 || random(5) === 0) {
    return oneOf(random, [
      'a',
      'b',
      'c',
      'd',
      'a',
      'b',
      '2',
      '0.5',
      '3 mm',
      '7 %',
      '1.5 gal',
      '98.6 degF',
      '0',
      '1e-3',
      '121',
      'gap',
      '1e200',
    ]);
  }
  const part = () => figureRule(random, depth - 1);
  switch (random(8)) {
    case 0:
      return `(${part()})`;
    case 1:
      return `${oneOf(random, ['-', '+'])}${part()}`;
    case 2:
      return `if(${yesNoRule(random, depth - 1)}, ${part()}, ${part()})`;
    case 3:
      return `pick(kit, "basic", ${part()}, "full", ${part()}, "show", ${part()})`;
    case 4:
      return callRule(random, part);
    default:
      return `${part()} ${oneOf(random, ['+', '-', '*', '/', '+', '-', '*', '^'])} ${part()}`;
  }
}

function callRule(random: Random, part: () => string): string {
  const name = oneOf(random, [
    'abs',
    'int',
    'sqrt',
    'exp',
    'ln',
    'min',
    'max',
    'sum',
    'round',
    'roundup',
    'rounddown',
    'floor',
    'ceiling',
    'mod',
    'power',
    'round_to',
    'clamp',
    'pi',
  ]);
  if (name === 'pi') return 'pi()';
  if (['abs', 'int', 'sqrt', 'exp', 'ln'].includes(name)) return `${name}(${part()})`;
  if (name === 'clamp' || (['min', 'max', 'sum'].includes(name) && random(2) === 0)) {
    return `${name}(${part()}, ${part()}, ${part()})`;
  }
  if (['round', 'roundup', 'rounddown'].includes(name)) return `${name}(${part()}, ${oneOf(random, ['0', '2', '-1'])})`;
  return `${name}(${part()}, ${part()})`;
}

/** A rule whose result is yes or no. */
export function yesNoRule(random: Random, depth: number): string {
  if (depth === 0) return oneOf(random, ['yes', 'no', 'kit = "full"', '"show" <> kit', 'a < b']);
  const part = () => yesNoRule(random, depth - 1);
  switch (random(5)) {
    case 0:
      return `${oneOf(random, ['and', 'or'])}(${part()}, ${part()})`;
    case 1:
      return `not(${part()})`;
    default:
      return `${figureRule(random, depth - 1)} ${oneOf(random, ['=', '<>', '<', '<=', '>', '>='])} ${figureRule(random, depth - 1)}`;
  }
}
