import type { Kind } from '#shared-calc/quantity/kind.ts';
import { argumentKind } from './check-call.ts';
import type { Token } from './read-tokens.ts';
import type { Signature } from './signature.ts';

/** A call whose bracket is still open, and the argument that is being typed. */
export interface OpenCall {
  readonly fn: string;
  readonly argument: number;
  /** The first token of the call: the choice of a `pick`. */
  readonly first: Token | undefined;
}

/** The innermost call that is still open after these tokens. */
export function findOpenCall(before: readonly Token[]): OpenCall | undefined {
  const open = lastOpen(before);
  const name = before[open - 1];
  if (name?.is !== 'word') return undefined;
  return { fn: name.word, argument: commasBehind(before, open), first: before[open + 1] };
}

/** The kind of the argument that is being typed, if the function declares one. */
export function argumentWanted(
  functions: ReadonlyMap<string, Signature>,
  call: OpenCall | undefined,
): Kind | undefined {
  const argument = call && functions.get(call.fn)?.args[call.argument];
  const kind = argument && argumentKind(argument);
  return kind === 'any' ? undefined : kind;
}

function lastOpen(before: readonly Token[]): number {
  let closed = 0;
  return before.findLastIndex((token) => {
    if (token.is === 'close') closed += 1;
    else if (token.is === 'open') closed -= 1;
    return closed < 0;
  });
}

function commasBehind(before: readonly Token[], open: number): number {
  let depth = 0;
  let commas = 0;
  for (const token of before.slice(open + 1)) {
    if (token.is === 'open') depth += 1;
    else if (token.is === 'close') depth -= 1;
    else if (token.is === 'comma' && depth === 0) commas += 1;
  }
  return commas;
}
