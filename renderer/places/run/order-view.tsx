import { actNames } from '#shared-calc/words/act-names.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { comingIn, orderDocument } from '#shared-calc/papers/order-paper.ts';
import { printAct } from '#renderer/print/print-acts.ts';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { ShownRun } from './shown-run.ts';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

/** A supplier's order as a paper. */
export function orderView({ placement, context }: ShownRun, order: SupplierOrder): PlaceView {
  const { workshop, display, today } = context;
  const sent = orderDocument(order, display);
  const drafts = placement.drafts.filter(({ supplier }) => supplier.id === order.supplier);
  const ours = comingIn(context.records, drafts);
  return {
    about: order.name,
    aside: 'order, not placed yet',
    acts: [
      { label: 'Back to the run', run: () => (location.hash = writeRoute('run')) },
      { label: actNames.saveCsv, run: () => downloadCsv(`order ${order.name} ${today}`, orderCsv(order, workshop)) },
      printAct(window),
    ],
    work: (
      <ScrollPage look="paper" label="Paper">
        <PaintedPaper
          document={{ title: sent.title, blocks: [...sent.blocks, ...ours] }}
          letterhead={letterheadOf(workshop)}
        />
      </ScrollPage>
    ),
  };
}
