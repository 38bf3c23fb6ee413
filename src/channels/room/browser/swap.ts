import { isBusy } from './busy.js';

/** A region without what is new in each answer (ids of updates) and what script added. */
function essence(region: Element): string {
  const copy = region.cloneNode(true) as Element;
  copy.querySelectorAll('.listen, .fresh').forEach((added) => added.remove());
  copy.querySelectorAll('time').forEach((time) => (time.textContent = ''));
  copy.querySelectorAll('[data-reading]').forEach((text) => (text.textContent = text.textContent));
  copy.querySelectorAll('input[name=_update]').forEach((input) => input.removeAttribute('value'));
  copy.querySelectorAll('details').forEach((details) => details.removeAttribute('open'));
  return copy.innerHTML;
}

/** What a link or button is, so that it is found again after a swap. */
function markOf(element: Element): string {
  const form = element.closest('form');
  const args = form
    ? Array.from(form.querySelectorAll<HTMLInputElement>('input[type=hidden]'))
        .filter(({ name }) => !['_update', '_token'].includes(name))
        .map(({ name, value }) => `${name}=${value}`)
    : [];
  return [
    element.tagName,
    element.getAttribute('href') ?? '',
    form?.getAttribute('action') ?? '',
    ...args,
    element.textContent,
  ].join('|');
}

function focusable(region: Element): Element[] {
  return Array.from(region.querySelectorAll('a, button, summary'));
}

function offerSwap(region: HTMLElement): void {
  if (region.querySelector(':scope > .fresh')) return;
  const note = document.createElement('p');
  note.className = 'fresh';
  const link = document.createElement('a');
  link.className = 'button';
  link.href = location.pathname + location.search;
  link.textContent = region.dataset['live'] ?? '';
  note.append(link);
  region.prepend(note);
}

/**
 * Puts the new content of one region in place of the old, unless somebody is in the middle of something there; then it is
 * only offered. What had the focus has it again, and what was folded open stays open. Answers what is new to announce.
 */
export function swap(region: HTMLElement, fresh: Element): string[] {
  if (essence(region) === essence(fresh)) return [];
  const before = new Set(
    Array.from(region.querySelectorAll('article')).map((one) => one.getAttribute('aria-label')),
  );
  const news = Array.from(fresh.querySelectorAll('article'))
    .map((one) => one.getAttribute('aria-label') ?? '')
    .filter((summary) => summary !== '' && !before.has(summary));
  if (isBusy(region)) {
    offerSwap(region);
    return news;
  }
  const active = document.activeElement;
  const mark = active !== null && region.contains(active) ? markOf(active) : null;
  const opened = new Set(
    Array.from(region.querySelectorAll('details[open] > summary')).map(({ textContent }) => textContent),
  );
  region.replaceChildren(...Array.from(fresh.childNodes).map((node) => document.importNode(node, true)));
  region.querySelectorAll('details').forEach((details) => {
    if (opened.has(details.querySelector('summary')?.textContent ?? '')) details.open = true;
  });
  if (mark !== null) {
    const again = focusable(region).find((element) => markOf(element) === mark) as HTMLElement | undefined;
    if (again) again.focus({ preventScroll: true });
    else document.getElementById('page')?.focus({ preventScroll: true });
  }
  return news;
}
