import { openPages } from '#tests/browser/pages.ts';
import { buildStandIn } from '#tests/renderer/places/stand-in/build.ts';
const out = await buildStandIn();
const pages = await openPages(out);
const [,, list, w='1280', h='800', scheme='light'] = process.argv;
for (const place of (list ?? '').split(',')) {
  const page = await pages.open(place, { width: Number(w), height: Number(h), scheme: scheme as 'light' });
  await page.waitForTimeout(500);
  await page.screenshot({ path: `/tmp/shots/${place.replaceAll('/', '_')}-${w}-${scheme}.png` });
  await page.context().close();
}
console.log(pages.complaints());
await pages.close();
