import { actTable, type ActInputs, type ActName } from '#shared-calc/acts/all-acts.ts';
import { againstChange, allAgainst } from '#shared-calc/derive/against-change.ts';
import type { Against } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';

/** What stands against the moves that an act would make; nothing if it is refused. */
export function againstAct<N extends ActName>(derived: Derived, name: N, input: ActInputs[N]): readonly Against[] {
  const done = actTable[name].run(derived, input);
  return done.ok ? allAgainst(againstChange(derived, done.value)) : [];
}
