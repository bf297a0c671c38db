import { actNames } from '#shared-calc/words/act-names.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { Figure } from './figure.tsx';
import type { HouseView, PanelActs } from './panel-view.ts';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { Unseen } from '#renderer/kit/unseen.tsx';
import css from './working-panel.module.css';

interface House {
  readonly house: HouseView;
  readonly acts: Pick<PanelActs, 'backToHouse' | 'sendToHouse' | 'clientAsked'>;
}

/** The house value, the acts that restore it or send to it, who asked for the local value, and what that changes. */
export function HousePart({ house, acts }: House) {
  return (
    <section class={css['house']}>
      <h3>House value</h3>
      <p class={css['figure']}>
        <Figure of={house} />
      </p>
      <Buttons>
        {house.canGoBack && <Button onClick={acts.backToHouse}>{actNames.backToHouse}</Button>}
        {house.canSend && <Button onClick={acts.sendToHouse}>{actNames.sendToHouse}</Button>}
      </Buttons>
      <Checkbox
        label="The client asked for this"
        on={house.asked.byClient}
        closed={house.asked.closed}
        turn={acts.clientAsked}
      />
      {house.effects.length > 0 && (
        <Table
          class={css['effects']}
          caption={house.caption}
          rows={house.effects}
          keyOf={({ label }) => label}
          columns={[
            { names: true, cell: ({ label }) => label },
            {
              figure: true,
              cell: ({ houseFigure }) => (
                <>
                  <Unseen>house </Unseen>
                  {houseFigure}
                </>
              ),
            },
            {
              figure: true,
              cell: (effect) => (
                <>
                  <Unseen>now </Unseen>
                  <Figure of={effect} />
                </>
              ),
            },
          ]}
        />
      )}
    </section>
  );
}
