import type { Verb } from './io.js';

/** Every verb, loaded only when it is used, so that a short command starts fast. */
export const verbs: Readonly<Record<string, () => Promise<{ readonly verb: Verb }>>> = {
  start: () => import('./verbs/start.js'),
  read: () => import('./verbs/read.js'),
  judge: () => import('./verbs/judge.js'),
  rehearse: () => import('./verbs/rehearse.js'),
  demo: () => import('./verbs/demo.js'),
  evaluate: () => import('./verbs/evaluate.js'),
  train: () => import('./verbs/train.js'),
  'make-class': () => import('./verbs/make-class.js'),
  'make-link': () => import('./verbs/make-link.js'),
  digest: () => import('./verbs/digest.js'),
  export: () => import('./verbs/export.js'),
  erase: () => import('./verbs/erase.js'),
  backup: () => import('./verbs/backup.js'),
  restore: () => import('./verbs/restore.js'),
  keeping: () => import('./verbs/keeping.js'),
  doctor: () => import('./verbs/doctor.js'),
  manifest: () => import('./verbs/manifest.js'),
  readme: () => import('./verbs/readme.js'),
};

/** All verbs, loaded. */
export async function allVerbs(): Promise<readonly Verb[]> {
  return Promise.all(Object.values(verbs).map(async (load) => (await load()).verb));
}
