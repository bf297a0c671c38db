import { workRule, type WorkFault } from '#shared-calc/bench/work-rule.ts';
import { sayCaution } from '#shared-calc/cautions/all-cautions.ts';
import { functionCautions } from '#shared-calc/prepare/box-cautions.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import { plainDisplay, showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import { ruleWorking } from '#shared-calc/papers/rule-working.ts';
import { sayRuleFault } from '#shared-calc/words/say-rule-fault.ts';
import { sayBoxFault, sayProblem } from '#shared-calc/words/say-box-cause.ts';
import type { Command } from '#electron/cli/command.ts';
import { jsonValue } from '#electron/cli/json-figure.ts';
import { readText } from '#electron/cli/read-text.ts';
import { refusal, wrongUse } from '#electron/cli/outcome.ts';

/** Evaluates one rule with literals: `work "steam_temp(650 m, 15 psi)"`. */
export const workCommand: Command = {
  name: 'work',
  usage: 'work "RULE"|-: works one figure or rule with no recipe; - reads it from standard input',
  options: {},
  run: (given) => {
    const [asked, ...more] = given.words;
    const text = asked === '-' ? readText('-')?.trim() : asked;
    if (text === undefined || more.length > 0)
      return wrongUse('Give one rule in quotes: work "layer_volume(0.4 m2, 40 mm)".');
    const worked = workRule(text);
    if (!worked.ok) return refusal(...sayWorkFault(worked.fault, text));
    const { value, unit, kindName, rule, warnings } = worked.value;
    const working = ruleWorking(worked.value);
    const cautions = functionCautions(rule).map((id) => sayCaution(id));
    return {
      is: 'answer',
      json: {
        value: jsonValue(value, unit),
        unit,
        kind: kindName,
        working,
        warnings,
        cautions: cautions.map(cautionJson),
      },
      table: () =>
        [showWithUnit(value, unit, plainDisplay), ...working, ...underFigures(warnings, cautions, plainDisplay)].join(
          '\n',
        ),
    };
  },
};

function sayWorkFault(fault: WorkFault, text: string): readonly string[] {
  if (fault.kind === 'no answer') return [sayProblem({ ...fault.problem, line: '' })];
  if (fault.kind === 'number') return [sayBoxFault(fault.fault, '')];
  return fault.faults.map((each) => `${sayRuleFault(each, text)} (at ${each.from + 1})`);
}
