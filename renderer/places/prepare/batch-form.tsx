import { idsOf } from '#shared-calc/acts/act.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { useState } from 'preact/hooks';
import { TextField, Fields } from '#renderer/kit/field.tsx';
import { PickOne } from '#renderer/kit/pick-field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Material } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { leafMaterials } from '#shared-calc/prepare/leaves-of.ts';
import type { PartView } from './part-view.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { TreatmentWish } from './treatment-texts.ts';
import css from './prepare.module.css';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A batch, as typed. */
interface BatchTexts {
  readonly material: string;
  readonly litres: string;
  readonly collectedAt: string;
  readonly on: string;
  readonly note: string;
}

interface BatchFormParts {
  readonly view: PartView;
  readonly asked: TreatmentWish | undefined;
  readonly moistened: boolean;
}

const noBatch: BatchTexts = { material: '', litres: '', collectedAt: '', on: '', note: '' };

/** Records a treated batch; its label shows what it stands for. */
export function BatchForm({ view, asked, moistened }: BatchFormParts) {
  const [texts, setTexts] = useState(noBatch);
  const [wrong, setWrong] = useState<string>();
  const { state, context, job } = view;
  const materials = leafMaterials(context.records);
  const [first] = materials;
  if (!first) {
    return (
      <EmptyNote>
        No leaves in the material book: <a href={writeRoute('material-book')}>put them in first.</a>
      </EmptyNote>
    );
  }
  const write = () => {
    const batch = readBatch({ view, asked, moistened }, { ...texts, material: texts.material || first.id });
    const written = (change: Change) => {
      setTexts(noBatch);
      location.hash = writePrepare(job?.id, 'leaves', ...idsOf(change));
    };
    const { doAct, refuse } = state.api;
    setWrong(batch.ok ? doAct('newBatch', batch.value, written) : refuse(batch.fault));
  };
  const set = (some: Partial<BatchTexts>) => setTexts({ ...texts, ...some });
  return (
    <div class={css['batchForm']}>
      <BatchEntries view={view} asked={asked} materials={materials} texts={texts} set={set} write={write} />
      {wrong !== undefined && <Fault>{sayUnits(wrong)}</Fault>}
      <Buttons>
        <Button look="main" onClick={write}>
          Write down a batch
        </Button>
      </Buttons>
    </div>
  );
}

interface EntriesParts extends Omit<BatchFormParts, 'moistened'> {
  readonly materials: readonly Material[];
  readonly texts: BatchTexts;
  readonly set: (some: Partial<BatchTexts>) => void;
  readonly write: () => void;
}

function BatchEntries({ view, asked, materials, texts, set, write }: EntriesParts) {
  const { today, workshop } = view.context;
  const load = loadOf(asked);
  const text = (key: keyof BatchTexts) => ({
    text: texts[key],
    typing: (typed: string) => set({ [key]: typed }),
    enter: write,
  });
  return (
    <Fields>
      <PickOne
        label="Leaves"
        value={texts.material || (materials[0]?.id ?? '')}
        options={materials.map(({ id, label }) => ({ value: id, label }))}
        choose={(material) => set({ material })}
      />
      <TextField
        label="In this batch"
        unit="L"
        figure
        {...text('litres')}
        {...(load !== undefined && { hint: `empty: ${writeNumber(load, 2, workshop)} L` })}
      />
      <TextField label="Collected at" hint="away from roads, where nothing is sprayed" {...text('collectedAt')} />
      <TextField
        label="Treated on"
        hint={`empty: ${writeDay(today, view.context.display.dateOrder)}`}
        {...text('on')}
        days={view.context}
      />
      <TextField label="Note" {...text('note')} />
    </Fields>
  );
}

/** Litres of one batch; all batches are equal. */
function loadOf(asked: TreatmentWish | undefined): number | undefined {
  if (!asked?.chosen.plan.ok) return undefined;
  return asked.leavesL / asked.chosen.plan.value.batches;
}

/** An empty field defaults to one batch of the selected method, today. */
function readBatch(
  { view, asked, moistened }: BatchFormParts,
  texts: BatchTexts,
): Result<ActInputs['newBatch'], string> {
  if (!asked) return failed('Say first how much and what for.');
  const { chosen, aim } = asked;
  if (!chosen.plan.ok) return chosen.plan;
  const { today, workshop } = view.context;
  const { decimalComma } = workshop;
  const load = writeNumber(loadOf(asked) ?? 0, 2, { decimalComma, group: false });
  const measure = { name: 'Litres', stored: 'L', low: 0.1, high: 10_000 };
  const litres = said(readMeasure(texts.litres || load, measure, { decimalComma }));
  if (!litres.ok) return litres;
  const on = said(readDay(texts.on || today, 'Treated on', { ...view.context, nearest: true }));
  if (!on.ok) return on;
  const { material, collectedAt, note } = texts;
  return ok({ material, collectedAt, note, moistened, way: chosen.way, aim, litres: litres.value ?? 0, on: on.value });
}
