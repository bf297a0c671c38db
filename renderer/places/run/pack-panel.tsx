import type { BookContext } from '#renderer/books/book-api.ts';
import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords, packWords } from '#shared-calc/quantity/goods-words.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { sayOrdered } from '#shared-calc/papers/needs-paper.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { PackOnSale } from '#shared-calc/buy/price-book.ts';
import type { Offer } from '#shared-calc/buy/offer.ts';
import { plantLines, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import type { ChosenMaterial } from '#shared-calc/buy/chosen-packs.ts';
import css from './run.module.css';
import { Muted, MutedLine } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';

export interface PackPanelParts {
  readonly need: ChosenMaterial | undefined;
  readonly packs: readonly PackOnSale[];
  /** Present if the material stands for a class of plants. */
  readonly plants: PlantOrder | undefined;
  readonly context: BookContext;
  readonly put: (need: ChosenMaterial, pack: string, count: number) => string | undefined;
  /** Takes the offer of a supplier by hand. */
  readonly take: (material: string, supplier: string) => void;
  /** Its supplier, too, was taken by hand. */
  readonly takenByHand: boolean;
  readonly back: (material: string) => void;
}

/** One material of the run: its packs, chosen by hand if wanted, and what that costs compared with the best. */
export function PackPanel({ need, ...parts }: PackPanelParts) {
  return (
    <SidePanel label="About the chosen material">
      {need ? (
        <Packs key={need.material} need={need} {...parts} />
      ) : (
        <MutedLine>Choose a material to choose its packs by hand.</MutedLine>
      )}
    </SidePanel>
  );
}

function Packs(parts: PackPanelParts & { readonly need: ChosenMaterial }) {
  const { need, plants, context } = parts;
  const { workshop, display } = context;
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  return (
    <>
      <PanelHead
        where="Shopping run"
        title={`${need.material} ${need.label}`}
        answer={money(need.costCoins)}
        under={`${goodsWords(need.used, need.unit, display)} needed, ${goodsWords(need.onHand, need.unit, display)} on hand`}
      />
      {need.sale === 'packs' && need.used - need.onHand > 1e-9 && <PackCounts {...parts} />}
      {need.offers && <Offers {...parts} offers={need.offers} />}
      {plants && (
        <section>
          <h3>By name</h3>
          <p>{sayOrdered(plants)}.</p>
          <p>{sayPlantCost(need, plants, money)}</p>
          {plants.alternates.length > 0 && (
            <MutedLine>Or instead: {plants.alternates.map(({ name }) => name).join('; ')}.</MutedLine>
          )}
        </section>
      )}
    </>
  );
}

/** At their own prices, and what the class price of a quote makes of them. */
function sayPlantCost(need: ChosenMaterial, plants: PlantOrder, money: (coins: number) => string): string {
  const count = need.packs.reduce((sum, pack) => sum + pack.count * pack.amount, 0);
  const lines = plantLines(plants, { count, classEachCoins: count > 0 ? need.costCoins / count : 0 });
  const own = lines.reduce((sum, { coins }) => sum + coins, 0);
  const ofClass = lines.reduce((sum, { classCoins }) => sum + classCoins, 0);
  const over = own === ofClass ? '' : `, ${money(Math.abs(own - ofClass))} ${own > ofClass ? 'over' : 'under'} it`;
  return `At their own prices ${money(own)}; the class price comes to ${money(ofClass)}${over}.`;
}

type OffersParts = Pick<PackPanelParts, 'context' | 'take'> & {
  readonly need: ChosenMaterial;
  readonly offers: readonly Offer[];
};

function Offers({ need, offers, context: { workshop, display }, take }: OffersParts) {
  const money = (coins: number) => showCoins(coins, workshop);
  return (
    <section>
      <Table
        look="ledger"
        caption={`Offers, ${workshop.currency}`}
        rows={offers}
        keyOf={({ supplier }) => supplier}
        columns={[
          { head: 'Supplier', names: true, cell: ({ name }) => name },
          {
            head: 'Packs',
            cell: ({ packs }) =>
              packs.map(({ count, amount }) => `${count} × ${packWords(amount, need.unit, display)}`).join(', '),
          },
          { head: 'Goods', figure: true, cell: ({ coins }) => money(coins) },
          { head: 'Run landed', figure: true, cell: ({ landedCoins }) => money(landedCoins) },
          {
            head: <Unseen>what may be done</Unseen>,
            cell: ({ supplier, name, taken, secondBest }) =>
              taken ? (
                <Muted>taken</Muted>
              ) : (
                <>
                  {secondBest && <Muted>second best </Muted>}
                  <Button
                    look="plain"
                    aria-label={`Take ${need.label} from ${name}`}
                    onClick={() => take(need.material, supplier)}
                  >
                    Take it
                  </Button>
                </>
              ),
          },
        ]}
      />
    </section>
  );
}

type CountsParts = Omit<PackPanelParts, 'need' | 'plants'> & { readonly need: ChosenMaterial };

function PackCounts({ need, packs, context: { workshop, display }, put, back, takenByHand }: CountsParts) {
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  return (
    <section>
      <h3>Packs</h3>
      <Fields>
        {packs.map((pack) => (
          <SettledField
            key={pack.id}
            label={`Packs of ${packWords(pack.amount, need.unit, display)}`}
            hint={`${money(pack.priceCoins)} each, since ${paperDay(pack.from, display)}`}
            figure
            text={String(need.packs.find(({ id }) => id === pack.id)?.count ?? 0)}
            settle={(text) => putCount(text, (count) => put(need, pack.id, count))}
          />
        ))}
      </Fields>
      <p class={css['againstBest']} role="status">
        {sayAgainstBest(need, money, (amount) => goodsWords(amount, need.unit, display))}
      </p>
      {(need.byHand || takenByHand) && (
        <Buttons>
          <Button onClick={() => back(need.material)}>Back to the best</Button>
        </Buttons>
      )}
    </section>
  );
}

function putCount(text: string, put: (count: number) => string | undefined): string | undefined {
  return /^\d{1,4}$/.test(text.trim()) ? put(Number(text.trim())) : 'Write a whole number from 0 to 9999.';
}

function sayAgainstBest(
  { byHand, overBestCoins, short, leftOver }: ChosenMaterial,
  money: (coins: number) => string,
  amount: (value: number) => string,
): string {
  if (short > 0) return `${amount(short)} short of the need.`;
  const left = leftOver > 1e-9 ? ` ${amount(leftOver)} is left.` : '';
  if (!byHand) return `The least there is.${left}`;
  return overBestCoins === 0 ? `As cheap as the best.${left}` : `${money(overBestCoins)} over the best.${left}`;
}
