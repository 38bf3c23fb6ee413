import type { ClassEvent } from '../../shared/events.js';

/** An event of an old form. */
export interface StoredEvent {
  readonly type: string;
  readonly [field: string]: unknown;
}

/** The steps of one event type from each old form to the next; a type without steps is in form 1. */
export type UpcastSteps = Readonly<Record<string, readonly ((old: StoredEvent) => StoredEvent)[]>>;

/** How old forms of events are brought up to date when read; the journal itself is never rewritten. A step may give another type. */
export const upcastSteps: UpcastSteps = {};

/** The form in which events of a type are written now. */
export function formOf(type: string, steps: UpcastSteps = upcastSteps): number {
  return (steps[type]?.length ?? 0) + 1;
}

/** Brings an event as it was stored, in a form of its type counted from 1, up to date. */
export function upcast(stored: StoredEvent, form: number, steps: UpcastSteps = upcastSteps): ClassEvent {
  const ahead = steps[stored.type]?.slice(form - 1) ?? [];
  let event = stored;
  for (const step of ahead) {
    const next = step(event);
    if (next.type !== event.type) return upcast(next, 1, steps);
    event = next;
  }
  return event as unknown as ClassEvent;
}
