import type { Kind } from '#shared-calc/quantity/kind.ts';
import type { RuleFault } from './fault.ts';
import { nearestName } from './nearest.ts';
import { ungrouped, type Rule } from './tree.ts';

/** The fault of a quoted word that a choice does not have; none if the choice's words are not known. */
export function checkWord(part: Rule, choice: Kind, fn?: string): RuleFault | undefined {
  const word = ungrouped(part);
  if (word.part !== 'text' || choice.is !== 'choice' || !choice.options || choice.options.length === 0)
    return undefined;
  if (choice.options.includes(word.text)) return undefined;
  const near = nearestName(word.text, choice.options);
  return {
    kind: 'not-an-option',
    ...(fn && { fn }),
    text: word.text,
    options: choice.options,
    ...(near !== undefined && { near }),
    from: word.from,
    to: word.to,
  };
}

export function isWord(part: Rule): boolean {
  return ungrouped(part).part === 'text';
}
