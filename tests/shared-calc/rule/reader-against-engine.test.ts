import { DetailedCellError } from 'hyperformula';
import { describe, expect, test } from 'vitest';
import { emitRule } from '#shared-calc/rule/emit-rule.ts';
import { compileRule, type Lookups, type Value } from '#shared-calc/rule/evaluate-rule.ts';
import { readRule } from '#shared-calc/rule/read-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';
import { figureRule, seeded, sharedRule, yesNoRule } from './random-rules.ts';
import { smallEngine } from './small-engine.ts';

type EngineTree = Readonly<Record<string, unknown>> & { readonly type: string };

const engineSigns: Readonly<Record<string, string>> = {
  PLUS_OP: '+',
  MINUS_OP: '-',
  TIMES_OP: '*',
  DIV_OP: '/',
  POWER_OP: '^',
  EQUALS_OP: '=',
  NOT_EQUAL_OP: '<>',
  LESS_THAN_OP: '<',
  LESS_THAN_OR_EQUAL_OP: '<=',
  GREATER_THAN_OP: '>',
  GREATER_THAN_OR_EQUAL_OP: '>=',
};

/** The engine's tree in one line, every operation in brackets. */
function engineShape(tree: EngineTree): string {
  const part = (name: string) => engineShape(tree[name] as EngineTree);
  const sign = engineSigns[tree.type];
  if (sign) return `(${part('left')} ${sign} ${part('right')})`;
  switch (tree.type) {
    case 'NUMBER':
    case 'STRING':
      return JSON.stringify(tree['value']);
    case 'NAMED_EXPRESSION':
      return String(tree['expressionName']);
    case 'PARENTHESES':
      return part('expression');
    case 'PERCENT_OP':
      return `${part('value')} %`;
    case 'MINUS_UNARY_OP':
      return `(-${part('value')})`;
    case 'PLUS_UNARY_OP':
      return `(+${part('value')})`;
    case 'FUNCTION_CALL':
      return `${String(tree['procedureName']).toLowerCase()}(${(tree['args'] as EngineTree[]).map(engineShape).join(', ')})`;
    default:
      return `? ${tree.type}`;
  }
}

function ourShape(rule: Rule): string {
  switch (rule.part) {
    case 'number':
      return `${rule.value}${rule.unit ? ` ${rule.unit.symbol}` : ''}`;
    case 'text':
      return JSON.stringify(rule.text);
    case 'yes_no':
      return String(rule.value);
    case 'name':
      return rule.name;
    case 'group':
      return ourShape(rule.of);
    case 'prefix':
      return `(${rule.sign}${ourShape(rule.of)})`;
    case 'infix':
      return `(${ourShape(rule.left)} ${rule.sign} ${ourShape(rule.right)})`;
    case 'call':
      return `${rule.name}(${rule.args.map(ourShape).join(', ')})`;
  }
}

function read(text: string): Rule {
  const rule = readRule(text);
  if (!rule.ok) throw new Error(`${text}: ${JSON.stringify(rule.fault)}`);
  return rule.value;
}

const figures = { a: 2.5, b: -0.3, c: 121.00000000000001, d: 0.04, kit: 'full', gap: undefined } as const;
const columns = Object.keys(figures);
const addressOf = (name: string) => `${'ABCDEFGH'[columns.indexOf(name)]}1`;
const lookups: Lookups = {
  valueOf: (name) => figures[name as keyof typeof figures] ?? { kind: 'missing', line: name },
  functions: new Map(),
};

const problems: Readonly<Record<string, string>> = {
  DIV_BY_ZERO: 'divided-by-zero',
  NUM: 'not-a-number',
  VALUE: 'refused',
};

/** What both must give: a figure to ten digits, or the kind of the fault. */
function said(value: Value | DetailedCellError): string {
  if (value instanceof DetailedCellError) return problems[value.type] ?? value.type;
  if (typeof value === 'object') return value.kind === 'missing' ? 'refused' : value.kind;
  return String(value);
}

function agree(ours: Value, engines: Value | DetailedCellError): boolean {
  if (typeof ours !== 'number' || typeof engines !== 'number') return said(ours) === said(engines);
  return Math.abs(ours - engines) <= 1e-9 * Math.max(Math.abs(ours), Math.abs(engines));
}

describe('readRule', () => {
  test('reads 20,000 rules in the order in which the engine reads them', () => {
    const engine = smallEngine([]);
    const random = seeded(20_270_407);
    const different: string[] = [];
    for (let count = 0; count < 20_000; count += 1) {
      const text = sharedRule(random, 1 + random(5));
      const { ast } = (
        engine as unknown as { extractTemporaryFormula(text: string): { ast: EngineTree } }
      ).extractTemporaryFormula(`=${text}`);
      const [ours, engines] = [ourShape(read(text)), engineShape(ast)];
      if (ours !== engines) different.push(`${text}\n  ours   ${ours}\n  engine ${engines}`);
    }
    expect(different.slice(0, 5)).toEqual([]);
  });
});

describe('emitRule', () => {
  test('the engine and the second evaluator come to the same in 20,000 rules', () => {
    const engine = smallEngine(Object.values(figures));
    const random = seeded(14_159);
    const different: string[] = [];
    const seen = new Map<string, number>();
    for (let count = 0; count < 20_000; count += 1) {
      const text = (count % 4 === 0 ? yesNoRule : figureRule)(random, 1 + random(4));
      if (text.length > 2000) continue;
      const rule = read(text);
      const ours = compileRule(rule, lookups)();
      const engines = engine.calculateFormula(`=${emitRule(rule, addressOf)}`, 0) as Value | DetailedCellError;
      if (!agree(ours, engines)) different.push(`${text}\n  ours   ${said(ours)}\n  engine ${said(engines)}`);
      const sort = typeof ours === 'object' ? ours.kind : typeof ours;
      seen.set(sort, (seen.get(sort) ?? 0) + 1);
    }
    expect(different.slice(0, 5)).toEqual([]);
    const rare = ['number', 'boolean', 'missing', 'refused', 'divided-by-zero', 'not-a-number'].filter(
      (sort) => (seen.get(sort) ?? 0) < 100,
    );
    expect(rare).toEqual([]);
  });
});
