/** Times in the zone and the words of the device: "Tuesday 14:05". */
export function showTimes(within: ParentNode): void {
  const style = new Intl.DateTimeFormat(document.documentElement.lang, {
    weekday: 'long',
    hour: 'numeric',
    minute: '2-digit',
  });
  within.querySelectorAll('time').forEach((time) => {
    const at = Date.parse(time.dateTime);
    if (!Number.isNaN(at)) time.textContent = style.format(at);
  });
}

/** A button that prints, on pages made for paper. */
export function offerPrint(): void {
  document.querySelectorAll<HTMLElement>('[data-print]').forEach((place) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'button';
    button.textContent = place.dataset['print'] ?? '';
    button.addEventListener('click', () => window.print());
    place.append(button);
  });
}
