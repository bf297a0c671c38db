import { useMemo } from 'preact/hooks';
import { Curve } from '#renderer/curves/curve.tsx';
import { drainSpec } from '#renderer/curves/drain-spec.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { figureWords, readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { Mend, SheetRow } from '#shared-calc/prepare/mends.ts';
import { checkParts } from '#shared-calc/fields/uses.ts';

import { sayMargin } from '#shared-calc/prepare/say-margin.ts';
import { sayMend } from '#shared-calc/prepare/say-mend.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { countChecks, limitWords } from '#shared-calc/papers/checks-paper.ts';
import { sizeSheet, type SizeSheet } from '#shared-calc/papers/size-sheet.ts';
import { OpenAJob } from './open-a-job.tsx';
import type { PartView } from './part-view.ts';
import { sayMissing } from '#shared-calc/bench/waits.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import { Button } from '#renderer/kit/button.tsx';
import { Caution, Cautions } from '#renderer/kit/caution.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag, FlagRows } from '#renderer/kit/flag.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { sayUnsure, checkWords } from '#shared-calc/bench/source-words.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import css from './prepare.module.css';
import look from '#renderer/kit/part-page.module.css';
import { Muted, MutedLine } from '#renderer/kit/muted.tsx';

/** The checks of one size: what holds and by how much, and what would mend the rest, with its price. */
export function ChecksPart(view: PartView) {
  const { context, job, of } = view;
  const worked = context.job(job?.id ?? '');
  const sheet = useMemo(
    () => worked && sizeSheet(worked, { size: of, display: context.display }),
    [worked, of, context.display],
  );
  if (!job) return <OpenAJob context={context} part="checks" />;
  if (!sheet) return <EmptyNote>{job.id} has no size yet: take one first.</EmptyNote>;
  return (
    <>
      <Tabs label="Sizes">
        {sheet.sizes.map(({ key, called, label }) => (
          <a
            key={key}
            href={writePrepare(job.id, 'checks', key)}
            aria-current={key === sheet.size ? 'true' : undefined}
          >
            {called} <Muted>{label}</Muted>
          </a>
        ))}
      </Tabs>
      <Counted sheet={sheet} />
      <Missing job={job.id} sheet={sheet} />
      <OfThePlace sheet={sheet} display={context.display} />
      {checkParts.map((part) => (
        <PartOfSheet key={part} part={part} view={view} sheet={sheet} />
      ))}
      <Beside sheet={sheet} />
      <Drained sheet={sheet} decimalComma={context.workshop.decimalComma} />
    </>
  );
}

function Counted({ sheet }: { readonly sheet: SizeSheet }) {
  return <p class={look['counted']}>{countChecks([...sheet.place, ...sheet.rows])}</p>;
}

/** What checks wait for, each once, with the way to its box. */
function Missing({ job, sheet: { size, called, missing } }: { readonly job: string; readonly sheet: SizeSheet }) {
  if (missing.length === 0) return null;
  return (
    <FlagRows label="What checks wait for" class={css['checkRows']}>
      {missing.map((each) => (
        <li key={each.line.name}>
          <Flag state="needs" sign="need">
            not known yet
          </Flag>
          <a href={writeRoute('bench', job, each.line.name, size)}>
            {called}: {sayMissing(each)}
          </a>
        </li>
      ))}
    </FlagRows>
  );
}

/** Limits of the job's own location: they are changed on the job's page, not by a line of the size. */
function OfThePlace({ sheet: { place }, display }: { readonly sheet: SizeSheet; readonly display: Display }) {
  return (
    <section>
      <h2>The place</h2>
      <FlagRows class={css['checkRows']}>
        {place.map((check) => (
          <li key={check.use} data-state={lookOf(check)}>
            <StateFlag {...check} />
            <div>
              <b>{limitWords[check.use]}</b> {readUnits(check.says, display)}
              {check.state !== 'holds' && <MutedLine>{whoDecides(check.decides)}.</MutedLine>}
            </div>
          </li>
        ))}
      </FlagRows>
    </section>
  );
}

type Checked = Pick<PlaceCheck, 'state' | 'level'>;

function lookOf({ state, level }: Checked): string {
  return state === 'holds' ? 'holds' : level;
}

function StateFlag({ state, level, said = state }: Checked & { readonly said?: string }) {
  return (
    <Flag state={lookOf({ state, level })}>
      {state === 'holds' ? (
        said
      ) : (
        <>
          <Sign name={level} /> {state === 'fails' ? level : state}
        </>
      )}
    </Flag>
  );
}

interface PartParts {
  readonly part: (typeof checkParts)[number];
  readonly view: PartView;
  readonly sheet: SizeSheet;
}

const partWords: Readonly<Record<PartParts['part'], string>> = {
  air: 'Air and warmth',
  water: 'Water',
  light: 'Light',
  weight: 'Weight',
  lifting: 'Lifting',
  stack: 'Layers',
  other: 'Besides',
};

function PartOfSheet({ part, view, sheet }: PartParts) {
  const rows = sheet.rows.filter((row) => row.part === part);
  const isLit = part === 'light' && sheet.light !== undefined;
  if (rows.length === 0 && !isLit) return null;
  const { display } = view.context;
  return (
    <section>
      <h2>{partWords[part]}</h2>
      {isLit && sheet.light && (
        <p>
          {figureWords(toBase(sheet.light.reached, unitOf('mol/m2/d')), 'mol/m2/d', display)} at the plants, wanted{' '}
          {figureWords(toBase(sheet.light.wanted, unitOf('mol/m2/d')), 'mol/m2/d', display)}.
        </p>
      )}
      <FlagRows class={css['checkRows']}>
        {rows.map((row) => (
          <CheckRow key={row.line.name} row={row} view={view} sheet={sheet} />
        ))}
      </FlagRows>
      {part === 'weight' && sheet.parts.length > 0 && <HeaviestParts sheet={sheet} display={display} />}
    </section>
  );
}

interface RowParts {
  readonly row: SheetRow;
  readonly view: PartView;
  readonly sheet: SizeSheet;
}

function CheckRow({ row, view, sheet }: RowParts) {
  const { line, level, state, says, decides, margin, mends, unsure } = row;
  const { display, workshop } = view.context;
  const isWaiting = state === 'not known yet';
  return (
    <li data-state={lookOf({ state, level })}>
      <StateFlag state={state} level={level} said={checkWords(state, unsure)} />
      <div>
        <b>{lineLabel(line)}</b> {!isWaiting && state !== 'holds' && readUnits(says, display)}
        {margin && <MutedLine>{sayMargin(margin, display)}</MutedLine>}
        {!isWaiting && state !== 'holds' && decides !== '' && <MutedLine>{whoDecides(decides)}.</MutedLine>}
        {sayUnsure(unsure, line.name).map((words) => (
          <MutedLine key={words}>{words}</MutedLine>
        ))}
        {mends.map((mend) => (
          <p key={mend.says} class={css['mend']}>
            {readUnits(sayMend(mend, workshop), display)}{' '}
            {mend.changes.length > 0 && (
              <Button look="plain" onClick={() => takeMend(view, sheet.size, mend)}>
                Take it for {sheet.called}
              </Button>
            )}
          </p>
        ))}
      </div>
    </li>
  );
}

/** Writes a mend into the size as our own value; undone like any other edit. */
function takeMend({ state, job }: PartView, size: string, { changes }: Mend): void {
  if (!job) return;
  const writings = changes.map(({ line, text }) => ({ column: size, line, text }));
  state.api.doAct('setValues', { job: job.id, writings, by: 'us' });
}

function HeaviestParts({ sheet, display }: { readonly sheet: SizeSheet; readonly display: Display }) {
  return (
    <Table
      class={css['heaviest']}
      caption="Heaviest parts"
      rows={sheet.parts.slice(0, 6)}
      keyOf={({ line }) => line}
      columns={[
        { names: true, cell: ({ label }) => label },
        { figure: true, cell: ({ kg }) => figureWords(kg, 'kg', display) },
        { cell: ({ canBeLighter }) => (canBeLighter ? 'can be made lighter' : '') },
      ]}
    />
  );
}

/** What the figures of these checks do not cover. */
function Beside({ sheet: { beside } }: { readonly sheet: SizeSheet }) {
  return (
    <section>
      <h2>What these figures do not know</h2>
      <Cautions>
        {beside.map(({ labels, misleads, says, decides }) => (
          <Caution key={says} note={says} decides={`${whoDecides(decides)}.`}>
            {labels.join(', ')}: {misleads}
          </Caution>
        ))}
      </Cautions>
    </section>
  );
}

function Drained({ sheet: { drain }, decimalComma }: { readonly sheet: SizeSheet; readonly decimalComma: boolean }) {
  const spec = useMemo(
    () => (drain ? drainSpec(drain, decimalComma) : undefined),
    [JSON.stringify(drain), decimalComma],
  );
  return spec ? <Curve spec={spec} decimalComma={decimalComma} /> : null;
}
