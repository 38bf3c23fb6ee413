import { advertRules } from './advert-rules.js';
import { alarmRules } from './alarms.js';
import { languageRules } from './alarm-languages.js';
import { contactRules } from './contact-rules.js';
import { cruelRules } from './cruel-rules.js';
import { hurtfulRules } from './hurtful-rules.js';
import { personalRules } from './personal-rules.js';
import { whereaboutsRules } from './whereabouts-rules.js';

/** Every rule that is data, for tests and for staff who want to read what the screen looks for. */
export const allRules = [
  ...hurtfulRules,
  ...cruelRules,
  ...advertRules,
  ...alarmRules,
  ...languageRules,
  ...personalRules,
  ...contactRules,
  ...whereaboutsRules,
];
