/** How often the server hears that somebody is still typing, in milliseconds. */
const hereEvery = 5 * 60_000;

/** On a shared device the page is left when nobody has pressed anything for the time that the server allows. */
export function watchIdle(): void {
  const minutes = Number(document.body.dataset['idleMinutes'] ?? 'NaN');
  if (Number.isNaN(minutes)) return;
  let pressedAt = Date.now();
  let toldAt = Date.now();
  const pressed = (): void => {
    pressedAt = Date.now();
    if (pressedAt - toldAt < hereEvery) return;
    toldAt = pressedAt;
    void fetch('/here').catch(() => undefined);
  };
  for (const kind of ['keydown', 'pointerdown', 'touchstart', 'scroll']) {
    document.addEventListener(kind, pressed, { passive: true });
  }
  const leave = (): void => {
    if (Date.now() - pressedAt > minutes * 60_000 + 30_000) location.assign('/');
  };
  setInterval(leave, 15_000);
  // A laptop that is opened again shows nobody's page.
  document.addEventListener('visibilitychange', leave);
}
