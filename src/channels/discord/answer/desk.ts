import type { House, TypedCommand } from '../../../../shared/channel.js';
import type { Action, FieldOption } from '../../../../shared/messages.js';
import { openMemory, type Memory } from '../memory.js';
import type { DiscordOptions } from '../options.js';
import type { Form, Modal } from '../render/modal.js';
import type { Payload } from '../render/payloads.js';

/** What an interaction is answered with. Of several payloads the first is shown and leads on to the others. */
export type Answer =
  | { readonly show: readonly Payload[] }
  | { readonly modal: Modal; readonly instead: readonly Payload[] }
  | { readonly suggest: readonly FieldOption[] }
  | { readonly pong: true };

/** A form as it was shown to somebody, with the look that shows it. */
export interface ShownForm {
  readonly form: Form;
  readonly origin: Action | null;
}

/**
 * What answering needs. The memories only spare people a second way round: after a restart the looks that buttons carry
 * find forms and long actions again.
 */
export interface Desk {
  readonly house: House;
  readonly options: DiscordOptions;
  /** By person and hash. */
  readonly forms: Memory<ShownForm>;
  readonly actions: Memory<Action>;
  /** What was typed into a form that wasn't taken, or into its first parts. */
  readonly typed: Memory<Readonly<Record<string, string>>>;
  /** By person and key: the parts of a long answer. */
  readonly pages: Memory<readonly Payload[]>;
  readonly commands: Memory<TypedCommand>;
  /** Whether everybody may write in a place past the bot; null where that can't be seen. */
  readonly everyoneWrites: (tenant: string, room: string) => Promise<boolean | null>;
}

const quarterHour = 900_000;

/** Opens the desk over a house. */
export function openDesk(
  house: House,
  options: DiscordOptions,
  everyoneWrites: Desk['everyoneWrites'],
): Desk {
  const now = (): number => house.now();
  return {
    house,
    options,
    forms: openMemory(2000, 4 * quarterHour, now),
    actions: openMemory(2000, 4 * quarterHour, now),
    typed: openMemory(1000, quarterHour, now),
    pages: openMemory(500, quarterHour, now),
    commands: openMemory(200, quarterHour, now),
    everyoneWrites,
  };
}
