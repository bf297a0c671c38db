import type { Decides } from '#shared-calc/cautions/deciders.ts';

/** Who decides where they may be near animals. */
export const HEALTH_LEAD: Decides = 'School or centre health lead, public-health office';

const young =
  /under[\s-]*(?:fives?|5s?)|nursery|kindergarten|cr[eè]che|toddler|infant|bab(?:y|ies)|childcare|child[\s-]*care|playgroup|all ages|\b[0-4](?:\s*(?:-|–|to)\s*\d{1,2})?[\s-]*years?\b|\bag(?:ed?|es)\s*[0-4]\b/i;
const noneOfThem =
  /\b(?:no|not|never|without)\s+(?:any\s+|for\s+)?(?:under[\s-]*(?:fives?|5s?)|toddlers?|infants?|bab(?:y|ies)|nursery)(?:\s+(?:class|group))?/gi;

/** Whether a job's own words about its audience mention children under five; a denial does not count. */
export function tellsOfUnderFives(audience: string): boolean {
  return young.test(audience.replaceAll(noneOfThem, ''));
}
