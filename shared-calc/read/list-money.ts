import { findCurrency } from '#shared-calc/quantity/currencies.ts';

/** An amount of money of a list, taken apart. */
export interface WrittenMoney {
  /** The currency as it is written, before or behind; empty if it is not. */
  readonly mark: string;
  /** The number, with its minus if it has one. */
  readonly number: string;
}

/** A sign, with letters before it or not (`$`, `US$`), or one word (`EUR`, `kr.`, `dollars`); or nothing. */
const markForm = /^(?:\p{L}{0,3} ?\p{Sc}|\p{L}{1,12}\.?)?$/u;
const money = /^(?<before>\D*?)(?<number>\d[\d.,' ]*|[.,]\d+)(?<behind>\D*)$/;

/** The number and the currency of `$1,250.00`, `EUR 4,60`, `12,- kr`; `undefined` for a text that is no amount. */
export function takeMoneyApart(text: string): WrittenMoney | undefined {
  const { before = '', number = '', behind = '' } = money.exec(tidyMoney(text))?.groups ?? {};
  const marks = [before.replace('-', ''), behind].map((mark) => mark.trim());
  const isMoney = number !== '' && marks.every((mark) => markForm.test(mark)) && marks.includes('');
  if (!isMoney) return undefined;
  return {
    mark: marks.join('').replaceAll(/[\s.]/g, ''),
    number: `${before.includes('-') ? '-' : ''}${number.trim()}`,
  };
}

/** Hard spaces, typographic apostrophe and minus as plain ones; a dash in place of decimals goes. */
function tidyMoney(text: string): string {
  return text
    .trim()
    .replaceAll(/\s/g, ' ')
    .replaceAll('\u2019', "'")
    .replaceAll('\u2212', '-')
    .replace(/(\d)[.,][-\u2013\u2014]/, '$1');
}

/** Whether a mark is the workshop's own currency, or may be it: `$` is the sign of several. */
export function isMarkOf(mark: string, currency: string): boolean {
  if (mark === '' || mark.toLowerCase() === currency.toLowerCase()) return true;
  const sign = signOfCurrency(currency);
  if (sign === undefined) return false;
  if (nameOfCurrency(currency, mark)) return true;
  const letters = mark.replace(/\p{Sc}$/u, '');
  return mark === sign || (mark.endsWith(sign) && currency.toUpperCase().startsWith(letters.toUpperCase()));
}

/** Whether a word is the code of a currency in use (ISO 4217), and not a word of the workshop's own. */
export function isCurrencyCode(currency: string): boolean {
  return findCurrency(currency)?.code === currency.toUpperCase();
}

function signOfCurrency(currency: string): string | undefined {
  return isCurrencyCode(currency) ? shownAs(currency, 'narrowSymbol', 0) : undefined;
}

/** Whether a word is the currency's name, in the singular or plural, or its last word: `euro`, `dollars`. */
function nameOfCurrency(currency: string, word: string): boolean {
  const names = [1, 2].map((count) => shownAs(currency, 'name', count)?.toLowerCase() ?? '');
  return names.some((name) => ` ${name}`.endsWith(` ${word.toLowerCase()}`));
}

function shownAs(currency: string, currencyDisplay: 'narrowSymbol' | 'name', count: number): string | undefined {
  const style = { style: 'currency', currency, currencyDisplay, maximumFractionDigits: 0 } as const;
  const parts = new Intl.NumberFormat('en', style).formatToParts(count);
  return parts.find(({ type }) => type === 'currency')?.value;
}
