import { kindOfUnit, namedKinds, sayKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { lookOf, unitsLike } from '#shared-calc/quantity/unit.ts';
import { checkWord } from './check-words.ts';
import type { RuleFault } from './fault.ts';
import type { Report } from './infix-kind.ts';
import { kindFits } from './kind-fits.ts';
import type { Argument, Signature } from './signature.ts';
import type { Rule, RulePart } from './tree.ts';

/** The kind of a trade function's call; every argument of a wrong kind is reported. */
export function callKind(
  call: RulePart<'call'>,
  kinds: readonly (Kind | undefined)[],
  signature: Signature,
  report: Report,
): Kind | undefined {
  const least = 1 + signature.args.findLastIndex((argument) => argument.otherwise === undefined);
  const counted = checkCount(call, { least, most: signature.args.length });
  if (counted) report(counted);
  const faults = signature.args.flatMap((argument, at) => {
    const [part, kind] = [call.args[at], kinds[at]];
    return part && kind ? (checkArgument(call.name, argument, part, kind) ?? []) : [];
  });
  for (const fault of faults) report(fault);
  if (typeof signature.gives === 'string') return kindOfUnit(signature.gives);
  if (counted || faults.length > 0) return undefined;
  return givenKind(call, kinds, signature.gives, report);
}

/** The fault of a call with too few or too many arguments, at the call or at the first extra argument. */
export function checkCount(
  call: RulePart<'call'>,
  { least, most }: { readonly least: number; readonly most?: number },
): RuleFault | undefined {
  const given = call.args.length;
  const facts = { fn: call.name, given, least, ...(most !== undefined && { most }) };
  if (given < least) return { kind: 'too-few', ...facts, from: call.from, to: call.to };
  const surplus = most === undefined ? undefined : call.args[most];
  const last = call.args.at(-1);
  return surplus && last ? { kind: 'too-many', ...facts, from: surplus.from, to: last.to } : undefined;
}

/** The kind of an argument; `any` accepts every figure. */
export function argumentKind(argument: Argument): Kind | 'any' {
  if (typeof argument.takes !== 'string') return { is: 'choice', options: argument.takes };
  return argument.takes === 'any' ? 'any' : kindOfUnit(argument.takes);
}

function checkArgument(fn: string, argument: Argument, part: Rule, given: Kind): RuleFault | undefined {
  const place = { from: part.from, to: part.to };
  const wanted = argumentKind(argument);
  if (wanted === 'any') return given.is === 'figure' ? undefined : { kind: 'needs-figure', given, fn, ...place };
  const word = checkWord(part, wanted, fn);
  if (word) return word;
  if (kindFits(wanted, given)) return undefined;
  const said = { wanted: sayKind(wanted), wantedUnits: unitsToTry(wanted) };
  return { kind: 'wrong-argument', fn, argument: argument.name, ...said, given, ...place };
}

/** Units to suggest for a kind: the first two and the first US one, as in "mm, cm, in". */
function unitsToTry(wanted: Kind): string {
  if (wanted.is === 'choice') return (wanted.options ?? []).map((word) => `"${word}"`).join(', ');
  if (wanted.is === 'yes_no') return 'yes, no';
  const name = sayKind(wanted);
  if (name === 'temperature') return unitsLike('degC').join(', ');
  if (name === 'temperature step') return 'K';
  if (name === 'share') return '%';
  const shown = namedKinds.find((each) => each.name === name)?.shown ?? [];
  const isCustomary = (unit: string) => lookOf(unit)?.customary ?? false;
  const metric = shown.filter((unit) => !isCustomary(unit)).slice(0, 2);
  return [...metric, ...shown.filter(isCustomary).slice(0, 1)].join(', ');
}

function givenKind(
  call: RulePart<'call'>,
  kinds: readonly (Kind | undefined)[],
  gives: (args: readonly Kind[]) => Kind | undefined,
  report: Report,
): Kind | undefined {
  const known = kinds.filter((kind) => kind !== undefined);
  if (known.length < call.args.length) return undefined;
  const kind = gives(known);
  if (!kind) report({ kind: 'arguments-disagree', fn: call.name, given: known, from: call.from, to: call.to });
  return kind;
}
