import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { PRACTICE } from '#shared-calc/cautions/sources.ts';
import { listAnd } from '#shared-calc/rule/list-words.ts';

/**
 * Who decides, as the end of a sentence: `Builder decides`, `Keeper and vet decide`. Whoever decides only in some case
 * comes last: `Builder decides; vet if skin signs`.
 */
export function whoDecides(who: string): string {
  const named = who.split(/[,;]/).map((each) => each.trim());
  const always = named.filter((each) => !/\sif\s/.test(each));
  if (always.length === 0) return `${who} decides`;
  const verb = always.length > 1 || /\sand\s/.test(always[0] ?? '') ? 'decide' : 'decides';
  return [`${listAnd(always)} ${verb}`, ...named.filter((each) => !always.includes(each))].join('; ');
}

type Decided = Pick<SaidCaution, 'decides'> & { readonly source?: string };

/** Who decides about a caution, and where it comes from if it says: `Builder decides; common practice, no source.` */
export function sayDecided({ decides, source }: Decided): string {
  return `${[whoDecides(decides), ...(source === undefined ? [] : [source])].join('; ')}.`;
}

/** The same on paper, where common practice goes without saying. */
export function decidedOnPaper({ decides, source }: Decided): string {
  return sayDecided({ decides, ...(source !== undefined && source !== PRACTICE && { source }) });
}
