import { boxFigure, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { boxReader, type BoxReader } from '#shared-calc/bench/box-reader.ts';
import { surveyGiven } from '#shared-calc/jobs/survey-given.ts';
import { surveyLines } from '#shared-calc/jobs/survey-job.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job, Line, Records } from '#shared-calc/records/records.ts';

/** A figure as its field shows it: a rule has no unit after it. */
export interface ShownText {
  readonly text: string;
  readonly unit: string;
}

/** One figure of the survey: the job's own value, and the house value. */
export interface SurveyRow extends ShownText {
  readonly line: Line;
  readonly label: string;
  readonly house: ShownText;
  /** The allowed words, if it is not a figure. */
  readonly options: readonly string[];
  /** It is set for the whole job, not taken from the house. */
  readonly ofJob: boolean;
  /** It was asked; without a value of the job that answer holds. */
  readonly ofSurvey: boolean;
  /** Tanks of the job with a different local value. */
  readonly locals: readonly string[];
}

/** The survey's figures: whole-job values of the job's size bench, of the lines of all its recipes. */
export function surveyRows(
  records: Records,
  { job, lines }: { readonly job: Job; readonly lines: readonly Line[] },
  display: Display,
): readonly SurveyRow[] {
  const values = [...records.localValue.values()].filter((value) => value.job === job.id);
  const reader = boxReader(lines);
  const given = surveyGiven(job, lines);
  return surveyLines(lines).map((line) => {
    const ofLine = values.filter((value) => value.line === line.name);
    const whole = ofLine.find((value) => value.size === undefined);
    return {
      line,
      label: lineLabel(line),
      ...shownText(line, whole?.text ?? given.get(line.name)?.text ?? line.text, { reader, display }),
      house: shownText(line, line.text, { reader, display }),
      options: line.unit === 'yes_no' ? ['yes', 'no'] : (line.options ?? []),
      ofJob: whole !== undefined,
      ofSurvey: given.has(line.name),
      locals: ofLine.flatMap(({ size }) => records.size.get(size ?? '')?.tank ?? []),
    };
  });
}

function shownText(
  line: Line,
  text: string,
  { reader, display }: { readonly reader: BoxReader; readonly display: Display },
): ShownText {
  const reading = reader.read(line, text);
  if (reading.is !== 'figure') return { text, unit: '' };
  return { text: boxFigure(reading, line.unit, display), unit: shownUnitWords(line.unit, display) };
}
