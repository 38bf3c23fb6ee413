/** Drafts stay on the device, in this tab only, until they are sent; whoever is signed out leaves none behind. */
const prefix = 'draft:';

type Typed = HTMLTextAreaElement | HTMLInputElement;

function isTyped(target: EventTarget | null): target is Typed {
  if (target instanceof HTMLTextAreaElement) return !target.readOnly;
  return target instanceof HTMLInputElement && target.type === 'text' && target.name !== 'code';
}

/** The form by where it is, what it does and what it carries; not by its update id or token, which are new each time. */
function keyOf(field: Typed): string | null {
  const { form } = field;
  if (!form) return null;
  const args = Array.from(form.elements)
    .filter((one): one is HTMLInputElement => one instanceof HTMLInputElement && one.type === 'hidden')
    .filter(({ name }) => !name.startsWith('_'))
    .map(({ name, value }) => `${name}=${value}`);
  return [prefix + location.pathname, form.getAttribute('action'), ...args, field.name].join('|');
}

function forgetAll(): void {
  Object.keys(sessionStorage)
    .filter((key) => key.startsWith(prefix))
    .forEach((key) => sessionStorage.removeItem(key));
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
      const draft = key === null ? null : sessionStorage.getItem(key);
      if (draft !== null && draft !== '') field.value = withStem(field, draft);
    });
    document.addEventListener('input', ({ target }) => {
      const key = isTyped(target) ? keyOf(target) : null;
      if (key !== null && isTyped(target)) sessionStorage.setItem(key, target.value);
    });
    document.addEventListener('submit', ({ target }) => {
      if (!(target instanceof HTMLFormElement)) return;
      Array.from(target.elements).forEach((field) => {
        const key = isTyped(field) ? keyOf(field) : null;
        if (key !== null) sessionStorage.removeItem(key);
      });
      if (target.getAttribute('action') === '/out') forgetAll();
    });
  } catch {
    // A browser that forbids its storage keeps no drafts; the page works all the same.
  }
}
