import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { sayDecided } from '#shared-calc/words/who-decides.ts';
import { Caution, Cautions } from './caution.tsx';

interface ListParts {
  readonly cautions: readonly SaidCaution[];
  readonly display: Display;
}

/** Cautions of the table in a column, each with who decides and its source. */
export function CautionList({ cautions, display }: ListParts) {
  return (
    <Cautions>
      {cautions
        .map((each) => cautionInUnits(each, display))
        .map((caution) => (
          <Caution key={caution.says} decides={sayDecided(caution)}>
            {sayUnits(caution.says)}
          </Caution>
        ))}
    </Cautions>
  );
}
