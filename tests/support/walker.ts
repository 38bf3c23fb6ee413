/** A client that keeps cookies and fills forms in as a browser without script does. */
export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  readonly location: string | null;
}

export interface Form {
  readonly action: string;
  readonly html: string;
  readonly fields: Record<string, string>;
}

export interface Walker {
  readonly cookies: Map<string, string>;
  /** Lines of Set-Cookie, as they came. */
  readonly setCookies: string[];
  get(path: string, headers?: Record<string, string>): Promise<Answer>;
  post(
    path: string,
    fields: Readonly<Record<string, string>> | FormData,
    headers?: Record<string, string>,
  ): Promise<Answer>;
  /** Posts a form of a page with more filled in, and follows the way back. */
  send(form: Form, fields?: Readonly<Record<string, string>>): Promise<Answer>;
  signIn(code: string): Promise<Answer>;
}

function unescape(text: string): string {
  return text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}

/** The forms of a page with their hidden fields. */
export function formsOf(html: string): Form[] {
  return [...html.matchAll(/<form\b([^>]*)>([\s\S]*?)<\/form>/gu)].map(
    ([whole, attributes = '', body = '']) => {
      const fields: Record<string, string> = {};
      for (const [input] of body.matchAll(/<input\b[^>]*type="hidden"[^>]*>/gu)) {
        fields[/ name="([^"]*)"/u.exec(input)?.[1] ?? ''] = unescape(
          / value="([^"]*)"/u.exec(input)?.[1] ?? '',
        );
      }
      return { action: unescape(/ action="([^"]*)"/u.exec(attributes)?.[1] ?? ''), html: whole, fields };
    },
  );
}

/** The form that posts to a path; throws where there is none. */
export function formTo(html: string, action: string): Form {
  const found = formsOf(html).find((form) => form.action === action);
  if (!found)
    throw new Error(
      `no form to ${action} among ${formsOf(html)
        .map((form) => form.action)
        .join(', ')}`,
    );
  return found;
}

/** Opens a walker on a room's address. */
export function openWalker(base: string): Walker {
  const cookies = new Map<string, string>();
  const setCookies: string[] = [];

  const request = async (
    path: string,
    init: RequestInit & { headers?: Record<string, string> },
  ): Promise<Answer> => {
    const cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const answer = await fetch(base + path, {
      ...init,
      redirect: 'manual',
      headers: { ...(cookie === '' ? {} : { cookie }), ...init.headers },
    });
    for (const line of answer.headers.getSetCookie()) {
      setCookies.push(line);
      const [pair = ''] = line.split(';');
      const [name = '', value = ''] = [pair.slice(0, pair.indexOf('=')), pair.slice(pair.indexOf('=') + 1)];
      if (value === '' || /max-age=0/iu.test(line)) cookies.delete(name);
      else cookies.set(name, value);
    }
    return {
      status: answer.status,
      headers: answer.headers,
      text: await answer.text(),
      location: answer.headers.get('location'),
    };
  };

  const walker: Walker = {
    cookies,
    setCookies,
    get: (path, headers = {}) => request(path, { headers }),
    post: (path, fields, headers = {}) =>
      request(path, {
        method: 'POST',
        headers: { 'sec-fetch-site': 'same-origin', ...headers },
        body: fields instanceof FormData ? fields : new URLSearchParams(fields),
      }),
    async send(form, fields = {}) {
      const answer = await walker.post(form.action, { ...form.fields, ...fields });
      return answer.location === null ? answer : walker.get(answer.location);
    },
    async signIn(code) {
      const page = await walker.get('/');
      return walker.send(formTo(page.text, '/in'), { code });
    },
  };
  return walker;
}
