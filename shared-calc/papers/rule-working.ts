import type { WorkedRule } from '#shared-calc/bench/work-rule.ts';
import { plainDisplay, showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import { workingOf } from '#shared-calc/rule/working.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';

/** The working of a rule without lines: its literals and its result. */
export function ruleWorking({ rule, value, unit }: WorkedRule): readonly string[] {
  return workingOf(rule, {
    figureOf: (name) => name,
    labelOf: (name) => name,
    resultText: showWithUnit(value, unit, { ...plainDisplay, extraDecimals: 1 }),
    titleOf: (fn) => functionInRules(fn)?.title,
    literalText: (figure, of) => (of === 'number' ? String(cleanNoise(figure)) : `${cleanNoise(figure)} ${of}`),
  });
}
