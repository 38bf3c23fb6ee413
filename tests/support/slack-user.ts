import type { Acknowledged, SlackStandIn, StandingPost } from './slack-stand-in.js';
import { liveIn, messageBreaches, viewBreaches, wordsSeen } from './slack-limits.js';

export type Json = Readonly<Record<string, unknown>>;

interface StandingView {
  readonly id: string;
  readonly hash: string;
  readonly view: Json;
}

/** A private message as it stands on somebody's screen. */
export interface PrivateMessage {
  readonly ts: string;
  readonly channel: string;
  body: Json;
}

interface Button {
  readonly block: Json;
  readonly button: Json;
}

function buttonsIn(blocks: unknown): readonly Button[] {
  return (blocks as readonly Json[]).flatMap((block) =>
    block['type'] === 'actions'
      ? (block['elements'] as readonly Json[]).map((button) => ({ block, button }))
      : [],
  );
}

const labelOf = ({ button }: Button): string => String((button['text'] as Json)['text']);

/** Somebody at Slack: types commands, presses buttons, fills in forms, and sees what only they see. */
export class SlackUser {
  readonly triggers = new Set<string>();
  readonly views: StandingView[] = [];
  readonly notes: PrivateMessage[] = [];
  /** Grows with everything that comes to their screen. */
  seenCount = 0;
  readonly #slack: SlackStandIn;
  readonly id: string;

  constructor(slack: SlackStandIn, id: string) {
    this.#slack = slack;
    this.id = id;
  }

  /** What stands before them now: the topmost view, else the newest private message. */
  get sees(): string {
    const view = this.views.at(-1);
    return view ? wordsSeen(view.view) : this.note;
  }
  get note(): string {
    return wordsSeen(this.notes.at(-1)?.body ?? {});
  }
  /** Labels of what can be pressed in the topmost view, else in the newest private message. */
  get buttons(): readonly string[] {
    return buttonsIn((this.views.at(-1)?.view ?? this.notes.at(-1)?.body)?.['blocks'] ?? []).map(labelOf);
  }
  close(): void {
    this.views.length = 0;
  }

  #trigger(): string {
    const id = this.#slack.next('trigger');
    this.triggers.add(id);
    return id;
  }
  #person(): Json {
    return { id: this.id, name: this.id.toLowerCase(), team_id: this.#slack.team };
  }
  #common(): Json {
    return {
      team: { id: this.#slack.team, domain: 'turnstone' },
      user: this.#person(),
      api_app_id: 'A1',
      token: 'old',
    };
  }
  #tell(channel: string, body: Json): void {
    this.#slack.breaches.push(...messageBreaches(body), ...liveIn(body));
    this.seenCount += 1;
    this.notes.push({ ts: this.#slack.ts(), channel, body });
  }
  #responds(channel: string, from: PrivateMessage | null): string {
    return this.#slack.responseUrl((body) => {
      const place = body['replace_original'] === true ? (from ?? this.notes.at(-1)) : undefined;
      if (place) {
        this.#slack.breaches.push(...messageBreaches(body), ...liveIn(body));
        this.seenCount += 1;
        place.body = body;
      } else this.#tell(channel, body);
    });
  }

  commandPayload(command: string, text: string, channel: string): Json {
    return {
      command,
      text: text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;'),
      team_id: this.#slack.team,
      team_domain: 'turnstone',
      channel_id: channel,
      channel_name: 'talk',
      user_id: this.id,
      user_name: this.id.toLowerCase(),
      api_app_id: 'A1',
      trigger_id: this.#trigger(),
      response_url: this.#responds(channel, null),
      token: 'old',
    };
  }
  /** Types a slash command in a channel. */
  async command(line: string, channel = 'C1'): Promise<Acknowledged> {
    const [command = '', ...rest] = line.split(' ');
    return this.sendCommand(this.commandPayload(command, rest.join(' '), channel));
  }
  async sendCommand(payload: Json): Promise<Acknowledged> {
    const answer = await this.#slack.update('slash_commands', payload);
    if (answer.body && Object.keys(answer.body).length > 0)
      this.#tell(String(payload['channel_id']), answer.body);
    return answer;
  }

  /** A press of a button by its label: of a channel's message, of the topmost view, or of the newest private message. */
  pressPayload(label: string, on?: StandingPost, channel = 'C1'): Json {
    const view = on ? undefined : this.views.at(-1);
    const note = on || view ? undefined : this.notes.at(-1);
    const blocks = on?.blocks ?? view?.view['blocks'] ?? note?.body['blocks'] ?? [];
    const found = buttonsIn(blocks).find((one) => labelOf(one).startsWith(label));
    if (!found)
      throw new Error(`Cannot press ${label}, expected one of ${buttonsIn(blocks).map(labelOf).join(', ')}`);
    const action = {
      ...found.button,
      block_id: found.block['block_id'],
      type: 'button',
      action_ts: this.#slack.ts(),
    };
    const base = { ...this.#common(), type: 'block_actions', trigger_id: this.#trigger(), actions: [action] };
    if (view)
      return {
        ...base,
        container: { type: 'view', view_id: view.id },
        view: this.#viewOutput(view, {}, false),
      };
    const message = on ?? note;
    return {
      ...base,
      container: {
        type: 'message',
        message_ts: message?.ts,
        channel_id: channel,
        is_ephemeral: on === undefined,
      },
      channel: { id: channel, name: 'talk' },
      response_url: this.#responds(channel, note ?? null),
      ...(on ? { message: on } : {}),
    };
  }
  async press(label: string, on?: StandingPost, channel = 'C1'): Promise<Acknowledged> {
    const before = this.seenCount;
    const answer = await this.#slack.update('interactive', this.pressPayload(label, on, channel));
    await this.sawMoreThan(before);
    return answer;
  }

  #viewOutput(standing: StandingView, values: Readonly<Record<string, string>>, whole = true): Json {
    return {
      ...standing.view,
      id: standing.id,
      hash: standing.hash,
      state: { values: stateOf(standing.view, values, whole) },
    };
  }
  /** The submission of the topmost view with fields filled in by name. */
  submitPayload(values: Readonly<Record<string, string>>): Json {
    const view = this.views.at(-1);
    if (!view || view.view['submit'] === undefined)
      throw new Error(`Cannot send a form, expected one, got ${this.sees}`);
    return {
      ...this.#common(),
      type: 'view_submission',
      trigger_id: this.#trigger(),
      view: this.#viewOutput(view, values),
      response_urls: [],
    };
  }
  async submit(values: Readonly<Record<string, string>>): Promise<Acknowledged> {
    return this.sendSubmission(this.submitPayload(values));
  }
  async sendSubmission(payload: Json): Promise<Acknowledged> {
    const answer = await this.#slack.update('interactive', payload);
    const top = this.views.at(-1);
    const action = answer.body?.['response_action'];
    if (top && answer.status === 200 && action === undefined) this.views.pop();
    if (top && action === 'update') {
      const view = answer.body?.['view'] as Json;
      this.#slack.breaches.push(...viewBreaches(view), ...liveIn(view));
      this.replaceView(top.id, undefined, view);
    }
    return answer;
  }

  /** Waits until something more came to their screen, two seconds at most. */
  async sawMoreThan(before: number): Promise<void> {
    for (let waits = 0; waits < 100 && this.seenCount <= before; waits += 1)
      await new Promise((settle) => setTimeout(settle, 20));
  }

  stackView(trigger: string, push: boolean, view: Json): Json {
    if (!this.triggers.delete(trigger)) return { ok: false, error: 'exchanged_trigger_id' };
    if (push && this.views.length >= 3) return { ok: false, error: 'push_limit_reached' };
    if (!push) this.views.length = 0;
    const standing = { id: this.#slack.next('V'), hash: this.#slack.next('h'), view };
    this.seenCount += 1;
    this.views.push(standing);
    return { ok: true, view: { ...view, id: standing.id, hash: standing.hash } };
  }
  replaceView(id: string, hash: unknown, view: Json): Json {
    const at = this.views.findIndex((one) => one.id === id);
    const before = this.views[at];
    if (!before) return { ok: false, error: 'not_found' };
    if (hash !== undefined && hash !== before.hash) return { ok: false, error: 'hash_conflict' };
    this.seenCount += 1;
    this.views[at] = { id, hash: this.#slack.next('h'), view };
    return { ok: true };
  }
}

function stateOf(view: Json, values: Readonly<Record<string, string>>, whole: boolean): Json {
  const state: Record<string, Json> = {};
  for (const block of view['blocks'] as readonly Json[]) {
    if (block['type'] !== 'input') continue;
    const id = String(block['block_id']);
    const name = id.replace(/^f\d+:/u, '');
    const element = block['element'] as Json;
    const given = givenIn(element, values[name]);
    if (whole && given === null && block['optional'] !== true)
      throw new Error(`Cannot send, expected ${name} filled in`);
    state[id] = {
      [String(element['action_id'])]: given ?? { type: element['type'], value: null, selected_option: null },
    };
  }
  return state;
}

function optionsOf(element: Json): readonly Json[] {
  const groups = (element['option_groups'] as readonly Json[] | undefined) ?? [];
  return [
    ...((element['options'] as readonly Json[] | undefined) ?? []),
    ...groups.flatMap((group) => group['options'] as readonly Json[]),
  ];
}

function givenIn(element: Json, value: string | undefined): Json | null {
  const type = element['type'];
  switch (type) {
    case 'plain_text_input': {
      const text = value ?? (element['initial_value'] as string | undefined);
      if (text === undefined) return null;
      if (text.length > Number(element['max_length'] ?? 3000)) throw new Error('Cannot type that much');
      return { type, value: text };
    }
    case 'static_select':
    case 'radio_buttons': {
      const option =
        value === undefined
          ? element['initial_option']
          : optionsOf(element).find((one) => one['value'] === value);
      if (value !== undefined && !option) throw new Error(`Cannot pick ${value}`);
      return option ? { type, selected_option: option } : null;
    }
    case 'checkboxes':
    case 'multi_static_select': {
      const wanted = value?.split(',') ?? [];
      const options = optionsOf(element).filter((one) => wanted.includes(String(one['value'])));
      return options.length > 0 ? { type, selected_options: options } : null;
    }
    case 'file_input':
      return value === undefined
        ? null
        : { type, files: [{ id: 'F1', size: 100, url_private_download: value }] };
    default:
      throw new Error(`Cannot fill in ${String(type)}`);
  }
}
