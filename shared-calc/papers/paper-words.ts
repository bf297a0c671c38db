import type { Day } from '#shared-calc/calendar/day.ts';
import { sayDate, sayPlainDate, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

/** A day on a paper: `1 July 2027`, or `July 1, 2027`. */
export function paperDay(day: Day, days: SaidDays): string {
  return sayPlainDate(day, days);
}

/** A day with its weekday: `Tuesday 16 March 2027`. */
export function paperWeekday(day: Day, days: SaidDays): string {
  return sayDate(day, days);
}

export interface PaperNumbers {
  readonly decimalComma?: boolean;
}

/** A decimal text of money with thousands separators: `1615.56` as `1,615.56`. */
export function paperMoney(text: string, { decimalComma = false }: PaperNumbers): string {
  const decimals = text.split('.')[1]?.length ?? 0;
  return writeNumber(Number(text), decimals, { decimalComma });
}

/** Coins with thousands separators. */
export function paperCoins(
  coins: number,
  { coinDecimals, decimalComma }: PaperNumbers & { readonly coinDecimals: number },
): string {
  return writeNumber(coins / 10 ** coinDecimals, coinDecimals, { decimalComma: decimalComma ?? false });
}

/** A plain figure with at most this many decimals, without trailing zeros. */
export function paperFigure(value: number, decimals: number, { decimalComma = false }: PaperNumbers): string {
  return writeNumber(value, Number.isInteger(value) ? 0 : decimals, { decimalComma });
}
