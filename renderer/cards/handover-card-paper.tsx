import { Letterhead, Paper } from '#renderer/print/paper.tsx';
import { paperWeekday } from '#renderer/print/paper-words.ts';
import { sayUnits } from '#renderer/text/say-units.ts';
import type { HandoverCard } from '#shared-calc/papers/handover-card.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import { CautionList, Reminders } from './caution-list.tsx';
import { Tick } from './tick.tsx';
import './cards.css';

export interface HandoverParts {
  readonly title: string;
  readonly letterhead: readonly string[];
  readonly cards: readonly HandoverCard[];
}

/** The card that stays with the tank, one a size. */
export function HandoverCardPaper({ title, letterhead, cards }: HandoverParts) {
  return (
    <Paper label="Handover card" foot={`Handover card, ${title}`} look="large">
      {cards.map((card) => (
        <section key={card.size} class="sheet-of-list">
          <Letterhead title={`Handover card ${card.size}`} who={letterhead} />
          <p>
            {title}. {card.tank}. Handed over {paperWeekday(card.handover)}.
          </p>
          <Kept card={card} />
          <Tasks card={card} />
          <Signs card={card} />
          <People people={card.people} />
          <section class="together">
            <h3>When we come</h3>
            <ul>
              {card.visits.map(({ act, date }) => (
                <li key={date}>
                  {paperWeekday(date)}: {careWords[act] ?? act}
                </li>
              ))}
            </ul>
          </section>
          <section>
            <h3>To mind</h3>
            <CautionList cautions={card.cautions} />
          </section>
          <Reminders title="Who is near it" reminders={card.audience} />
          <Reminders title="Protected kinds" reminders={card.protection} />
          <section class="together">
            <h3>What is ours, from the quote</h3>
            {card.terms.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </section>
          <div class="sign-here">
            <p>For the client</p>
            <p>For the workshop</p>
            <p>Day</p>
          </div>
        </section>
      ))}
    </Paper>
  );
}

interface Part {
  readonly card: HandoverCard;
}

function Kept({ card: { keep } }: Part) {
  return (
    <section class="together">
      <h3>Keep it so</h3>
      <table class="paper-lines">
        <tbody>
          {keep.map(([what, is]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{sayUnits(is)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Tasks({ card: { tasks } }: Part) {
  return (
    <section>
      <h3>What is done when</h3>
      <table class="paper-lines">
        <tbody>
          {tasks.map(({ when, acts }) => (
            <tr key={when}>
              <th scope="row">{when}</th>
              <td>
                <ul class="ticked">
                  {acts.map((act) => (
                    <li key={act}>
                      <Tick /> {act}
                    </li>
                  ))}
                </ul>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Signs({ card: { normal, notNormal } }: Part) {
  return (
    <>
      <section class="together">
        <h3>This is normal</h3>
        <ul>
          {normal.map((says) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      </section>
      <section class="together">
        <h3>This is not</h3>
        <table class="paper-lines">
          <tbody>
            {notNormal.map(([sign, act]) => (
              <tr key={sign}>
                <th scope="row">{sign}</th>
                <td>{act}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

function People({ people }: { readonly people: readonly string[] }) {
  return (
    <section class="together">
      <h3>Whom to call</h3>
      <table class="paper-lines to-write">
        <thead class="unseen">
          <tr>
            <th scope="col">who</th>
            <th scope="col">name and number</th>
          </tr>
        </thead>
        <tbody>
          {people.map((who) => (
            <tr key={who}>
              <th scope="row">{who}</th>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
