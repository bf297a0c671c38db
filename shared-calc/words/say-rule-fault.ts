import type { CheckFault, ReadFault, RuleFault } from '#shared-calc/rule/fault.ts';
import { byRuleName, type Called } from './called.ts';
import { sayCallFault, type CallFault } from './say-call-fault.ts';
import { sayJoinFault, type JoinFault } from './say-join-fault.ts';
import { sayKindFault } from './say-kind-fault.ts';
import { sayReadFault } from './say-read-fault.ts';

/**
 * A fault of a rule in words: what is wrong, where, and the cure. `text` is the rule as written, for the quoted part:
 * "DEPTH needs a length (mm, cm, in). You gave 40 L."
 */
export function sayRuleFault(fault: RuleFault, text: string, called: Called = byRuleName): string {
  return isReadFault(fault)
    ? sayReadFault(fault)
    : sayCheckFault(fault, quote(text.slice(fault.from, fault.to).trim()), called);
}

/** A long part of a rule is shortened to its two ends. */
function quote(piece: string): string {
  return piece.length <= MOST_QUOTED ? piece : `${piece.slice(0, 60).trimEnd()} ... ${piece.slice(-20).trimStart()}`;
}

const MOST_QUOTED = 120;

const readKinds: ReadonlySet<string> = new Set<ReadFault['kind']>([
  'empty',
  'too-long',
  'too-deep',
  'too-large',
  'unexpected',
  'bad-character',
  'two-figures',
  'unclosed-text',
  'leading-equals',
  'unknown-unit',
]);

const callKinds: ReadonlySet<string> = new Set<CallFault['kind']>([
  'unknown-name',
  'unknown-function',
  'not-a-call',
  'too-few',
  'too-many',
  'wrong-argument',
  'not-an-option',
]);

const joinKinds: ReadonlySet<string> = new Set<JoinFault['kind']>([
  'cannot-join',
  'reading-alone',
  'bad-power',
  'bad-root',
]);

function isReadFault(fault: ReadFault | CheckFault): fault is ReadFault {
  return readKinds.has(fault.kind);
}

function isCallFault(fault: CheckFault): fault is CallFault {
  return callKinds.has(fault.kind);
}

function isJoinFault(fault: CheckFault): fault is JoinFault {
  return joinKinds.has(fault.kind);
}

function sayCheckFault(fault: CheckFault, quoted: string, called: Called): string {
  if (isCallFault(fault)) return sayCallFault(fault, quoted, called);
  return isJoinFault(fault) ? sayJoinFault(fault, quoted) : sayKindFault(fault, quoted);
}
