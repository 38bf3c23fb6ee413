/** Reads aloud with voices of the device only: nothing that stands here is sent out. */
const label = (name: 'readToMe' | 'stopReading' | 'readMyWords' | 'readAloud'): string =>
  document.body.dataset[name] ?? '';

function localVoice(): SpeechSynthesisVoice | undefined {
  const voices = speechSynthesis.getVoices().filter(({ localService }) => localService);
  const lang = document.documentElement.lang.slice(0, 2);
  return voices.find((voice) => voice.lang.startsWith(lang));
}

/** Cuts a text into sentences. */
function sentencesOf(text: string): string[] {
  return text.match(/[^.!?\n]+[.!?\n]*["'”’)]*\s*|\n+/gu) ?? [];
}

/** Wraps the sentences of an element that holds only text, so that the one being read can be marked. */
function wrapSentences(element: Element): HTMLElement[] {
  const wrapped = Array.from(element.querySelectorAll<HTMLElement>('span.sentence'));
  if (wrapped.length > 0) return wrapped;
  const spans = sentencesOf(element.textContent ?? '').map((sentence) => {
    const span = document.createElement('span');
    span.className = 'sentence';
    span.textContent = sentence;
    return span;
  });
  element.replaceChildren(...spans);
  return spans;
}

let stop: () => void = () => undefined;

function speak(
  parts: readonly { readonly text: string; readonly span: HTMLElement | null }[],
  done: () => void,
): void {
  const voice = localVoice();
  let ended = false;
  const finish = (): void => {
    if (ended) return;
    ended = true;
    parts.forEach(({ span }) => span?.classList.remove('speaking-now'));
    done();
  };
  stop();
  stop = () => {
    speechSynthesis.cancel();
    finish();
  };
  const next = (at: number): void => {
    const part = parts[at];
    if (ended) return;
    if (!part || !voice) {
      finish();
      return;
    }
    const words = new SpeechSynthesisUtterance(part.text);
    words.voice = voice;
    words.lang = voice.lang;
    words.rate = 0.9;
    part.span?.classList.add('speaking-now');
    words.onend = words.onerror = () => {
      part.span?.classList.remove('speaking-now');
      next(at + 1);
    };
    speechSynthesis.speak(words);
  };
  next(0);
}

function listenButton(
  words: string,
  what: string,
  parts: () => { text: string; span: HTMLElement | null }[],
): HTMLElement {
  const place = document.createElement('p');
  place.className = 'listen';
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'button';
  button.textContent = words;
  if (what !== '') button.setAttribute('aria-label', `${words}: ${what}`);
  button.addEventListener('click', () => {
    if (place.classList.contains('speaking')) {
      stop();
      return;
    }
    const reading = parts();
    speak(reading, () => {
      place.classList.remove('speaking');
      button.textContent = words;
    });
    place.classList.add('speaking');
    button.textContent = label('stopReading');
  });
  place.append(button);
  return place;
}

/** What is read of a message: its own words and labels, without what is only pressed once. */
function wordsOf(element: Element): string[] {
  const copy = element.cloneNode(true) as Element;
  copy
    .querySelectorAll('.listen, .fresh, .when, .unseen, .reading, select, textarea, details')
    .forEach((one) => one.remove());
  return Array.from(copy.querySelectorAll('h2, h3, p, li, blockquote, legend, label, button, a.button, th'))
    .filter((one) => one.querySelector('p, li, label, legend, button, a.button') === null)
    .map((one) => (one.textContent ?? '').replace(/\s+/gu, ' ').trim())
    .filter((text) => text !== '');
}

function offer(within: ParentNode): void {
  if (localVoice() === undefined) return;
  within.querySelectorAll('[data-reading]').forEach((text) => {
    const figure = text.parentElement;
    if (!figure || figure.querySelector('.listen')) return;
    const parts = () => wrapSentences(text).map((span) => ({ text: span.textContent ?? '', span }));
    figure.append(listenButton(label('readToMe'), '', parts));
  });
  within.querySelectorAll('.tap-text').forEach((text) => {
    const field = text.parentElement;
    if (!field || field.querySelector('.listen')) return;
    const parts = () =>
      sentencesOf(text.textContent ?? '').map((sentence) => ({ text: sentence, span: null }));
    text.after(listenButton(label('readToMe'), '', parts));
  });
  if (!document.body.classList.contains('role-pupil')) return;
  within.querySelectorAll<HTMLElement>('article.message').forEach((message) => {
    if (message.querySelector(':scope > .listen') || wordsOf(message).length === 0) return;
    const parts = () => wordsOf(message).map((text) => ({ text, span: null }));
    message.append(listenButton(label('readAloud'), message.getAttribute('aria-label') ?? '', parts));
  });
  within.querySelectorAll<HTMLTextAreaElement>('form textarea').forEach((field) => {
    const place = field.parentElement;
    if (!place || place.querySelector('.listen') || field.closest('.grown-up')) return;
    place.append(listenButton(label('readMyWords'), '', () => [{ text: field.value, span: null }]));
  });
}

/** Offers to read aloud wherever there is something to hear, where the device has a voice of its own. */
export function offerReading(within: ParentNode): void {
  if (!('speechSynthesis' in window)) return;
  offer(within);
  if (within === document) speechSynthesis.addEventListener('voiceschanged', () => offer(document));
}
