import type { BoxContent, BoxValue } from '#shared-calc/engine/box-content.ts';
import { workOnce } from '#shared-calc/engine/once.ts';
import { openGrid } from '#shared-calc/engine/open-grid.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import { figureRule, seeded, yesNoRule, type Random } from '#tests/shared-calc/rule/random-rules.ts';

export function ruled(text: string): BoxContent {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(`${text}: ${JSON.stringify(rule.fault)}`);
  return { is: 'rule', rule: rule.value };
}

/** The same contents, evaluated by the graph engine. */
function followed(contents: ReadonlyMap<string, BoxContent>): ReadonlyMap<string, BoxValue> {
  const grid = openGrid();
  grid.write([...contents].map(([line, content]) => ({ column: 'T07', line, content })));
  const values = new Map([...contents.keys()].map((line) => [line, grid.read('T07', line)] as const));
  grid.close();
  return values;
}

function agree(one: BoxValue | undefined, other: BoxValue | undefined): boolean {
  if (!one?.known || !other?.known) return sameData(one, other);
  return Object.is(one.value, other.value);
}

const givens: ReadonlyMap<string, BoxContent> = new Map<string, BoxContent>([
  ['a', { is: 'figure', value: 2.5 }],
  ['b', { is: 'figure', value: -0.3 }],
  ['c', { is: 'figure', value: 121.00000000000001 }],
  ['d', { is: 'figure', value: 0.04 }],
  ['kit', { is: 'figure', value: 'full' }],
  ['gap', { is: 'nothing', why: 'missing' }],
]);

/** Fifty random rules per round, evaluated by both engines: those that differ, and the kinds of results seen. */
export function comparedRules(rounds: number): {
  readonly apart: readonly string[];
  readonly sorts: ReadonlySet<string>;
} {
  const random = seeded(6_022);
  const apart: string[] = [];
  const sorts = new Set<string>();
  for (let round = 0; round < rounds; round += 1) {
    const rules = Array.from({ length: 50 }, (_, at) => [`r${at}`, randomRule(random, at)] as const);
    const contents = new Map([...givens, ...rules.map(([line, text]) => [line, ruled(text)] as const)]);
    const [once, graph] = [workOnce(contents), followed(contents)];
    for (const [line, text] of rules) {
      const [one, other] = [once.get(line), graph.get(line)];
      if (!agree(one, other)) apart.push(`${text}\n ${JSON.stringify(one)}\n ${JSON.stringify(other)}`);
      sorts.add(one?.known ? typeof one.value : (one?.problem.why ?? ''));
    }
  }
  return { apart, sorts };
}

/** Later rules read earlier results in place of a given figure. */
function randomRule(random: Random, at: number): string {
  const text = (at % 4 === 0 ? yesNoRule : figureRule)(random, 1 + random(4));
  if (text.length > 1500) return 'a';
  return at < 5 ? text : text.replaceAll(/\ba\b/g, `r${1 + (at % 3)}`);
}
