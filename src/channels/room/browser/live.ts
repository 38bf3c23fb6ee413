import { keepDrafts } from './drafts.js';
import { watchIdle } from './idle.js';
import { offerPrint, showTimes } from './small.js';
import { offerReading } from './reading.js';
import { listenForNews } from './news.js';

/** Everything that script adds; each part works alone, and the page works without any. */
function begin(): void {
  const trouble = document.getElementById('trouble');
  const answer = document.getElementById('answer');
  (trouble ?? answer)?.focus();
  keepDrafts();
  showTimes(document);
  offerPrint();
  offerReading(document);
  watchIdle();
  listenForNews((region) => {
    showTimes(region);
    offerReading(region);
  });
}

begin();
