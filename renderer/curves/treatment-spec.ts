import { degreesOf, type Degrees } from './degrees.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import type { CurvePhase, CurveSpec, CurveWords } from './curve-spec.ts';
import { plannedCore, type PlannedCore } from './planned-core.ts';
import { roundTicks } from './round-ticks.ts';

const mediums = { steam: 'steam', boil: 'water', bake: 'oven' } as const;

/** One planned batch: the temperature of the medium, and when the core reaches it. */
export function treatmentSpec(
  way: TreatmentWay,
  plan: TreatmentPlan,
  { under, display }: { readonly under: string; readonly display: Display },
): CurveSpec | undefined {
  const core = plannedCore(plan);
  if (!core) return undefined;
  const write = (figure: number, decimals = 2) => writeNumber(figure, decimals, display);
  const degrees = degreesOf(display);
  const heat = degrees.of(plan.temperature);
  const phases = phasesOf(plan);
  const hold = phases.find(({ words }) => words.startsWith('hold'));
  const title = 'The hold begins when the core is there, not the vessel';
  return {
    title,
    under,
    label: `${title}: the ${mediums[way]} stands at ${write(heat)} degrees, the core is at ${write(degrees.of(core.target))} after ${write(core.comeUp)} minutes, then ${plan.hold} minutes of hold`,
    across: { unit: 'minutes', most: plan.batchMinutes, ticks: [0, ...phases.map(({ to }) => to)] },
    up: { unit: degrees.unit, most: roundTicks(heat * 1.12).at(-1) ?? heat },
    lines: [
      {
        ink: 'muted',
        thin: true,
        dashed: true,
        pieces: [
          [
            [core.from, heat],
            [hold?.to ?? plan.batchMinutes, heat],
          ],
        ],
      },
      { ink: 'ink', pieces: [core.points.map(([minute, degC]) => [minute, degrees.of(degC)])] },
    ],
    phases,
    words: wordsOf({ way, core, hold: hold?.to ?? 0, heat, degrees, write }),
    table: {
      headings: ['minute', `core ${degrees.unit}`, 'part'],
      rows: core.points
        .filter(([minute], at) => at === 0 || minute % 5 === 0 || at === core.points.length - 1)
        .map(([minute, degC]) => [write(minute, 0), write(degrees.of(degC)), partAt(minute, phases)]),
    },
  };
}

interface TreatmentTerms {
  readonly way: TreatmentWay;
  readonly core: PlannedCore;
  /** The end of the hold. */
  readonly hold: number;
  /** Of the steam, the water or the oven, in the workshop's degrees. */
  readonly heat: number;
  readonly degrees: Degrees;
  readonly write: (figure: number) => string;
}

function wordsOf({ way, core, hold, heat, degrees, write }: TreatmentTerms): readonly CurveWords[] {
  const there = `core there after ${write(core.comeUp)} min`;
  const medium = `${mediums[way]} ${write(heat)} ${degrees.unit}`;
  return [
    {
      at: [core.from + core.comeUp, degrees.of(core.target)],
      words: there,
      ink: 'ink',
      lie: 'right',
      away: 22,
      dot: true,
    },
    { at: [hold, heat], words: medium, ink: 'muted', lie: 'left' },
  ];
}

function partAt(minute: number, phases: readonly CurvePhase[]): string {
  return phases.find(({ to }) => minute < to)?.words ?? 'hold';
}

function phasesOf({ steps }: TreatmentPlan): readonly CurvePhase[] {
  let from = 0;
  return steps.map(({ name, minutes }) => {
    const phase = {
      from,
      to: from + minutes,
      words: name === 'hold' ? `hold, ${minutes} min` : name,
      strong: name === 'hold',
    };
    from += minutes;
    return phase;
  });
}
