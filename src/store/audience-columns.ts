import { asId } from '../../shared/ids.js';
import type { Audience } from '../../shared/messages.js';
import type { AudienceTo } from './tables.js';

/** An audience as two columns; the staff of a whole class have an empty id. */
export interface AudienceColumns {
  readonly audience_to: AudienceTo;
  readonly audience_id: string;
}

/** Writes an audience as columns. */
export function audienceColumns(audience: Audience): AudienceColumns {
  switch (audience.to) {
    case 'channel':
      return { audience_to: 'channel', audience_id: audience.group };
    case 'person':
      return { audience_to: 'person', audience_id: audience.person };
    case 'staff':
      return { audience_to: 'staff', audience_id: audience.group ?? '' };
    default:
      return audience satisfies never;
  }
}

/** Reads an audience from its columns. */
export function audienceOf({ audience_to: to, audience_id: id }: AudienceColumns): Audience {
  switch (to) {
    case 'channel':
      return { to, group: asId(id) };
    case 'person':
      return { to, person: asId(id) };
    case 'staff':
      return { to, group: id === '' ? null : asId(id) };
    default:
      return to satisfies never;
  }
}

/** Whether a place that is bound to one audience gets what is told to another: a class's staff hear of every group, a group's staff of the whole class too. */
export function reaches(bound: Audience, told: Audience): boolean {
  if (bound.to === 'staff' && told.to === 'staff') {
    return bound.group === null || told.group === null || bound.group === told.group;
  }
  const a = audienceColumns(bound);
  const b = audienceColumns(told);
  return a.audience_to === b.audience_to && a.audience_id === b.audience_id;
}
