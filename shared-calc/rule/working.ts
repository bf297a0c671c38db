import { ungrouped, type Rule, type RulePart } from './tree.ts';
import { writeRule, type RuleParts } from './write-rule.ts';

/** How the layers above word the names of a working. */
export interface WorkingShow {
  /** A line's figure with its unit, with one decimal more than its cell: "0.538 L"; a choice is its bare word. */
  readonly figureOf: (name: string) => string;
  /** A line's label in words: "edge bead". */
  readonly labelOf: (name: string) => string;
  readonly resultText: string;
  /** A function's title: "Layer volume". */
  readonly titleOf: (fn: string) => string | undefined;
  readonly literalText: (value: number, unit: string) => string;
  readonly between?: RuleParts['between'];
}

/**
 * The working of one cell, one level deep: the rule with its figures filled in, and a second line if words add
 * something: "36.045 L less 0.538 L edge bead less 1.802 L buried = 33.705 L".
 */
export function workingOf(rule: Rule, show: WorkingShow): readonly string[] {
  const figures = writeRule(rule, partsOf(show, show.figureOf));
  const words = inWords(ungrouped(rule), show);
  const lines = [figures, ...(words === undefined || words === figures ? [] : [words])];
  return lines.map((line) => (line === show.resultText ? line : `${line} = ${show.resultText}`));
}

function inWords(rule: Rule, show: WorkingShow): string | undefined {
  if (rule.part === 'name') return withLabel(rule, show);
  if (rule.part === 'call' && rule.name !== 'sum') return callInWords(rule, show);
  const terms = termsOf(rule);
  return terms && terms.length > 1 ? chainInWords(terms, show) : undefined;
}

interface Term {
  readonly adds: boolean;
  readonly rule: Rule;
}

/** A chain of + and - over names, figures and calls of `sum`; `undefined` for anything else. */
function termsOf(rule: Rule): readonly Term[] | undefined {
  if (rule.part === 'name' || rule.part === 'number') return [{ adds: true, rule }];
  if (rule.part === 'call' && rule.name === 'sum') return allTerms(rule.args.map((arg) => termsOf(ungrouped(arg))));
  if (rule.part !== 'infix' || (rule.sign !== '+' && rule.sign !== '-')) return undefined;
  const right = termsOf(ungrouped(rule.right));
  const turned = rule.sign === '-' ? right?.map((term) => ({ ...term, adds: !term.adds })) : right;
  return allTerms([termsOf(ungrouped(rule.left)), turned]);
}

function allTerms(lists: readonly (readonly Term[] | undefined)[]): readonly Term[] | undefined {
  return lists.includes(undefined) ? undefined : lists.flatMap((terms) => terms ?? []);
}

/** The first term needs no label of its own: the whole sentence is about it. */
function chainInWords(terms: readonly Term[], show: WorkingShow): string {
  const takenFrom = terms[1]?.adds === false;
  return terms
    .map(({ adds, rule }, at) => {
      if (at === 0) return takenFrom && rule.part === 'name' ? show.figureOf(rule.name) : withLabel(rule, show);
      return `${adds ? 'plus' : 'less'} ${withLabel(rule, show)}`;
    })
    .join(' ');
}

function callInWords(call: RulePart<'call'>, show: WorkingShow): string | undefined {
  const title = show.titleOf(call.name);
  const args = call.args.map((arg) => withLabel(ungrouped(arg), show));
  return title === undefined || args.length === 0 ? undefined : `${title} of ${args.join(`${show.between ?? ','} `)}`;
}

function withLabel(rule: Rule, show: WorkingShow): string {
  if (rule.part === 'name') return `${show.figureOf(rule.name)} ${show.labelOf(rule.name)}`;
  return writeRule(
    rule,
    partsOf(show, (name) => `${show.figureOf(name)} ${show.labelOf(name)}`),
  );
}

function partsOf({ literalText, between = ',' }: WorkingShow, name: RuleParts['name']): RuleParts {
  return { name, literal: ({ value, unit }) => literalText(value, unit?.symbol ?? 'number'), between };
}
