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
  { under, decimalComma }: { readonly under: string; readonly decimalComma: boolean },
): CurveSpec | undefined {
  const core = plannedCore(plan);
  if (!core) return undefined;
  const write = (figure: number, decimals = 2) => writeNumber(figure, decimals, { decimalComma });
  const phases = phasesOf(plan);
  const hold = phases.find(({ words }) => words.startsWith('hold'));
  const title = 'The hold begins when the core is there, not the vessel';
  return {
    title,
    under,
    label: `${title}: the ${mediums[way]} stands at ${write(plan.temperature)} degrees, the core is at ${write(core.target)} after ${write(core.comeUp)} minutes, then ${plan.hold} minutes of hold`,
    across: { unit: 'minutes', most: plan.batchMinutes, ticks: [0, ...phases.map(({ to }) => to)] },
    up: { unit: '°C', most: roundTicks(plan.temperature * 1.12).at(-1) ?? 140 },
    lines: [
      {
        ink: 'muted',
        thin: true,
        dashed: true,
        pieces: [
          [
            [core.from, plan.temperature],
            [hold?.to ?? plan.batchMinutes, plan.temperature],
          ],
        ],
      },
      { ink: 'ink', pieces: [core.points] },
    ],
    phases,
    words: wordsOf({ way, plan, core, hold: hold?.to ?? 0, write }),
    table: {
      headings: ['minute', 'core °C', 'part'],
      rows: core.points
        .filter(([minute], at) => at === 0 || minute % 5 === 0 || at === core.points.length - 1)
        .map(([minute, degC]) => [write(minute, 0), write(degC), partAt(minute, phases)]),
    },
  };
}

interface TreatmentTerms {
  readonly way: TreatmentWay;
  readonly plan: TreatmentPlan;
  readonly core: PlannedCore;
  /** The end of the hold. */
  readonly hold: number;
  readonly write: (figure: number) => string;
}

function wordsOf({ way, plan, core, hold, write }: TreatmentTerms): readonly CurveWords[] {
  const there = `core there after ${write(core.comeUp)} min`;
  const medium = `${mediums[way]} ${write(plan.temperature)} °C`;
  return [
    { at: [core.from + core.comeUp, core.target], words: there, ink: 'ink', lie: 'right', away: 22, dot: true },
    { at: [hold, plan.temperature], words: medium, ink: 'muted', lie: 'left' },
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
