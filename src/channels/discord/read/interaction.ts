import { ComponentType, InteractionType, type APIInteraction } from 'discord.js';
import type { TypedCommand } from '../../../../shared/channel.js';

/** A file that came with a command or a form. */
export interface SentFile {
  readonly url: string;
  readonly name: string;
  /** Bytes, as Discord says. */
  readonly size: number;
}

/** What was typed into an option or a field; files apart. */
export interface Given {
  readonly texts: Readonly<Record<string, string>>;
  readonly files: Readonly<Record<string, SentFile>>;
}

/** Somebody of a server somewhere in it, as every interaction names them. */
export interface From {
  readonly id: string;
  readonly token: string;
  readonly tenant: string | null;
  readonly room: string;
  readonly user: string;
  /** What the bot may do in this place, as Discord's bit set. */
  readonly may: bigint;
}

/** An interaction, as far as this channel reads it. */
export type Asked =
  | ({ readonly kind: 'ping' } & From)
  | ({
      readonly kind: 'command';
      readonly name: string;
      readonly action: string;
      readonly given: Given;
    } & From)
  | ({ readonly kind: 'press'; readonly press: string } & From)
  | ({ readonly kind: 'form'; readonly form: string; readonly given: Given } & From)
  | ({
      readonly kind: 'suggest';
      readonly command: TypedCommand;
      readonly option: string;
      readonly typed: string;
    } & From)
  | ({ readonly kind: 'strange' } & From);

interface AnyOption {
  readonly name: string;
  readonly value?: unknown;
  readonly focused?: boolean;
  readonly options?: readonly AnyOption[];
}

interface AnyField {
  readonly type?: number;
  readonly custom_id?: string;
  readonly value?: unknown;
  readonly values?: readonly string[];
  readonly component?: AnyField;
  readonly components?: readonly AnyField[];
}

interface AnyData {
  readonly name?: string;
  readonly custom_id?: string;
  readonly options?: readonly AnyOption[];
  readonly components?: readonly AnyField[];
  readonly resolved?: {
    readonly attachments?: Readonly<Record<string, { url?: string; filename?: string; size?: number }>>;
  };
}

function fileOf(data: AnyData, id: unknown): SentFile | null {
  const found = data.resolved?.attachments?.[String(id)];
  if (found?.url === undefined) return null;
  return { url: found.url, name: found.filename ?? '', size: found.size ?? 0 };
}

function textOf(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? String(value)
    : '';
}

function readOptions(data: AnyData): { readonly action: string; readonly options: readonly AnyOption[] } {
  const [first] = data.options ?? [];
  if (first?.options !== undefined || first?.value === undefined) {
    return { action: first?.name ?? '', options: first?.options ?? [] };
  }
  return { action: '', options: data.options ?? [] };
}

function givenByOptions(data: AnyData): Given {
  const texts: Record<string, string> = {};
  const files: Record<string, SentFile> = {};
  for (const { name, value } of readOptions(data).options) {
    const file = fileOf(data, value);
    if (file === null) texts[name] = textOf(value);
    else files[name] = file;
  }
  return { texts, files };
}

/** Fields of a sent form; of two fields of one name, told apart by "#2", the one that was filled counts. */
function givenByFields(data: AnyData): Given {
  const texts: Record<string, string> = {};
  const files: Record<string, SentFile> = {};
  const fields = (data.components ?? []).flatMap(
    (part) => part.components ?? (part.component ? [part.component] : []),
  );
  for (const field of fields) {
    const name = (field.custom_id ?? '').split('#')[0] ?? '';
    if (name === '') continue;
    if (field.type === ComponentType.FileUpload) {
      const file = fileOf(data, field.values?.[0]);
      if (file !== null) files[name] = file;
      continue;
    }
    const text = field.values === undefined ? textOf(field.value) : field.values.join(',');
    if (texts[name] === undefined || text !== '') texts[name] = text;
  }
  return { texts, files };
}

/** Reads an interaction of Discord, from the gateway or over HTTP. */
export function readInteraction(raw: APIInteraction): Asked {
  const from: From = {
    id: raw.id,
    token: raw.token,
    tenant: raw.guild_id ?? null,
    room: raw.channel?.id ?? '',
    user: raw.member?.user.id ?? raw.user?.id ?? '',
    may: BigInt(raw.app_permissions ?? '0'),
  };
  const data = ('data' in raw ? (raw.data ?? {}) : {}) as AnyData;
  switch (raw.type) {
    case InteractionType.Ping:
      return { ...from, kind: 'ping' };
    case InteractionType.ApplicationCommand: {
      const { action } = readOptions(data);
      return { ...from, kind: 'command', name: data.name ?? '', action, given: givenByOptions(data) };
    }
    case InteractionType.ApplicationCommandAutocomplete: {
      const { action, options } = readOptions(data);
      const focused = options.find((option) => option.focused);
      const command = { name: data.name ?? '', action, options: givenByOptions(data).texts };
      return {
        ...from,
        kind: 'suggest',
        command,
        option: focused?.name ?? '',
        typed: textOf(focused?.value),
      };
    }
    case InteractionType.MessageComponent:
      return { ...from, kind: 'press', press: data.custom_id ?? '' };
    case InteractionType.ModalSubmit:
      return { ...from, kind: 'form', form: data.custom_id ?? '', given: givenByFields(data) };
    default:
      return { ...from, kind: 'strange' };
  }
}
