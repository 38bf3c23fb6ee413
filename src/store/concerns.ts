import type { ClassEvent } from '../../shared/events.js';
import type { PersonId, PostId } from '../../shared/ids.js';

/** Fields of events that name one person who acted or is acted upon; lists of people (who is active, who may lead) are no concern of each. */
const personFields = ['by', 'person', 'pupil', 'leader', 'partner'] as const;

/** Who an event is about, by name and by whose post it speaks of. */
export interface Concern {
  readonly persons: readonly PersonId[];
  readonly posts: readonly PostId[];
}

/** The people and posts that an event is about; clock and founder are nobody. */
export function concernOf(event: ClassEvent): Concern {
  const fields = event as unknown as Readonly<Record<string, unknown>>;
  const strings = <T extends string>(names: readonly string[]): T[] =>
    names.flatMap((name) => (typeof fields[name] === 'string' ? [fields[name] as T] : []));
  return {
    persons: strings<PersonId>(personFields).filter((id) => !['clock', 'founder'].includes(id)),
    // In other events `to` names an audience or people.
    posts: strings<PostId>(postIn(event) ? ['post', 'to'] : ['post']),
  };
}

/** The post that an event brings up and its pupil, null where it brings up none. */
export function postIn(event: ClassEvent): { readonly post: PostId; readonly person: PersonId } | null {
  return event.type === 'draft-judged' || event.type === 'draft-held'
    ? { post: event.post, person: event.person }
    : null;
}
