import { failed, ok, type Result } from '#shared-calc/result.ts';

export type NumberFault =
  | { readonly kind: 'not-a-figure' }
  /** Each reading is given in a form that has only one. */
  | { readonly kind: 'two-readings'; readonly text: string; readonly readings: readonly string[] }
  /** Written with the other decimal sign; `like` is the same number with the workshop's own `sign`. */
  | { readonly kind: 'other-sign'; readonly text: string; readonly sign: DecimalSign; readonly like: string };

export type DecimalSign = 'point' | 'comma';

interface Forms {
  readonly plain: RegExp;
  readonly grouped: RegExp;
  /** One group of thousands and no decimals: a decimal figure where the other sign is set. */
  readonly twoWays: RegExp;
}

const forms: Readonly<Record<DecimalSign, Forms>> = { point: formsOf('.', ','), comma: formsOf(',', '.') };

function formsOf(sign: string, mark: string): Forms {
  return {
    plain: new RegExp(String.raw`^(?:\d+[${sign}]?\d*|[${sign}]\d+)(?:[eE][+-]?\d+)?$`),
    grouped: new RegExp(String.raw`^[1-9]\d{0,2}([${mark} '])\d{3}(?:\1\d{3})*(?:[${sign}]\d+)?$`),
    twoWays: new RegExp(String.raw`^[1-9]\d{0,2}[${mark}]\d{3}$`),
  };
}

const fraction = /^(?:(\d+) +)?(\d+)\/(\d+)$/;

/**
 * Parses a number as a person writes it: a fraction (`1 1/2`), digits with the workshop's decimal sign, or groups of
 * thousands with the other sign, a blank or `'` between them. `1,250` has two readings where the point is set, and
 * `0,900` has the other decimal sign; both are refused, never guessed at.
 */
export function readNumber(text: string, decimalComma: boolean): Result<number, NumberFault> {
  const [, sign = '', digits = ''] = /^([+-]?)\s*(.*)$/.exec(text) ?? [];
  const minus = sign === '-' ? '-' : '';
  const own = signOf(decimalComma);
  if (forms[own].twoWays.test(digits)) {
    const readings = [digits.replace(/[.,]/, ''), decimalText(String(Number(digits.replace(',', '.'))), decimalComma)];
    return failed({ kind: 'two-readings', text, readings: readings.map((each) => minus + each) });
  }
  const size = readDigits(digits, own);
  if (size !== undefined) return ok(minus === '' ? size : -size);
  if (readDigits(digits, signOf(!decimalComma)) === undefined) return failed({ kind: 'not-a-figure' });
  const like = minus + digits.replaceAll(/[.,]/g, (mark) => (mark === '.' ? ',' : '.'));
  return failed({ kind: 'other-sign', text, sign: own, like });
}

function signOf(decimalComma: boolean): DecimalSign {
  return decimalComma ? 'comma' : 'point';
}

/** A plain number's text with the workshop's decimal sign: `12,5`. */
export function decimalText(plain: string, decimalComma = false): string {
  return decimalComma ? plain.replace('.', ',') : plain;
}

/** The number that a figure's text begins with, in the book's notation: `1.288,5 mm` is `1288.5 mm`. */
export function plainNumberIn(text: string, decimalComma: boolean): string {
  if (/\d\s*\/\s*\d/.test(text)) return text;
  return text.replace(/[\d.,]+(?:[\s'][\d.,]+)*/, (number) =>
    number.replaceAll(decimalComma ? /[.'\s]/g : /[,'\s]/g, '').replace(',', '.'),
  );
}

function readDigits(digits: string, sign: DecimalSign): number | undefined {
  const parts = fraction.exec(digits);
  if (parts) return fractionOf(parts);
  const { plain, grouped } = forms[sign];
  if (!plain.test(digits) && !grouped.test(digits)) return undefined;
  return Number(plainNumberIn(digits, sign === 'comma'));
}

function fractionOf([, whole = '0', over, under]: RegExpExecArray): number | undefined {
  return Number(under) === 0 ? undefined : Number(whole) + Number(over) / Number(under);
}
