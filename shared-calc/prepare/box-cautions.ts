import {
  cautionEntry,
  cautionsBeside,
  eachOnce,
  sayCaution,
  type CautionId,
  type FillFigure,
  type SaidCaution,
} from '#shared-calc/cautions/all-cautions.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { walk, type Rule } from '#shared-calc/rule/tree.ts';
import { functionInRules } from '#shared-calc/trade/all-functions.ts';

/**
 * What to mind at a cell: what the house wrote on its line, otherwise what is beside its use, otherwise what its
 * functions say of their figures; and always what its functions say of an act that can hurt.
 */
export function boxCautions({ line, rule }: Pick<Box, 'line' | 'rule'>, fill: FillFigure): readonly SaidCaution[] {
  const ofFunctions = rule ? functionCautions(rule) : [];
  const acts = ofFunctions.filter((id) => cautionEntry(id).against.length > 0);
  const beside = line.use ? cautionsBeside(line.use) : [];
  const figures = beside.length > 0 ? beside : ofFunctions.filter((id) => cautionEntry(id).against.length === 0);
  const ofTable = (ids: readonly CautionId[]) => ids.map((id) => sayCaution(id, fill));
  if (line.caution === undefined || line.caution === '') return eachOnce(ofTable([...figures, ...acts]));
  return eachOnce([houseCaution(line.caution, line.decides), ...ofTable(acts)]);
}

function houseCaution(says: string, decides = ''): SaidCaution {
  return { id: null, about: '', says, decides: decides === '' ? 'Builder' : decides, source: 'our own words' };
}

/** The cautions of every function that a rule calls. */
export function functionCautions(rule: Rule): readonly CautionId[] {
  const found = new Set<CautionId>();
  walk(rule, (part) => {
    const of = part.part === 'call' ? functionInRules(part.name) : undefined;
    for (const id of of?.cautions ?? []) found.add(id);
  });
  return [...found];
}
