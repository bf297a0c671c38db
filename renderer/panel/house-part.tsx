import { Button } from '#renderer/kit/button.tsx';
import { Figure } from './figure.tsx';
import type { EffectView, HouseView, PanelActs } from './panel-view.ts';
import { Tick } from './tick.tsx';

interface House {
  readonly house: HouseView;
  readonly acts: Pick<PanelActs, 'backToHouse' | 'sendToHouse' | 'clientAsked'>;
}

/** The house's value, the ways back to it and out to it, who asked for the local value, and what that changes. */
export function HousePart({ house, acts }: House) {
  return (
    <section class="house">
      <h3>House value</h3>
      <p class="house-figure">
        <Figure of={house} />
      </p>
      <div class="pair">
        {house.canGoBack && <Button onClick={acts.backToHouse}>Back to house</Button>}
        {house.canSend && <Button onClick={acts.sendToHouse}>Send to house</Button>}
      </div>
      <Tick
        label="The client asked for this"
        on={house.asked.byClient}
        closed={house.asked.closed}
        turn={acts.clientAsked}
      />
      {house.effects.length > 0 && (
        <table class="effects">
          <caption>{house.caption}</caption>
          <tbody>
            {house.effects.map((effect) => (
              <Effect key={effect.label} effect={effect} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Effect({ effect }: { readonly effect: EffectView }) {
  return (
    <tr>
      <th scope="row">{effect.label}</th>
      <td>
        <span class="unseen">house </span>
        {effect.houseFigure}
      </td>
      <td>
        <span class="unseen">now </span>
        <Figure of={effect} />
      </td>
    </tr>
  );
}
