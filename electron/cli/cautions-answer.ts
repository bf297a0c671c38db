import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import { sayAllFigures } from '#shared-calc/quantity/said-figures.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { PaperCaution } from '#shared-calc/papers/document.ts';
import type { Warning } from '#shared-calc/cautions/warning.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';

/** A caution as `--json` gives it; its source has the address of a publication, which nobody has looked up. */
export function cautionJson({ id, says, decides, source, at }: SaidCaution): Record<string, string | null> {
  return { id, says, decides, source: at === undefined ? source : `${source}, ${at} (address from memory)` };
}

/** What a paper minds: a sentence of its own figures, such as a check that fails, is a warning. */
export function mindedJson(minded: readonly PaperCaution[]) {
  return {
    warnings: minded.filter(({ id }) => id === undefined).map(({ says, decides }) => ({ says, decides })),
    cautions: minded.flatMap(({ id, source = '', ...caution }) =>
      id === undefined ? [] : [cautionJson({ ...caution, id, source })],
    ),
  };
}

/** What stands under the figures of a table, after an empty line: warnings first. */
export function underFigures(
  warnings: readonly Warning[],
  cautions: readonly SaidCaution[],
  display: Display,
): readonly string[] {
  const lines = mindedLines(warnings, cautions, display);
  return lines.length > 0 ? ['', ...lines] : [];
}

export function mindedLines(
  warnings: readonly Warning[],
  cautions: readonly SaidCaution[],
  display: Display,
): readonly string[] {
  return [
    ...warnings.map(({ says, decides }) => `Warning: ${sayAllFigures(says, display)} (${whoDecides(decides)})`),
    ...cautions
      .map((caution) => cautionInUnits(caution, display))
      .map(({ says, decides, source }) => `Caution: ${says} (${whoDecides(decides)}; ${source})`),
  ];
}
