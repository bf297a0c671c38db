import type { CautionOf, HazardousAct } from '#shared-calc/cautions/acts.ts';
import { sayCaution, type FillFigure, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { isUse, useOf } from '#shared-calc/fields/uses.ts';
import { heatWords } from './heat-words.ts';
import type { SizeFigures } from './size-figures.ts';

/** The cautions of an act where no tank is at hand. */
export function cautionsOf({ cautions }: HazardousAct): readonly SaidCaution[] {
  return cautions.map((each) => sayCaution(idOf(each)));
}

/** The cautions of an act that apply to this tank, with its figures. */
export function cautionsFor({ cautions }: HazardousAct, figures: SizeFigures): readonly SaidCaution[] {
  const fill = figuresOfTank(figures);
  return cautions.filter((each) => applies(each, figures)).map((each) => sayCaution(idOf(each), fill));
}

function idOf(of: CautionOf) {
  return typeof of === 'string' ? of : of.id;
}

function applies(of: CautionOf, { holds, surelyHolds }: SizeFigures): boolean {
  if (typeof of === 'string') return true;
  if (of.when !== undefined && !holds(of.when)) return false;
  return of.unless === undefined || !surelyHolds(of.unless);
}

/** A tank's figures for the braces of a caution. */
export function figuresOfTank(figures: SizeFigures, tank = 'This tank'): FillFigure {
  const { above, emergency } = heatWords(figures);
  const own: Partial<Record<Parameters<FillFigure>[0], string>> = { tank, tooWarm: above, emergency };
  return (figure) => {
    if (!isUse(figure)) return own[figure];
    return figures.number(figure, useOf(figure).unit) === undefined ? undefined : figures.words(figure);
  };
}
