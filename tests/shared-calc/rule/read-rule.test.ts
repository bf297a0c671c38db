import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Unit } from '#shared-calc/quantity/unit.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';

/** A tree in one line, operations in round brackets, units in square ones. */
function shape(rule: Rule): string {
  switch (rule.part) {
    case 'number':
      return `${rule.value}${inBrackets(rule.unit)}`;
    case 'text':
      return JSON.stringify(rule.text);
    case 'yes_no':
      return String(rule.value);
    case 'name':
      return rule.name;
    case 'group':
      return `{${shape(rule.of)}}`;
    case 'prefix':
      return `(${rule.sign}${shape(rule.of)})`;
    case 'infix':
      return `(${shape(rule.left)} ${rule.sign} ${shape(rule.right)})`;
    case 'call':
      return `${rule.name}(${rule.args.map(shape).join(', ')})`;
  }
}

function inBrackets(unit: Unit | undefined): string {
  return unit ? `[${unit.symbol}]` : '';
}

function read(text: string): string {
  const rule = readRule(text);
  return rule.ok ? shape(rule.value) : `${rule.fault.kind} ${rule.fault.from}-${rule.fault.to}`;
}

const nested = (levels: number) => '('.repeat(levels) + '1' + ')'.repeat(levels);

describe('readRule', () => {
  test.each([
    ['2+3*4', '(2 + (3 * 4))'],
    ['(2+3)*4', '({(2 + 3)} * 4)'],
    ['-2^2', '((-2) ^ 2)'],
    ['2^3^2', '((2 ^ 3) ^ 2)'],
    ['2^-3', '(2 ^ (-3))'],
    ['--a', '(-(-a))'],
    ['a - b - c', '((a - b) - c)'],
    ['a / b * c', '((a / b) * c)'],
    ['1 < 2 = yes', '((1 < 2) = true)'],
    ['a+b<=c*d', '((a + b) <= (c * d))'],
    ['a \u2212 b \u00d7 c \u2264 d', '((a - (b * c)) <= d)'],
  ])('joins %s as school arithmetic does, the prefix tightest', (text, tree) => {
    expect(read(text)).toBe(tree);
  });

  test.each([
    ['12', '12'],
    ['12.5', '12.5'],
    ['.5', '0.5'],
    ['1e-3', '0.001'],
    ['40 mm', '40[mm]'],
    ['40mm', '40[mm]'],
    ['35 %', '35[%]'],
    ['1 each', '1[each]'],
    ['1each', '1[each]'],
    ['12.2 g/L', '12.2[g/L]'],
    ['4 m2', '4[m2]'],
    ['12 min/m2', '12[min/m2]'],
    ['12 min / m2', '12[min/m2]'],
    ['5 W/m2/K', '5[W/m2/K]'],
    ['7 %/d', '7[%/d]'],
    ['26 degC', '26[degC]'],
    ['26 \u00b0C', '26[degC]'],
    ['4 m\u00b2', '4[m2]'],
    ['5 \u00b5mol', '5[umol]'],
    ['2 ml', '2[mL]'],
    ['-40 degF', '-40[degF]'],
    ['- 40 degF', '-40[degF]'],
    ['-1 K', '(-1[K])'],
  ])('takes %s as one figure', (text, tree) => {
    expect(read(text)).toBe(tree);
  });

  test.each([
    ['12 L/drainage', '(12[L] / drainage)'],
    ['12 L/min(a, b)', '(12[L] / min(a, b))'],
    ['450 mm/2', '(450[mm] / 2)'],
    ['1/2 in', '(1 / 2[in])'],
    ['min(12 min, 3)', 'min(12[min], 3)'],
    ['0.5 kg/L*drainage', '(0.5[kg/L] * drainage)'],
    ['5 m / s_line', '(5[m] / s_line)'],
  ])('ends the unit of %s where no unit follows', (text, tree) => {
    expect(read(text)).toBe(tree);
  });

  test.each([
    ['"full"', '"full"'],
    ['"a""b"', '"a\\"b"'],
    ['""', '""'],
    ['yes', 'true'],
    ['not(no)', 'not(false)'],
    ['pi()', 'pi()'],
    ['yes_please', 'yes_please'],
    ['if ( kit = "full" , 1 , 2 )', 'if((kit = "full"), 1, 2)'],
  ])('reads words, answers and calls: %s', (text, tree) => {
    expect(read(text)).toBe(tree);
  });

  test('knows where every part stands, its unit with it', () => {
    const rule = readRule('  max(a, 40 mm)+b');
    expect(rule).toMatchObject({
      ok: true,
      value: {
        part: 'infix',
        from: 2,
        to: 17,
        left: {
          part: 'call',
          at: { from: 2, to: 5 },
          from: 2,
          to: 15,
          args: [
            { from: 6, to: 7 },
            { from: 9, to: 14 },
          ],
        },
        right: { from: 16, to: 17 },
      },
    });
  });

  test.each([
    ['26 C', 'degC'],
    ['68 F', 'degF'],
    ['3 litres', 'L'],
    ['2 feet', 'ft'],
    ['5 lbs', 'lb'],
  ])('a unit is read behind a number as people spell it: %s', (text, symbol) => {
    expect(readRule(text)).toMatchObject({ ok: true, value: { part: 'number', unit: { symbol } } });
  });

  test.each([
    ['', { kind: 'empty', from: 0, to: 0 }],
    ['   ', { kind: 'empty', from: 0, to: 3 }],
    [' = 5', { kind: 'leading-equals', from: 1, to: 2 }],
    ['a +', { kind: 'unexpected', found: '', wanted: 'figure', from: 3, to: 3 }],
    ['a + * b', { kind: 'unexpected', found: '*', wanted: 'figure', from: 4, to: 5 }],
    ['a b', { kind: 'unexpected', found: 'b', wanted: 'sign', from: 2, to: 3 }],
    ['2 sqrt(4)', { kind: 'unexpected', found: 'sqrt', wanted: 'sign', from: 2, to: 6 }],
    ['(a', { kind: 'unexpected', found: '', wanted: 'close', from: 2, to: 2 }],
    ['a)', { kind: 'unexpected', found: ')', wanted: 'sign', from: 1, to: 2 }],
    ['()', { kind: 'unexpected', found: ')', wanted: 'figure', from: 1, to: 2 }],
    ['max(a b)', { kind: 'unexpected', found: 'b', wanted: 'comma', from: 6, to: 7 }],
    ['max(a,,b)', { kind: 'unexpected', found: ',', wanted: 'figure', from: 6, to: 7 }],
    ['max(a,)', { kind: 'unexpected', found: ')', wanted: 'figure', from: 6, to: 7 }],
    ['12,5 mm', { kind: 'unexpected', found: ',', wanted: 'sign', from: 2, to: 3 }],
    ['1.2.3', { kind: 'unexpected', found: '.3', wanted: 'sign', from: 3, to: 5 }],
    ['max(a;;b)', { kind: 'unexpected', found: ';', wanted: 'figure', from: 6, to: 7 }],
    ['12;5 mm', { kind: 'unexpected', found: ';', wanted: 'sign', from: 2, to: 3 }],
    ['1 + 1e308 km', { kind: 'too-large', found: '1e308 km', from: 4, to: 12 }],
    ['50%%', { kind: 'bad-character', found: '%', from: 3, to: 4 }],
    ['a & b', { kind: 'bad-character', found: '&', from: 2, to: 3 }],
    ['12 \ud83c\udf31', { kind: 'bad-character', found: '\ud83c\udf31', from: 3, to: 5 }],
    ['kit = "full', { kind: 'unclosed-text', from: 6, to: 11 }],
    ['40 mn', { kind: 'unknown-unit', unit: 'mn', near: 'mm', from: 3, to: 5 }],
    ['26 c', { kind: 'unknown-unit', unit: 'c', near: 'degC', from: 3, to: 4 }],
    ['3 kgs.', { kind: 'unknown-unit', unit: 'kgs', near: 'kg', from: 2, to: 5 }],
    ['3 drainage', { kind: 'unknown-unit', unit: 'drainage', from: 2, to: 10 }],
    ['1e999', { kind: 'too-large', found: '1e999', from: 0, to: 5 }],
    ['1+'.repeat(1000) + '1', { kind: 'too-long', length: 2001, limit: 2000, from: 2000, to: 2001 }],
  ])('says of %j what is wrong and where', (text, fault) => {
    expect(readRule(text)).toEqual({ ok: false, fault });
  });

  test.each([
    ['60 brackets', nested(60), true],
    ['61 brackets', nested(61), false],
    ['900 brackets', nested(900), false],
    ['60 calls', 'abs('.repeat(60) + '1' + ')'.repeat(60), true],
    ['61 calls', 'abs('.repeat(61) + '1' + ')'.repeat(61), false],
    ['60 prefixes', `${'-'.repeat(60)}1`, true],
    ['1,999 prefixes', `${'-'.repeat(1999)}1`, false],
    ['60 powers of powers', `1${'^1'.repeat(60)}`, true],
    ['61 powers of powers', `1${'^1'.repeat(61)}`, false],
    ['1,000 added figures', '1+'.repeat(999) + '1', true],
    ['1,000 multiplied figures', '1*'.repeat(999) + '1', true],
  ])('keeps to 60 levels: %s', (_, text, goes) => {
    expect(readRule(text).ok).toBe(goes);
  });

  test('answers every text with a rule or a fault inside it, and never throws', () => {
    const piece = fc.constantFrom(
      '(',
      ')',
      ',',
      '+',
      '-',
      '*',
      '/',
      '^',
      '<',
      '>',
      '=',
      '"',
      ' ',
      '12',
      '.5',
      'mm',
      '%',
      'min',
      'a_b',
      'yes',
      '.',
      '\u00b0C',
      ';',
      '\ud83c\udf31',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join('')),
    );
    fc.assert(
      fc.property(text, (written) => {
        const rule = readRule(written);
        const { from, to } = rule.ok ? rule.value : rule.fault;
        expect(0 <= from && from <= to && to <= written.length).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});
