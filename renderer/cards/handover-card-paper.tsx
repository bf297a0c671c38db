import { Table } from '#renderer/kit/table.tsx';
import { Letterhead, Paper, Sheet, SignHere } from '#renderer/print/paper.tsx';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import { sayUnits } from '#shared-calc/words/say-units.ts';
import type { HandoverCard, HandoverSign } from '#shared-calc/papers/handover-card.ts';
import type { StepCaution } from '#shared-calc/prepare/cautions.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import { Minded } from './caution-list.tsx';
import { toWrite, writeTable } from '#renderer/print/to-write.ts';
import paper from '#renderer/print/paper.module.css';
import css from './handover-card.module.css';

export interface HandoverParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly cards: readonly HandoverCard[];
}

/** The one page that hangs next to a tank, one a size. */
export function HandoverCardPaper({ title, letterhead, cards }: HandoverParts) {
  return (
    <Paper label="Handover card" foot={`Handover card, ${title}`} look="hung">
      {cards.map((card) => (
        <Sheet key={card.size} label={`Handover card ${card.called}`}>
          <Letterhead title={`Handover card ${card.called}`} who={letterhead} />
          <p>
            {title}. {card.tank}. Handed over {paperWeekday(card.handover)}.
          </p>
          <KeepRows card={card} />
          <div class={css['columns']}>
            <RunIn title="What is done when" rows={card.tasks.map(({ when, acts }) => [when, acts.join(' ')])} />
            <section class={paper['together']}>
              <h3>This is normal</h3>
              <ul>
                {card.normal.map((says) => (
                  <li key={says}>{says}</li>
                ))}
              </ul>
            </section>
            <RunIn title="This is not" rows={card.notNormal.map((sign) => signRow(sign, card))} />
            <People people={card.people} />
            <RunIn title="When we come" rows={visitRows(card)} />
            <Minded {...card} cautions={card.cautions.filter(isStillToSay(card))} named />
            <section>
              <h3>What is ours, from the quote</h3>
              <p>{card.terms.join(' ')}</p>
            </section>
            <SignHere lines={['For the client', 'For the workshop', 'Day']} />
          </div>
        </Sheet>
      ))}
    </Paper>
  );
}

interface Part {
  readonly card: HandoverCard;
}

function KeepRows({ card: { keep } }: Part) {
  return (
    <section>
      <h3>Keep it so</h3>
      <dl class={css['keep']}>
        {keep.map(([what, is]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{sayUnits(is)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

interface RunInParts {
  readonly title: string;
  readonly rows: readonly (readonly [what: string, says: string, decided?: string])[];
}

/** Rows with title and words on the same line. */
function RunIn({ title, rows }: RunInParts) {
  return (
    <section>
      <h3>{title}</h3>
      <dl class={css['runIn']}>
        {rows.map(([what, says, decided]) => (
          <div key={what}>
            <dt>{sayUnits(what)}:</dt>{' '}
            <dd>
              {sayUnits(says)} {decided !== undefined && <em>{decided}.</em>}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** A sign that shows a caution in full also names who decides. */
function signRow({ sign, act, step }: HandoverSign, { cautions }: HandoverCard): RunInParts['rows'][number] {
  const caution = cautions.find((each) => each.step === step);
  return caution ? [sign, act, whoDecides(caution.decides)] : [sign, act];
}

/** A caution that no sign shows in full. */
function isStillToSay({ notNormal }: HandoverCard): (caution: StepCaution) => boolean {
  return ({ step }) => notNormal.every((sign) => sign.step !== step);
}

/** The next visit first, with its weekday; visits of one kind together. */
function visitRows({ visits }: HandoverCard): RunInParts['rows'] {
  return [...Map.groupBy(visits, ({ act }) => act)].map(([act, same]) => [
    careWords[act] ?? act,
    same.map(({ date }) => (date === visits[0]?.date ? paperWeekday(date) : paperDay(date))).join('; '),
  ]);
}

function People({ people }: { readonly people: readonly string[] }) {
  return (
    <section class={paper['together']}>
      <h3>Whom to call</h3>
      <Table
        look="paper"
        class={writeTable}
        label="Whom to call"
        quietHeads
        rows={people}
        keyOf={(who) => who}
        columns={[{ head: 'who', names: true, cell: (who) => who }, toWrite('name and number')]}
      />
    </section>
  );
}
