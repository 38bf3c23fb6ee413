import { partsOf, type AnyPayload } from './discord-limits.js';
import { seenText } from './discord-payloads.js';
import { server, type DiscordStandIn, type Interaction } from './discord-stand-in.js';

/** What somebody sees after they acted. */
export interface Seen {
  readonly interaction: Interaction;
  /** Everything that is shown, as read; a modal's labels where one opened. */
  readonly text: string;
  readonly buttons: readonly { readonly id: string; readonly label: string; readonly main: boolean }[];
  readonly modal: AnyPayload | null;
  readonly choices: readonly { readonly name: string; readonly value: string }[];
  readonly hidden: boolean;
  readonly deferred: boolean;
}

/** Somebody in a server, who uses what Discord's own client offers. */
export interface DiscordPerson {
  command(
    name: string,
    action: string,
    options?: Readonly<Record<string, unknown>>,
    files?: Readonly<Record<string, { name: string; url: string; size: number }>>,
  ): Promise<Seen>;
  suggest(name: string, action: string, option: string, typed: string): Promise<Seen>;
  press(id: string): Promise<Seen>;
  /** Presses the button of a label in what was seen. */
  pressLabel(seen: Pick<Seen, 'buttons'>, label: string | RegExp): Promise<Seen>;
  /** Fills in and sends the form that opened. */
  send(modal: AnyPayload, values: Readonly<Record<string, string>>): Promise<Seen>;
  /** Begins without waiting. */
  start(raw: Readonly<Record<string, unknown>>): Interaction;
  rawPress(id: string): Readonly<Record<string, unknown>>;
  rawForm(modal: AnyPayload, values: Readonly<Record<string, string>>): Readonly<Record<string, unknown>>;
}

export async function until(what: () => boolean, within = 8000): Promise<void> {
  const end = Date.now() + within;
  while (!what()) {
    if (Date.now() > end) throw new Error('waited in vain');
    await new Promise((done) => setTimeout(done, 10));
  }
}

/** Waits for the answer of an interaction: the first one, or its edited original where it was deferred. */
export async function seenBy(interaction: Interaction): Promise<Seen> {
  await until(() => {
    const [first] = interaction.answers;
    return first !== undefined && (first.type !== 5 || interaction.edits.length > 0);
  });
  const [first] = interaction.answers;
  const payload = interaction.edits.at(-1) ?? first?.data ?? {};
  const buttons = partsOf(payload)
    .filter(({ type }) => type === 2)
    .map(({ custom_id = '', label = '', style }) => ({ id: custom_id, label, main: style === 1 }));
  return {
    interaction,
    text: seenText(payload),
    buttons,
    modal: first?.type === 9 ? payload : null,
    choices: (first?.data as { choices?: Seen['choices'] } | undefined)?.choices ?? [],
    hidden: ((first?.data?.flags ?? 0) & 64) !== 0,
    deferred: first?.type === 5,
  };
}

/** A sent form as Discord's client sends it. */
function formData(
  modal: AnyPayload,
  values: Readonly<Record<string, string>>,
): Readonly<Record<string, unknown>> {
  const components = (modal.components ?? []).map((label) => {
    const field = label.component ?? {};
    const given = values[field.custom_id ?? ''] ?? (typeof field.value === 'string' ? field.value : '');
    const picks = field.type === 3 || field.type === 19 || field.type === 22;
    const answer = picks ? { values: given === '' ? [] : given.split(',') } : { value: given };
    return { type: 18, component: { type: field.type, custom_id: field.custom_id, ...answer } };
  });
  return { custom_id: modal.custom_id, components };
}

/** A person of the stand-in's server, in one room. */
export function discordPerson(standIn: DiscordStandIn, user: string, room: string): DiscordPerson {
  const base = {
    guild_id: server,
    channel: { id: room, type: 0 },
    channel_id: room,
    member: { user: { id: user, username: 'somebody', discriminator: '0' }, roles: [], permissions: '0' },
    app_permissions: String(1024 + 2048),
  };
  const start = (raw: Readonly<Record<string, unknown>>): Interaction => standIn.begin({ ...base, ...raw });
  const commandData = (name: string, action: string, options: readonly unknown[]) => ({
    id: '1',
    type: 1,
    name,
    options: action === '' ? options : [{ type: 1, name: action, options }],
  });
  const rawPress = (id: string) => ({
    ...base,
    type: 3,
    data: { custom_id: id, component_type: 2 },
    message: { id: '1', components: [] },
  });
  const rawForm = (modal: AnyPayload, values: Readonly<Record<string, string>>) => ({
    ...base,
    type: 5,
    data: formData(modal, values),
  });
  const person: DiscordPerson = {
    start,
    rawPress,
    rawForm,
    command(name, action, options = {}, files = {}) {
      const typed = Object.entries(options).map(([key, value]) => ({ type: 3, name: key, value }));
      const sent = Object.keys(files).map((key, at) => ({ type: 11, name: key, value: String(at) }));
      const attachments = Object.fromEntries(
        Object.values(files).map(({ name: filename, url, size }, at) => [
          at,
          { id: String(at), filename, url, size },
        ]),
      );
      const data = { ...commandData(name, action, [...typed, ...sent]), resolved: { attachments } };
      return seenBy(start({ type: 2, data }));
    },
    suggest(name, action, option, typed) {
      const data = commandData(name, action, [{ type: 3, name: option, value: typed, focused: true }]);
      return seenBy(start({ type: 4, data }));
    },
    press: (id) => seenBy(start(rawPress(id))),
    pressLabel({ buttons }, label) {
      const found = buttons.find((one) =>
        typeof label === 'string' ? one.label === label : label.test(one.label),
      );
      if (!found)
        throw new Error(`no button ${String(label)} among ${buttons.map((one) => one.label).join(', ')}`);
      return person.press(found.id);
    },
    send: (modal, values) => seenBy(start(rawForm(modal, values))),
  };
  return person;
}
