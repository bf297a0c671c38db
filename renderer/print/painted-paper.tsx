import type { ComponentChildren } from 'preact';
import { sheetsOf, type PaperDocument, type PaperSection } from '#shared-calc/papers/document.ts';
import { sayOnPaper } from '#shared-calc/words/say-on-paper.ts';
import { BoxToTick } from './box-to-tick.tsx';
import { PaperBlocks } from './paper-blocks.tsx';
import { Letterhead, Paper, Sheet } from './paper.tsx';
import css from './painted-paper.module.css';
import paper from './paper.module.css';

interface PaintedPaperParts {
  readonly document: PaperDocument;
  readonly letterhead: readonly string[];
  readonly look?: 'large' | 'hung';
  /** Painted where the document has a picture. */
  readonly picture?: ComponentChildren;
  /** The picture is narrow enough to be beside what comes before it. */
  readonly beside?: boolean;
}

/** Any paper, as the command line writes it. */
export function PaintedPaper({ document, letterhead, look, picture, beside = false }: PaintedPaperParts) {
  const who = look === 'large' ? letterhead.slice(0, 1) : letterhead;
  return (
    <Paper label={document.title} foot={document.title} {...(look && { look })}>
      {sheetsOf(document).map(({ title, sections }) => {
        const painted = (
          <>
            <Letterhead title={title ?? document.title} who={who} />
            <Sections
              sections={sections}
              title={title ?? document.title}
              picture={picture}
              beside={beside}
              hung={look === 'hung'}
            />
          </>
        );
        return title === undefined ? (
          painted
        ) : (
          <Sheet key={title} label={title}>
            {painted}
          </Sheet>
        );
      })}
    </Paper>
  );
}

interface PictureParts {
  /** Of the sheet: it names a table that is under no heading. */
  readonly title: string;
  readonly picture: ComponentChildren;
  readonly beside: boolean;
}

interface SectionsParts extends PictureParts {
  readonly sections: readonly PaperSection[];
  readonly hung: boolean;
}

/** On a card that hangs, the sections under its settings are in two columns. */
function Sections({ sections, hung, ...parts }: SectionsParts) {
  const settings = sections.findIndex(({ blocks }) =>
    blocks.some((block) => block.is === 'facts' && block.look === 'settings'),
  );
  const whole = hung ? settings + 1 : sections.length;
  const paint = (some: readonly PaperSection[]) =>
    some.map((section, at) => <Section key={at} section={section} {...parts} />);
  return (
    <>
      {paint(sections.slice(0, whole))}
      {whole < sections.length && <div class={css['columns']}>{paint(sections.slice(whole))}</div>}
    </>
  );
}

interface SectionParts extends PictureParts {
  readonly section: PaperSection;
}

function Section({ section: { heading, blocks }, title, picture, beside }: SectionParts) {
  const at = blocks.findIndex((block) => block.is === 'picture');
  if (at >= 0)
    return (
      <>
        <div class={beside ? css['beside'] : css['brief']}>
          <div>
            <PaperBlocks blocks={blocks.slice(0, at)} label="" />
          </div>
          {picture}
        </div>
        <PaperBlocks blocks={blocks.slice(at + 1)} label={heading?.text ?? `Table: ${title}`} />
      </>
    );
  if (!heading) return <PaperBlocks blocks={blocks} label={`Table: ${title}`} />;
  return (
    <section class={classOf({ heading, blocks })}>
      <h3>
        {heading.step && <BoxToTick />} {sayOnPaper(heading.text)}
        {heading.aside !== undefined && <small>{heading.aside}</small>}
      </h3>
      <PaperBlocks blocks={blocks} label={heading.text} />
    </section>
  );
}

/** A section with no more rows than this is not split over two pages; a step of work never is. */
const SHORT = 7;

function classOf({ heading, blocks }: PaperSection): string | undefined {
  if (heading?.step) return css['step'];
  const rows = blocks.reduce((sum, block) => sum + rowsIn(block), 0);
  return rows <= SHORT ? paper['together'] : undefined;
}

function rowsIn(block: PaperSection['blocks'][number]): number {
  if ('rows' in block) return block.rows.length;
  return 'items' in block ? block.items.length : 1;
}
