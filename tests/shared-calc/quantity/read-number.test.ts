import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalText, plainNumberIn, readNumber } from '#shared-calc/quantity/read-number.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';

const TWO = 'two-readings';
const OTHER = 'other-sign';
const NONE = 'not-a-figure';

/** A text, and its value with a decimal point and with a decimal comma. */
const readings: readonly (readonly [string, number | string, number | string])[] = [
  ['12.5', 12.5, OTHER],
  ['12,5', OTHER, 12.5],
  ['1,250', TWO, 1.25],
  ['1.250', 1.25, TWO],
  ['1,250.5', 1250.5, OTHER],
  ['1.250,5', OTHER, 1250.5],
  ['1,250,000', 1_250_000, OTHER],
  ['1.250.000', OTHER, 1_250_000],
  ['1 250', 1250, 1250],
  ["1'250", 1250, 1250],
  ['1,288.88', 1288.88, OTHER],
  ['0,900', OTHER, 0.9],
  ['0.900', 0.9, OTHER],
  ['00,900', OTHER, 0.9],
  ['1,2500', OTHER, 1.25],
  ['.5', 0.5, OTHER],
  [',5', OTHER, 0.5],
  ['1 1/2', 1.5, 1.5],
  ['3/0', NONE, NONE],
  ['1e3', 1000, 1000],
  ['007', 7, 7],
  ['5.', 5, OTHER],
  ['12 345 678', 12_345_678, 12_345_678],
  ['1 250.5', 1250.5, OTHER],
  ["1'250 000", NONE, NONE],
  ['1 25', NONE, NONE],
  ['0 250', NONE, NONE],
  ['1.2.3', NONE, NONE],
  ['', NONE, NONE],
];

const signs = ['', '-', '+', '\u2212'] as const;

describe('readNumber', () => {
  test.each(readings)('%s is %s with a point and %s with a comma', (text, point, comma) => {
    const found = [false, true].map((decimalComma) => {
      const read = readNumber(text, decimalComma);
      return read.ok ? read.value : read.fault.kind;
    });
    expect(found).toEqual([point, comma]);
  });

  test.each(readings)(
    '%s is the same in a box, with each sign before it and with a unit behind it',
    (text, ...both) => {
      if (text === '') return;
      for (const [at, decimalComma] of [false, true].entries()) {
        for (const sign of signs) {
          const read = readFigure(`${sign}${text} mm`, { unit: 'm', decimalComma });
          const size = both[at];
          const wanted = typeof size === 'number' ? (sign === '' || sign === '+' ? size : -size) / 1000 : size;
          expect(read.ok ? read.value.value : read.fault.kind).toEqual(wanted);
        }
      }
    },
  );

  test.each(readings.filter(([text]) => text !== ''))('%s is the same in a field and as money', (text, ...both) => {
    const found = [false, true].map((decimalComma) => {
      const field = readMeasure(text, { name: 'Length', stored: 'mm' }, { decimalComma });
      const money = readMoney(text, { currency: 'cr', coinDecimals: 4, decimalComma });
      return [field.ok ? field.value : field.fault.kind, money.ok ? money.value / 10_000 : money.fault.kind];
    });
    expect(found).toEqual(both.map((each) => [each, each === NONE ? 'not-money' : each]));
  });

  test('two readings are both offered, each in a form that has only one', () => {
    expect([readNumber('-1,250', false), readNumber('1.250', true)]).toEqual([
      { ok: false, fault: { kind: TWO, text: '-1,250', readings: ['-1250', '-1.25'] } },
      { ok: false, fault: { kind: TWO, text: '1.250', readings: ['1250', '1,25'] } },
    ]);
  });

  test('the other decimal sign is named with the same number under its own', () => {
    expect([readNumber('0,900', false), readNumber('1,250.5', true)]).toEqual([
      { ok: false, fault: { kind: OTHER, text: '0,900', sign: 'point', like: '0.900' } },
      { ok: false, fault: { kind: OTHER, text: '1,250.5', sign: 'comma', like: '1.250,5' } },
    ]);
  });

  const typed = fc.string({ unit: fc.constantFrom(...Array.from("0123456789.,' /e-")), maxLength: 12 });

  test('no text has one reading here and another there', () => {
    const disagree = (text: string) => {
      const [point, comma] = [readNumber(text, false), readNumber(text, true)];
      return point.ok && comma.ok && point.value !== comma.value;
    };
    fc.assert(
      fc.property(typed, (text) => {
        expect(disagree(text)).toBe(false);
      }),
      { numRuns: 5000 },
    );
  });

  test('what is offered or named instead is read at once', () => {
    const unread = (text: string, decimalComma: boolean) => {
      const read = readNumber(text, decimalComma);
      if (read.ok || read.fault.kind === NONE) return [];
      const instead = read.fault.kind === TWO ? read.fault.readings : [read.fault.like];
      return instead.filter((each) => !readNumber(each, decimalComma).ok);
    };
    fc.assert(
      fc.property(typed, fc.boolean(), (text, decimalComma) => {
        expect(unread(text, decimalComma)).toEqual([]);
      }),
      { numRuns: 5000 },
    );
  });

  const figures = fc
    .tuple(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 4 }))
    .map(([coins, decimals]) => ({ decimals, number: coins / 10 ** decimals }));

  test('what a box opens with is read back as it was', () => {
    fc.assert(
      fc.property(figures, fc.boolean(), ({ number }, decimalComma) => {
        const typedAgain = decimalText(String(number), decimalComma);
        expect(readNumber(typedAgain, decimalComma)).toEqual({ ok: true, value: number });
      }),
    );
  });

  test('what is shown with marks of thousands is read back as it was, or asked for', () => {
    fc.assert(
      fc.property(figures, fc.boolean(), ({ number, decimals }, decimalComma) => {
        const read = readNumber(writeNumber(number, decimals, { decimalComma }), decimalComma);
        expect([number, TWO]).toContain(read.ok ? read.value : read.fault.kind);
      }),
    );
  });
});

describe('plainNumberIn', () => {
  test.each([
    ['1.288,5 mm', true, '1288.5 mm'],
    ['1,288.5 mm', false, '1288.5 mm'],
    ['1 250 m2', false, '1250 m2'],
    ['1 1/2 in', true, '1 1/2 in'],
    ['-12,5 \u00b0C', true, '-12.5 \u00b0C'],
  ])('%s, comma %s, is %s in the book', (text, decimalComma, plain) => {
    expect(plainNumberIn(text, decimalComma)).toBe(plain);
  });
});
