/*
 * Drafts stay on the device until they are sent: where one person alone uses it, also when the tab is closed; where several
 * do, in this tab only. Whoever is signed out leaves none behind. What is told to a grown-up is never kept.
 */
const prefix = 'draft:';

/** Where drafts of this page are kept. */
function kept(): Storage {
  return document.body.dataset['own'] === undefined ? sessionStorage : localStorage;
}

type Typed = HTMLTextAreaElement | HTMLInputElement;

function isTyped(target: EventTarget | null): target is Typed {
  if (target instanceof HTMLTextAreaElement) return !target.readOnly;
  return target instanceof HTMLInputElement && target.type === 'text' && target.name !== 'code';
}

/** The form by where it is, what it does and what it carries; not by its update id or token, which are new each time. */
function keyOf(field: Typed): string | null {
  const { form } = field;
  if (!form || form.closest('.grown-up')) return null;
  const args = Array.from(form.elements)
    .filter((one): one is HTMLInputElement => one instanceof HTMLInputElement && one.type === 'hidden')
    .filter(({ name }) => !name.startsWith('_'))
    .map(({ name, value }) => `${name}=${value}`);
  return [prefix + location.pathname, form.getAttribute('action'), ...args, field.name].join('|');
}

function forgetAll(): void {
  for (const storage of [sessionStorage, localStorage]) {
    Object.keys(storage)
      .filter((key) => key.startsWith(prefix))
      .forEach((key) => storage.removeItem(key));
  }
}

/** A stem that was just tapped stands in the form already; what was typed before follows it. */
function withStem(field: Typed, draft: string): string {
  const stem = field.value;
  return stem === '' || draft.startsWith(stem.trim()) ? draft : `${stem}${draft}`;
}

/** Puts back what was typed before, and keeps what is typed from now on. */
export function keepDrafts(): void {
  try {
    if (document.body.dataset['out'] !== undefined) {
      forgetAll();
      return;
    }
    document.querySelectorAll<Typed>('form textarea, form input[type=text]').forEach((field) => {
      const key = isTyped(field) ? keyOf(field) : null;
      const draft = key === null ? null : kept().getItem(key);
      if (draft !== null && draft !== '') field.value = withStem(field, draft);
    });
    document.addEventListener('input', ({ target }) => {
      const key = isTyped(target) ? keyOf(target) : null;
      if (key !== null && isTyped(target)) kept().setItem(key, target.value);
    });
    document.addEventListener('submit', ({ target }) => {
      if (!(target instanceof HTMLFormElement)) return;
      Array.from(target.elements).forEach((field) => {
        const key = isTyped(field) ? keyOf(field) : null;
        if (key !== null) kept().removeItem(key);
      });
      if (target.getAttribute('action') === '/out') forgetAll();
    });
  } catch {
    // A browser that forbids its storage keeps no drafts; the page works all the same.
  }
}
