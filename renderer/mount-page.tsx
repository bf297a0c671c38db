import { render } from 'preact';
import './look/tokens.css';
import './look/reset.css';
import { holdPageOnDrop } from './files/dropped-file.tsx';
import { followRoute } from './frame/follow-route.ts';
import { Page } from './frame/page.tsx';
import type { PageView } from './frame/page-view.ts';

/** Renders the page into the document; called once. */
export function mountPage(page: PageView): void {
  holdPageOnDrop(document);
  render(<Page page={page} route={followRoute(window)} />, document.body);
}
