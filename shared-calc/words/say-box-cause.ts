import type { BoxCause } from '#shared-calc/bench/bench-types.ts';
import type { BoxProblem } from '#shared-calc/engine/box-content.ts';
import type { BoxFault } from '#shared-calc/recipe/read-box.ts';
import { unreachable } from '#shared-calc/result.ts';
import { byRuleName, type Called } from './called.ts';
import { listOr } from '#shared-calc/rule/list-words.ts';
import { sayRuleFault } from './say-rule-fault.ts';

/** Why the cell of a line has no value, in a sentence with its cure. A cycle is shown with the names in rules. */
export function sayBoxCause(cause: BoxCause, line: string, called: Called = byRuleName): string {
  switch (cause.why) {
    case 'missing':
      return `Needs a figure: ${called.line(line)}.`;
    case 'faulty':
      return sayBoxFault(cause.fault, line, called);
    case 'loop':
      return `This box depends on itself: ${[...cause.cycle, cause.cycle[0]].join(' -> ')}.`;
    case 'waits':
      return cause.problem.line === line
        ? sayProblem(cause.problem, called)
        : `Waits on ${called.line(cause.problem.line)}. ${sayProblem(cause.problem, called)}`;
    default:
      return unreachable(cause);
  }
}

/** What is wrong with a text written into a cell, and the cure. */
export function sayBoxFault(fault: BoxFault, line: string, called: Called = byRuleName): string {
  switch (fault.kind) {
    case 'rule':
      return fault.faults.map((each) => sayRuleFault(each, fault.text, called)).join(' ');
    case 'not-an-option':
      return `${called.lineFirst(line)} takes ${listOr(fault.options)}. You gave ${fault.text}.${didYouMean(fault.near)}`;
    case 'range-order':
      return `Write the range in order, the least first: ${fault.least}, likely ${fault.likely}, most ${fault.most} are not.`;
    case 'range-of-rule':
      return `Only a figure has a range: ${fault.text}. A rule takes its range from the figures it reads.`;
    case 'two-readings':
      return `${fault.text} can be read in two ways: ${listOr(fault.readings)}?`;
    case 'other-sign':
      return `Here the decimal sign is the ${fault.sign}: ${fault.like}`;
    default:
      return unreachable(fault);
  }
}

/** The first cause of a cell without a value, in a sentence; a rule without a line of its own has the line ''. */
export function sayProblem(problem: BoxProblem, called: Called = byRuleName): string {
  const { first, rule } = subjectsOf(problem.line, called);
  switch (problem.why) {
    case 'missing':
      return `Needs a figure: ${called.line(problem.line)}.`;
    case 'loop':
      return `${first} depends on itself.`;
    case 'faulty':
      return `${rule} cannot be read.`;
    case 'refused':
      return problem.says ?? `${first} has no answer.`;
    case 'divided by zero':
      return `${rule} divides by zero.`;
    case 'no number':
      return `${rule} comes to no number.`;
    default:
      return unreachable(problem.why);
  }
}

function subjectsOf(line: string, called: Called): { readonly first: string; readonly rule: string } {
  if (line === '') return { first: 'The rule', rule: 'The rule' };
  return { first: called.lineFirst(line), rule: `The rule of ${called.line(line)}` };
}

function didYouMean(near: string | undefined): string {
  return near === undefined ? '' : ` Did you mean ${near}?`;
}
