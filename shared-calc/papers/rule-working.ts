import type { WorkedRule } from '#shared-calc/bench/work-rule.ts';
import { decimalText } from '#shared-calc/quantity/read-number.ts';
import { plainDisplay, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { workingOf } from '#shared-calc/rule/working.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';

/** The working of a rule without lines: its literals and its result. */
export function ruleWorking({ rule, value, unit }: WorkedRule, display: Display = plainDisplay): readonly string[] {
  const { decimalComma = false } = display;
  const plain = (figure: number) => decimalText(String(cleanNoise(figure)), decimalComma);
  return workingOf(rule, {
    figureOf: (name) => name,
    labelOf: (name) => name,
    resultText: showWithUnit(value, unit, { ...display, extraDecimals: 1 }),
    titleOf: (fn) => functionInRules(fn)?.title,
    literalText: (figure, of) => (of === 'number' ? plain(figure) : `${plain(figure)} ${of}`),
    between: decimalComma ? ';' : ',',
  });
}
