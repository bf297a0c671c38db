import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { sayDecided } from '#shared-calc/words/who-decides.ts';
import { Caution, Cautions } from './caution.tsx';

/** Cautions of the table in a column, each with who decides and its source. */
export function CautionList({ cautions }: { readonly cautions: readonly SaidCaution[] }) {
  return (
    <Cautions>
      {cautions.map((caution) => (
        <Caution key={caution.says} decides={sayDecided(caution)}>
          {sayUnits(caution.says)}
        </Caution>
      ))}
    </Cautions>
  );
}
