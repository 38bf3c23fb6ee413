/** Roles are ours, never the platform's. */
export const roles = [
  'pupil',
  'tutor',
  'teacher',
  'administrator',
  'safeguarding lead',
  'safeguarding deputy',
] as const;
export type Role = (typeof roles)[number];

/** Every role that belongs to an adult. */
export const staffRoles = [
  'tutor',
  'teacher',
  'administrator',
  'safeguarding lead',
  'safeguarding deputy',
] as const satisfies readonly Role[];

/** The adults who are called when a post is worrying: the lead at once, the deputy when nobody answers. No other role inherits theirs. */
export const namedAdults = ['safeguarding lead', 'safeguarding deputy'] as const satisfies readonly Role[];
