import type { ActInputs } from '#shared-calc/acts/all-acts.ts';

/** Lines of a recipe that are taken from its parent or sent up, as an act and its input. */
export type FamilyMove =
  | { readonly act: 'takeFromParent'; readonly input: ActInputs['takeFromParent'] }
  | { readonly act: 'sendToParent'; readonly input: ActInputs['sendToParent'] };

export const moveKinds = ['take', 'keep', 'send'] as const;
export type MoveKind = (typeof moveKinds)[number];

/** What becomes of figures for some tanks alone: they stay, go along, or those of a tank go up for all. */
export type ForTanks = 'stay' | 'along' | { readonly ofTank: string };

interface Named {
  readonly recipe: string;
  readonly lines: readonly string[];
}

export function familyMove(kind: MoveKind, { recipe, lines }: Named, tanks: ForTanks): FamilyMove {
  const named = { recipe, lines: [...lines], note: '' };
  if (kind === 'send') return { act: 'sendToParent', input: { ...named, ...sentTanks(tanks) } };
  const input = { ...named, keep: kind === 'keep', tanks: tanks === 'stay' ? ('stay' as const) : ('take' as const) };
  return { act: 'takeFromParent', input };
}

function sentTanks(tanks: ForTanks): Pick<ActInputs['sendToParent'], 'tanks' | 'of'> {
  if (typeof tanks === 'object') return { tanks: 'all', of: tanks.ofTank };
  return { tanks: tanks === 'along' ? 'same' : 'stay' };
}
