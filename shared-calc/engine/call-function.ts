import { unitOf } from '#shared-calc/quantity/unit.ts';
import type { Argument } from '#shared-calc/rule/signature.ts';
import type { Answer, TradeFunction } from '#shared-calc/trade/trade-function.ts';

export type Given = number | string | boolean | undefined;
export type CallInBase = (given: readonly Given[]) => Answer;

/**
 * A trade function over coherent base units: each argument is converted to the unit the function works in, and the
 * answer back; a missing argument gets its default.
 */
export function callInBase(of: TradeFunction): CallInBase {
  const carry = of.args.map(carrierOf);
  const back = typeof of.gives === 'string' ? unitOf(of.gives) : undefined;
  return (given) => {
    const answer = of.compute(carry.map((into, at) => into(given[at])));
    if (typeof answer !== 'number' || !back) return answer;
    return (answer * back.times) / back.over;
  };
}

/** The arguments in the function's own units, for its warnings. */
export function inOwnUnits(of: TradeFunction, given: readonly Given[]): readonly (number | string)[] {
  return of.args.map((argument, at) => carrierOf(argument)(given[at]));
}

function carrierOf(argument: Argument): (given: Given) => number | string {
  const { takes, otherwise = 0 } = argument;
  if (typeof takes !== 'string') return (given) => (given === undefined ? otherwise : String(given));
  if (takes === 'any' || takes === 'yes_no') return (given) => (given === undefined ? otherwise : Number(given));
  const unit = unitOf(takes);
  return (given) => (given === undefined ? otherwise : (Number(given) * unit.over) / unit.times);
}
