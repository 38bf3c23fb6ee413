import { spawn, type ChildProcess } from 'node:child_process';

export interface Ready {
  readonly type: 'ready';
  readonly url: string;
  readonly links: { readonly tutor: string; readonly teacher: string; readonly pupils: readonly string[] };
}

/** A server of the built program on a data folder. */
export interface Served {
  readonly ready: Ready;
  readonly child: ChildProcess;
  /** Ends it at once, as a power cut would. */
  kill(): Promise<void>;
  /** Asks it to end; resolves with its exit code. */
  stop(): Promise<number | null>;
}

/** Starts the built program on a folder and a port of loopback (0 for a free one); rejects with what it wrote where it ends early. */
export function serve(data: string, port = 0, env: Readonly<Record<string, string>> = {}): Promise<Served> {
  const child = spawn(process.execPath, ['dist/src/app/main.js', 'start', '--json'], {
    env: {
      PATH: process.env['PATH'] ?? '',
      TURNSTONE_DATA: data,
      TURNSTONE_PORT: String(port),
      TURNSTONE_LOG: 'error',
      ...env,
    },
  });
  const ended = new Promise<number | null>((settle) => child.on('close', (code) => settle(code)));
  return new Promise((settle, fail) => {
    let out = '';
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    void ended.then((code) => fail(new Error(`ended early with ${code}: ${err}`)));
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      const before = out.includes('\n');
      out += text;
      if (before || !out.includes('\n')) return;
      settle({
        ready: JSON.parse(out.slice(0, out.indexOf('\n'))) as Ready,
        child,
        kill: async () => {
          child.kill('SIGKILL');
          await ended;
        },
        stop: () => {
          child.kill('SIGTERM');
          return ended;
        },
      });
    });
  });
}

const hidden = /<input type="hidden" name="([^"]*)" value="([^"]*)"/gu;

/** A browser without script: keeps cookies, reads forms, presses buttons. */
export class PlainBrowser {
  readonly #base: string;
  readonly #cookies = new Map<string, string>();

  constructor(base: string) {
    this.#base = base;
  }

  async #go(path: string, init: RequestInit): Promise<{ status: number; text: string; to: string | null }> {
    const cookie = [...this.#cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const response = await fetch(this.#base + path, {
      redirect: 'manual',
      signal: AbortSignal.timeout(20_000),
      ...init,
      headers: { cookie, origin: this.#base },
    });
    for (const line of response.headers.getSetCookie()) {
      const [name, value] = (line.split(';')[0] ?? '').split(/=(.*)/su);
      if (name !== undefined) this.#cookies.set(name, value ?? '');
    }
    return { status: response.status, text: await response.text(), to: response.headers.get('location') };
  }

  get(path: string): Promise<{ status: number; text: string; to: string | null }> {
    return this.#go(path, { method: 'GET' });
  }

  /** The form of a page whose action begins with a path, its hidden fields filled; throws where there is none. */
  async form(page: string, action: string): Promise<{ action: string; fields: URLSearchParams }> {
    const { text, status } = await this.get(page);
    for (const form of text.match(/<form[\s\S]*?<\/form>/gu) ?? []) {
      const to = /action="([^"]*)"/u.exec(form)?.[1] ?? '';
      if (!to.startsWith(action)) continue;
      const fields = new URLSearchParams(
        [...form.matchAll(hidden)].map(([, name, value]): [string, string] => [name ?? '', value ?? '']),
      );
      return { action: to, fields };
    }
    throw new Error(`Cannot find a form for ${action} on ${page} (${status})`);
  }

  /** Posts a form; the status, and where it leads. */
  post(
    form: { action: string; fields: URLSearchParams },
    typed: Readonly<Record<string, string>> = {},
  ): Promise<{ status: number; text: string; to: string | null }> {
    const body = new URLSearchParams(form.fields);
    for (const [name, value] of Object.entries(typed)) body.set(name, value);
    return this.#go(form.action, { method: 'POST', body });
  }

  /** Comes in by a link. */
  async comeIn(link: string): Promise<void> {
    const form = await this.form(new URL(link).pathname, '/in');
    const { status } = await this.post(form, { own: 'yes' });
    if (status !== 303) throw new Error(`Cannot come in, expected 303, got ${status}`);
  }
}
