import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { useMemo, useState } from 'preact/hooks';
import { Curve } from '#renderer/curves/curve.tsx';
import { probeSpecs } from '#renderer/curves/probe-spec.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import { batchLabel } from '#shared-calc/prepare/batch-label.ts';
import { coreHeat, readProbeLog, sayCoreHeat } from '#shared-calc/prepare/probe-log.ts';
import type { TreatmentBatch } from '#shared-calc/records/records.ts';
import type { PartView } from './part-view.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { writeCards } from '#renderer/frame/prepare-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Fault } from '#renderer/kit/note.tsx';
import { sayLogFaults } from '#shared-calc/words/say-log-faults.ts';
import { wasMoistened } from '#shared-calc/prepare/moistened.ts';
import css from './prepare.module.css';
import { NoteArea } from '#renderer/kit/note-area.tsx';

interface OpenBatchParts {
  readonly view: PartView;
  readonly batch: TreatmentBatch;
}

/** One batch: its label, its core log typed or pasted, and what that log proves. */
export function OpenBatch({ view: { state, context, job }, batch }: OpenBatchParts) {
  const [moistened, setMoistened] = useState(wasMoistened(batch));
  return (
    <article class={css['openBatch']} aria-label={`Batch ${batch.id}`}>
      <h3>{batch.id}</h3>
      <ul aria-label="On the label">
        {batchLabel(batch, context).map((line) => (
          <li key={line}>{sayUnits(line)}</li>
        ))}
      </ul>
      <p class={css['links']}>
        <Link href={writeCards(job?.id, 'labels', batch.id)}>{actNames.onPaper}</Link>
        <Button look="plain" onClick={() => state.api.doAct('removeBatch', { batch: batch.id })}>
          Remove
        </Button>
      </p>
      <CoreLog api={state.api} batch={batch} />
      {batch.aim === 'clean' && batch.way === 'bake' && (
        <Checkbox label="Moistened 16 h before" on={moistened} turn={setMoistened} />
      )}
      <Reached batch={batch} moistened={moistened} display={context.display} />
    </article>
  );
}

interface LogParts {
  readonly api: JobApi;
  readonly batch: TreatmentBatch;
}

function CoreLog({ api, batch }: LogParts) {
  const [text, setText] = useState(() => batch.log.map(([minute, degC]) => `${minute} ${degC}`).join('\n'));
  const [wrong, setWrong] = useState<string>();
  const take = () => {
    const log = readProbeLog(text);
    const rows = log.ok ? log.value.map(([minute, degC]): [number, number] => [minute, degC]) : [];
    setWrong(log.ok ? api.doAct('logBatch', { batch: batch.id, log: rows }) : api.refuse(sayLogFaults(log.fault)));
  };
  return (
    <div>
      <label class={css['log']}>
        Core probe: minutes and °C, a row a reading, typed or pasted; °F with F behind it, as 12 184F
        <NoteArea
          look="log"
          rows={8}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
          spellcheck={false}
        />
      </label>
      {wrong !== undefined && <Fault>{wrong}</Fault>}
      <Buttons>
        <Button look="main" onClick={take}>
          Take the log
        </Button>
      </Buttons>
    </div>
  );
}

interface ReachedParts {
  readonly batch: TreatmentBatch;
  readonly moistened: boolean;
  readonly display: Display;
}

/** What the batch's core log proves, in a sentence and in two charts. */
function Reached({ batch, moistened, display }: ReachedParts) {
  const { log, way, aim } = batch;
  const treatment = useMemo(() => ({ way, aim, moistened }), [way, aim, moistened]);
  const heat = useMemo(() => (log.length < 2 ? undefined : coreHeat(log, treatment)), [log, treatment]);
  const specs = useMemo(
    () => (heat?.ok ? probeSpecs(log, treatment, { heat: heat.value, display }) : []),
    [heat, display],
  );
  if (!heat) return <EmptyNote>No core log yet: what the leaves reached is not known.</EmptyNote>;
  if (!heat.ok) return <Fault>{heat.fault}</Fault>;
  return (
    <>
      <p class={heat.value.enough ? css['reached'] : `${css['reached']} ${css['short']}`} role="status">
        {sayUnits(sayCoreHeat(heat.value, display))}
      </p>
      <div class={css['plates']}>
        {specs.map((spec) => (
          <Curve key={spec.up.unit} spec={spec} decimalComma={display.decimalComma === true} />
        ))}
      </div>
    </>
  );
}
