import type { RuleFault } from './fault.ts';
import { commasInBrackets, readTokens } from './read-tokens.ts';

/**
 * The first place inside brackets where a comma stands between two digits: with the decimal comma set, `max(1,5; 2)`
 * may mean 1.5, or 1 and 5.
 */
export function twoFigures(text: string): RuleFault | undefined {
  const tokens = readTokens(text);
  for (const at of commasInBrackets(tokens)) {
    const [left, , right] = tokens.slice(at - 1, at + 2);
    if (left?.is !== 'number' || left.unit || right?.is !== 'number') continue;
    const first = text.slice(left.from, left.to);
    const second = /^[\d.]+/.exec(text.slice(right.from))?.[0] ?? '';
    const found = `${first},${second}`;
    const to = left.from + found.length;
    if (text.slice(left.from, to) === found) {
      return { kind: 'two-figures', found, first, second, from: left.from, to };
    }
  }
  return undefined;
}
