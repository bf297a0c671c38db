import type { FigureFault } from '#shared-calc/quantity/figure-reading.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';
import { isMarkOf, takeMoneyApart } from './list-money.ts';

interface Money {
  readonly currency: string;
  readonly coinDecimals: number;
  readonly decimalComma: boolean;
}

/**
 * Parses an amount as a person writes it, `1,288.88`, `9.80 cr` or `$180`, to whole coins. Never rounds: a fraction of a coin
 * is refused, and so is a negative amount.
 */
export function readMoney(
  text: string,
  { currency, coinDecimals, decimalComma }: Money,
  name = '',
): Result<number, EntryFault> {
  const tidy = text.trim();
  const apart = takeMoneyApart(tidy);
  const bare = apart && apart.mark !== '' && isMarkOf(apart.mark, currency) ? apart.number : tidy;
  const read = readFigure(bare, { unit: 'money', decimalComma });
  const whole = !read.ok && coinDecimals === 0 ? wholeReading(read.fault) : undefined;
  if (whole !== undefined) return ok(whole);
  if (!read.ok) return failed(moneyFault(read.fault, name, tidy));
  if (read.value.unit.symbol !== 'money') return failed({ kind: 'not-money', name, text: tidy });
  return coinsOf(read.value.value, coinDecimals, { name, text: tidy });
}

/** Whole coins of an amount; a negative one and a fraction of a coin are refused. */
export function coinsOf(
  value: number,
  coinDecimals: number,
  { name, text }: { readonly name: string; readonly text: string },
): Result<number, EntryFault> {
  if (value < 0) return failed({ kind: 'below-zero', name, text });
  const coins = Math.round(value * 10 ** coinDecimals);
  if (!Number.isSafeInteger(coins)) return failed({ kind: 'too-much-money', name, text });
  const isWhole = Math.abs(value * 10 ** coinDecimals - coins) < 1e-6;
  return isWhole ? ok(coins) : failed({ kind: 'part-of-coin', name, text });
}

/** Where a currency has no coins, `3,200` can only be 3200. */
function wholeReading(fault: FigureFault): number | undefined {
  const readings = fault.kind === 'two-readings' ? fault.readings.map(Number) : [];
  const whole = readings.filter((each) => Number.isSafeInteger(each) && each >= 0);
  return whole.length === 1 ? whole[0] : undefined;
}

function moneyFault(fault: FigureFault, name: string, text: string): EntryFault {
  const isNumber = fault.kind === 'two-readings' || fault.kind === 'other-sign';
  return isNumber ? { ...fault, name } : { kind: 'not-money', name, text };
}
