import { sayAllFigures, sayFigures } from '#shared-calc/quantity/said-figures.ts';
import { degreesOf } from '#renderer/curves/degrees.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { useMemo } from 'preact/hooks';
import { ChoiceField, TextField, Fields } from '#renderer/kit/field.tsx';
import { Curve } from '#renderer/curves/curve.tsx';
import { treatmentSpec } from '#renderer/curves/treatment-spec.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { Batches } from './batches.tsx';
import { leavesOf } from '#shared-calc/prepare/leaves-of.ts';
import type { PrepareState } from './prepare-state.ts';
import type { PartView } from './part-view.ts';
import { writeCards } from '#renderer/frame/prepare-route.ts';
import { Caution, Cautions } from '#renderer/kit/caution.tsx';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { Checkbox, Radio } from '#renderer/kit/checkbox.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { Table, type Column } from '#renderer/kit/table.tsx';
import { askTreatment, fieldNames, type TreatmentWish, type TreatmentTexts } from './treatment-texts.ts';
import css from '#renderer/kit/part-page.module.css';

/** Leaf treatment: all methods at the workshop's height, one of them with its core, and the batches. */
export function LeavesPart(view: PartView) {
  const { state, context, job } = view;
  const { workshop } = context;
  const worked = context.job(job?.id ?? '');
  const ofJob = worked && leavesOf(worked.bench);
  const texts = state.treatment.value;
  const { decimalComma } = workshop;
  const treatment = askTreatment(texts, { place: workshop, ofJob, decimalComma });
  return (
    <>
      <TreatmentForm
        state={state}
        ofJob={ofJob}
        wrong={treatment.ok ? undefined : treatment.fault}
        decimalComma={decimalComma}
      />
      {treatment.ok && <Ways asked={treatment.value} state={state} display={context.display} />}
      {treatment.ok && <ChosenWay view={view} asked={treatment.value} />}
      <Batches view={view} asked={treatment.ok ? treatment.value : undefined} moistened={texts.moistened} />
    </>
  );
}

interface FormParts {
  readonly state: PrepareState;
  readonly ofJob: number | undefined;
  readonly wrong: string | undefined;
  readonly decimalComma: boolean;
}

function TreatmentForm({ state, ofJob, wrong, decimalComma }: FormParts) {
  const texts = state.treatment.value;
  const set = (some: Partial<TreatmentTexts>) => (state.treatment.value = { ...texts, ...some });
  const hint =
    ofJob === undefined ? undefined : `empty: the ${writeNumber(ofJob, 2, { decimalComma })} L of the open job`;
  const leaves = {
    label: 'Leaves, loose',
    unit: 'L',
    figure: true,
    text: texts.leaves,
    typing: (text: string) => set({ leaves: text }),
  };
  return (
    <section>
      <h2>How much, what for, in what</h2>
      <Fields>
        <TextField {...leaves} {...(hint !== undefined && { hint })} />
        <ChoiceField
          label="Aim"
          value={texts.aim}
          options={[
            { value: 'clean', label: 'clean' },
            { value: 'sterile', label: 'sterile, by steam only' },
          ]}
          choose={(aim) => set({ aim: aim === 'sterile' ? 'sterile' : 'clean', way: undefined })}
          hint="clean is enough: a living tank is not sterile"
        />
        <Vessel name="pot" unit="L" usual="21" texts={texts} set={set} />
        <Vessel name="potFill" unit="%" usual="60" texts={texts} set={set} />
        <Vessel name="oven" unit="L" usual="60" texts={texts} set={set} />
        <Vessel name="ovenFill" unit="%" usual="50" texts={texts} set={set} />
      </Fields>
      <Checkbox label="Moistened 16 h before" on={texts.moistened} turn={(moistened) => set({ moistened })} />
      <Checkbox label="Tray in the oven uncovered" on={texts.open} turn={(open) => set({ open })} />
      {wrong !== undefined && <Fault>{wrong}</Fault>}
    </section>
  );
}

interface VesselParts {
  readonly name: keyof typeof fieldNames;
  readonly unit: string;
  readonly usual: string;
  readonly texts: TreatmentTexts;
  readonly set: (some: Partial<TreatmentTexts>) => void;
}

function Vessel({ name, unit, usual, texts, set }: VesselParts) {
  return (
    <TextField
      label={fieldNames[name]}
      unit={unit}
      figure
      hint={`empty: ${usual} ${unit}`}
      text={texts[name]}
      typing={(text) => set({ [name]: text })}
    />
  );
}

interface WaysParts {
  readonly asked: TreatmentWish;
  readonly state: PrepareState;
  readonly display: Display;
}

const wayWords = { steam: 'Pressure steam', boil: 'Boil', bake: 'Bake' } as const;

function Ways({ asked: { ways, chosen }, state, display }: WaysParts) {
  const degrees = degreesOf(display);
  const choose = (way: TreatmentTexts['way']) => (state.treatment.value = { ...state.treatment.value, way });
  return (
    <Table
      scroll="Ways side by side"
      caption="Ways side by side; minutes of all batches one after the other"
      rows={ways}
      keyOf={({ way }) => way}
      mark={({ way }) => (way === chosen.way ? 'here' : undefined)}
      columns={[
        {
          head: 'Way',
          names: true,
          cell: ({ way }) => (
            <Radio name="way" label={wayWords[way]} on={way === chosen.way} choose={() => choose(way)} />
          ),
        },
        {
          head: 'Batches',
          figure: true,
          cell: ({ plan }) =>
            plan.ok ? plan.value.batches : { span: 7, says: sayUnits(sayAllFigures(plan.fault, display)) },
        },
        planned(`At ${degrees.unit}`, ({ temperature }) => writeNumber(degrees.of(temperature), 2, display)),
        planned('Heat-up, core', ({ comeUp }) => comeUp),
        planned('Hold', ({ hold }) => hold),
        planned('A batch', ({ batchMinutes }) => batchMinutes),
        planned('By the clock', ({ minutes }) => `${minutes} min`),
        planned('Attended', ({ attended }) => `${attended} min`),
        { head: 'Suggested', cell: ({ suggested }) => suggested && 'suggested' },
      ]}
    />
  );
}

type Way = TreatmentWish['ways'][number];
type Planned = Extract<Way['plan'], { ok: true }>['value'];

/** A figure of a method that can be planned. */
function planned(head: string, figureOf: (plan: Planned) => string | number): Column<Way> {
  return { head, figure: true, cell: ({ plan }) => plan.ok && figureOf(plan.value) };
}

interface ChosenParts {
  readonly view: PartView;
  readonly asked: TreatmentWish;
}

function ChosenWay({ view: { context, job }, asked: { chosen, leavesL } }: ChosenParts) {
  const { display } = context;
  const { altitudeM, decimalComma } = context.workshop;
  const { way, plan } = chosen;
  const spec = useMemo(() => {
    if (!plan.ok) return undefined;
    const { batches, batchMinutes } = plan.value;
    const under = `Loose leaves, ${wayWords[way].toLowerCase()}${altitudeM === undefined ? '' : ` at ${sayFigures(`${altitudeM} m`, display)}`}; one of ${batches} ${batches === 1 ? 'batch' : 'batches'}, ${batchMinutes} minutes each`;
    return treatmentSpec(way, plan.value, { under, display });
  }, [JSON.stringify(plan), way, altitudeM, display]);
  if (!plan.ok) return null;
  return (
    <section class={css['twoColumns']}>
      {spec ? (
        <Curve spec={spec} decimalComma={decimalComma} />
      ) : (
        <EmptyNote>A pot is timed from when it boils, not by its core.</EmptyNote>
      )}
      <div>
        <h2>To mind</h2>
        <Cautions>
          {plan.value.warnings.map(({ says, decides }) => (
            <Caution key={says} decides={`${whoDecides(decides)}.`}>
              {sayUnits(sayAllFigures(says, display))}
            </Caution>
          ))}
        </Cautions>
        <CautionList cautions={plan.value.cautions} display={display} />
        <p>
          <Link href={writeCards(job?.id, 'treatment')}>
            On paper, to stand by: {writeNumber(leavesL, 2, { decimalComma })} L
          </Link>
        </p>
      </div>
    </section>
  );
}
