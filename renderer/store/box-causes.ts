import { capital } from '#shared-calc/rule/capital.ts';
import type { StandingView } from '#renderer/panel/panel-view.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { inOwnUnits, type Given } from '#shared-calc/engine/call-function.ts';
import { compileRule } from '#shared-calc/rule/evaluate-rule.ts';
import { walk, type RulePart } from '#shared-calc/rule/tree.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';
import { sayBoxCause } from '#shared-calc/words/say-box-cause.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { checkSentence, isOpenCheck, type BoxParts } from './box-view.ts';
import { lookupsIn } from './check-words.ts';
import { figureWords } from '#shared-calc/quantity/figure-words.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { calledByWords } from '#shared-calc/words/called-by-words.ts';

/** The state of a cell: one line for each thing there is to say, with its reason. */
export function standingsOf(box: Box, parts: BoxParts): readonly StandingView[] {
  const { issued } = parts;
  return [
    ...(issued === undefined ? [] : [{ look: 'issued' as const, words: `In quote ${issued}` }]),
    ...sourceStanding(box, parts.called),
    ...causeStanding(box, parts),
    ...checkStanding(box),
    ...flagStandings(box, parts),
    ...warningsOf(box, parts).map((words) => ({ look: 'watch' as const, words })),
  ];
}

const giverSays = {
  survey: 'As the survey of the job',
  kind: 'As the kind of animal in this size',
} as const;

function sourceStanding({ source, rule }: Box, called: string): readonly StandingView[] {
  if (source === 'survey' || source === 'kind') return [{ look: 'job', words: giverSays[source] }];
  if (source === 'local') return [{ look: 'local', words: `Local ${rule ? 'rule' : 'value'}, for ${called} only` }];
  return source === 'job' ? [{ look: 'job', words: `${rule ? 'Rule' : 'Value'} for the whole job` }] : [];
}

function causeStanding({ cause, line, state }: Box, { faces }: BoxParts): readonly StandingView[] {
  if (!cause) return [];
  const words = sayBoxCause(cause, line.name, calledByWords(faces));
  return [{ look: state === 'loop' || state === 'waiting' ? state : 'needs', words }];
}

function checkStanding(box: Box): readonly StandingView[] {
  const state = box.check?.state ?? 'not known yet';
  if (state === 'not known yet') return [];
  if (state === 'not asked') return [{ look: 'holds', words: 'Not asked: the range of a figure says it better' }];
  if (state === 'holds') return [{ look: 'holds', words: 'Holds' }];
  if (state === 'may not hold') return [{ look: 'watch', words: 'May not hold' }];
  const level = box.line.level ?? 'watch';
  return [{ look: level, words: capital(level) }];
}

function flagStandings({ flags, line }: Box, parts: BoxParts): readonly StandingView[] {
  return flags.map((flag) =>
    flag === 'out of range'
      ? { look: 'range', words: rangeWords(line, parts) }
      : { look: 'old', words: 'Old price: look it up again in the material book.' },
  );
}

function rangeWords({ low, high, unit }: Box['line'], { faces: { display } }: BoxParts): string {
  const said = (bound: number) => figureWords(toBase(bound, unitOf(unit)), unit, display);
  if (low !== undefined && high !== undefined) return `Out of range: it lies between ${said(low)} and ${said(high)}.`;
  if (low !== undefined) return `Out of range: at least ${said(low)}.`;
  return `Out of range: at most ${high === undefined ? '' : said(high)}.`;
}

/** Warnings of the functions in a rule. */
function warningsOf({ rule, value }: Box, parts: BoxParts): readonly string[] {
  if (!rule || value === undefined) return [];
  const warnings = new Set<string>();
  walk(rule, (part) => {
    const warning = part.part === 'call' ? warningOf(part, parts) : undefined;
    if (warning !== undefined) warnings.add(warning);
  });
  return [...warnings];
}

function warningOf(call: RulePart<'call'>, { bench, column }: BoxParts): string | undefined {
  const of = functionInRules(call.name);
  if (!of?.warn) return undefined;
  const lookups = lookupsIn(bench, column);
  const given: Given[] = [];
  for (const arg of call.args) {
    const value = compileRule(arg, lookups)();
    if (typeof value === 'object') return undefined;
    given.push(value);
  }
  const args = inOwnUnits(of, given);
  const answer = of.compute(args);
  return typeof answer === 'number' ? of.warn(args, answer) : undefined;
}

/** What to mind and who decides: a failed check's own sentence, or the caution of the line or of its functions. */
export function cautionOf(box: Box, parts: BoxParts): { readonly words: string; readonly decides: string } | undefined {
  const { caution = '', decides = '', role } = box.line;
  if (role === 'check') return isOpenCheck(box) ? decidedBy(checkSentence(box, parts), decides) : undefined;
  if (caution !== '') return decidedBy(caution, decides);
  const fromRule = box.rule && ruleCaution(box.rule);
  return fromRule && decidedBy(fromRule.words, decides === '' ? fromRule.decides : decides);
}

function decidedBy(words: string, who: string): { readonly words: string; readonly decides: string } {
  return { words, decides: who === '' ? '' : `${whoDecides(who)}.` };
}

function ruleCaution(rule: NonNullable<Box['rule']>): { readonly words: string; readonly decides: string } | undefined {
  let found: { readonly words: string; readonly decides: string } | undefined;
  walk(rule, (part) => {
    const of = part.part === 'call' && !found ? functionInRules(part.name) : undefined;
    if (of?.caution !== undefined) found = { words: of.caution, decides: of.decides ?? '' };
  });
  return found;
}
