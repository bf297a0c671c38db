import { useState } from 'preact/hooks';
import { ChoiceField, TextField, Fields } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Material } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { leafMaterials } from './job-leaves.ts';
import type { PartView } from './part-view.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import type { AskedTreatment } from './treatment-texts.ts';
import { newBatch, type BatchMade, type BatchTexts } from './write-batch.ts';

interface BatchFormParts {
  readonly view: PartView;
  readonly asked: AskedTreatment | undefined;
  readonly moistened: boolean;
}

const noBatch: BatchTexts = { material: '', litres: '', collectedAt: '', on: '', note: '' };

/** A batch that was treated, written down: what it stands for is on its label. */
export function BatchForm({ view, asked, moistened }: BatchFormParts) {
  const [texts, setTexts] = useState(noBatch);
  const [wrong, setWrong] = useState<string>();
  const { desk, context, job } = view;
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
    const made = madeFrom({ view, asked, moistened }, { ...texts, material: texts.material || first.id });
    setWrong(made.ok ? undefined : made.fault);
    if (!made.ok) return desk.hands.refuse(made.fault);
    desk.hands.apply(made.value.change);
    setTexts(noBatch);
    location.hash = writePrepare(job?.id, 'leaves', made.value.id);
  };
  const set = (some: Partial<BatchTexts>) => setTexts({ ...texts, ...some });
  return (
    <div class="batch-form">
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
      <ChoiceField
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
      <TextField label="Treated on" hint={`empty: ${today}`} {...text('on')} />
      <TextField label="Note" {...text('note')} />
    </Fields>
  );
}

/** Litres of one batch, all of them alike. */
function loadOf(asked: AskedTreatment | undefined): number | undefined {
  if (!asked?.chosen.plan.ok) return undefined;
  return asked.leavesL / asked.chosen.plan.value.batches;
}

/** What is left empty is one batch of the way chosen, today. */
function madeFrom({ view, asked, moistened }: BatchFormParts, texts: BatchTexts): Result<BatchMade, string> {
  if (!asked) return failed('Say first how much and what for.');
  const { chosen, aim } = asked;
  if (!chosen.plan.ok) return chosen.plan;
  const { records, today, workshop } = view.context;
  const { decimalComma } = workshop;
  const litres = texts.litres || writeNumber(loadOf(asked) ?? 0, 2, { decimalComma, group: false });
  return newBatch(
    records,
    { ...texts, litres, on: texts.on || today },
    { way: chosen.way, aim, moistened, today, decimalComma },
  );
}
