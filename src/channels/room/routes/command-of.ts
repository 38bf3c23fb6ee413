import type { TypedCommand } from '../../../../shared/channel.js';
import type { PostedForm } from '../http/read-form.js';
import type { RoomOptions } from '../options.js';

/** The command that a form holds: a typed line, or a picked command with its options. Throws `Fault` where a line can't be read. */
export function commandOf(form: PostedForm, read: RoomOptions['readCommand']): TypedCommand {
  const name = form.own['_command'];
  if (name === undefined) return read(form.fields['line'] ?? '');
  return { name, action: form.own['_action'] ?? '', options: form.fields };
}
