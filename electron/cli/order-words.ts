import { readCoins } from '#shared-calc/buy/coins.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { readDay } from './read-day.ts';
import type { Arguments } from './read-arguments.ts';

interface AskedPack {
  readonly pack: string;
  readonly count: number;
}

/** `M01-10x1,M04-6x2`: packs by their code, and how many of each. */
export function readPacks(text: string): Result<readonly AskedPack[], string> {
  const packs: AskedPack[] = [];
  for (const part of text.split(',')) {
    const [, pack, count] = /^\s*(.+)x(\d{1,5})\s*$/.exec(part) ?? [];
    if (pack === undefined || count === undefined) return failed(`${part}: write packs as M01-10x1.`);
    packs.push({ pack, count: Number(count) });
  }
  return ok(packs);
}

interface AskedLine {
  readonly n: number;
  readonly count: number;
  readonly eachCoins?: number;
}

interface Receipt {
  readonly lines: readonly AskedLine[] | undefined;
  readonly until: string | undefined;
  readonly bestBefore: string | undefined;
}

/** What `order in` says of a delivery. */
export function readReceipt(given: Arguments, coinDecimals: number): Result<Receipt, string> {
  const [until, best] = [readDay(given, 'until'), readDay(given, 'best')];
  if (!until.ok) return until;
  if (!best.ok) return best;
  const text = given.text('lines');
  const lines = text === undefined ? ok(undefined) : readLines(text, coinDecimals);
  return lines.ok ? ok({ lines: lines.value, until: until.value, bestBefore: best.value }) : lines;
}

/** `1=1@32.00,3=6`: of line 1 one pack at 32.00, of line 3 six at the price asked. */
function readLines(text: string, coinDecimals: number): Result<readonly AskedLine[], string> {
  const lines: AskedLine[] = [];
  for (const part of text.split(',')) {
    const [, n, count, price] = /^\s*(\d{1,4})=(\d+(?:\.\d+)?)(?:@(.+))?$/.exec(part) ?? [];
    if (n === undefined || count === undefined) return failed(`${part}: write lines as 1=1@32.00.`);
    const eachCoins = price === undefined ? undefined : readCoins(price, coinDecimals);
    if (price !== undefined && (eachCoins === undefined || eachCoins < 0))
      return failed(`${part}: ${price} is no sum of money.`);
    lines.push({ n: Number(n), count: Number(count), ...(eachCoins !== undefined && { eachCoins }) });
  }
  return ok(lines);
}
