import { advertRules } from './advert-rules.js';
import { broadRules } from './alarm-broad-rules.js';
import { languageRules } from './alarm-languages.js';
import { moreRules } from './alarm-more-rules.js';
import { othersRules } from './alarm-others-rules.js';
import { selfRules } from './alarm-self-rules.js';
import { worldRules } from './alarm-world-rules.js';
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
  ...selfRules,
  ...othersRules,
  ...worldRules,
  ...moreRules,
  ...broadRules,
  ...languageRules,
  ...personalRules,
  ...contactRules,
  ...whereaboutsRules,
];
