import { swap } from './swap.js';

const firstWait = 2000;
const longestWait = 60_000;

/** Fetches this page again and swaps what is live in it; `swapped` is called for each region that was. */
async function refresh(swapped: (region: HTMLElement) => void): Promise<void> {
  const url = new URL(location.href);
  url.searchParams.delete('said');
  const answer = await fetch(url, { headers: { 'x-room-news': 'yes' }, redirect: 'error' });
  if (!answer.ok) return;
  const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html');
  if (fresh.body.dataset['out'] !== undefined) {
    location.assign('/');
    return;
  }
  const news: string[] = [];
  document.querySelectorAll<HTMLElement>('[data-live]').forEach((region) => {
    const other = fresh.getElementById(region.id);
    if (!other) return;
    news.push(...swap(region, other));
    if (!region.querySelector('.fresh')) swapped(region);
  });
  const status = document.getElementById('news');
  if (status && news.length > 0) status.textContent = news.slice(-3).join('. ');
}

/**
 * Listens while the page is looked at: a hidden tab lets go of its line, since a browser grants only few to one server,
 * and asks anew when it is seen again. Lines that break are mended by the browser; ones that were refused, by us, ever more slowly.
 */
export function listenForNews(swapped: (region: HTMLElement) => void): void {
  if (document.body.dataset['out'] !== undefined || !('EventSource' in window)) return;
  if (document.querySelector('[data-live]') === null) return;
  let source: EventSource | null = null;
  // Where the feed stood when the page was written, where the page says so.
  let seen = document.body.dataset['seq'] ?? '';
  let begun = false;
  let wait = firstWait;
  let timer: number | undefined;
  let running: Promise<void> = Promise.resolve();

  const again = (): void => {
    running = running.then(() => refresh(swapped)).catch(() => undefined);
  };
  const close = (): void => {
    window.clearTimeout(timer);
    source?.close();
    source = null;
  };
  const open = (): void => {
    close();
    const line = new EventSource('/live');
    source = line;
    line.addEventListener('changed', ({ data }: MessageEvent<string>) => {
      wait = firstWait;
      if (begun || seen !== data) again();
      begun = true;
      seen = data;
    });
    line.addEventListener('error', () => {
      if (line.readyState !== EventSource.CLOSED) return;
      timer = window.setTimeout(open, wait);
      wait = Math.min(longestWait, wait * 2);
    });
  };

  document.addEventListener('visibilitychange', () => {
    if (document.hidden) close();
    else {
      open();
      again();
    }
  });
  window.addEventListener('pagehide', close);
  if (!document.hidden) open();
}
