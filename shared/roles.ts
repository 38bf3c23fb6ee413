/** Roles are ours, never the platform's. */
export const roles = ['pupil', 'tutor', 'teacher', 'administrator', 'safeguarding lead'] as const;
export type Role = (typeof roles)[number];

/** Every role that belongs to an adult. */
export const staffRoles = [
  'tutor',
  'teacher',
  'administrator',
  'safeguarding lead',
] as const satisfies readonly Role[];
