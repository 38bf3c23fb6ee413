import type { FieldShape, Shape } from '../../shared/shape.js';
import type { Chance } from './chance.js';
import { anyText, bareNames, mangled, sentence } from './texts.js';

function fitting(chance: Chance, shape: FieldShape, ids: readonly string[]): string {
  if (typeof shape !== 'string') return chance.pick(shape);
  switch (shape) {
    case 'line':
      return chance.pick([sentence(chance).slice(0, 60), 'Tue 14:00', '2026-12-18', 'tide', '30', '07-31']);
    case 'text':
      return sentence(chance);
    case 'page':
      return Array.from({ length: 8 }, () => sentence(chance)).join(' ');
    case 'number':
      return String(chance.int(6));
    case 'place':
      return `${chance.int(40)}-${chance.int(80)}`;
    case 'flag':
      return chance.pick(['yes', 'no']);
    case 'posts':
      return Array.from({ length: 1 + chance.int(3) }, () => chance.pick(ids)).join(',');
    case 'person':
    case 'group':
    case 'passage':
    case 'post':
    case 'alarm':
      return chance.pick(ids);
    default:
      return shape satisfies never;
  }
}

/** The fields of a move or look: mostly such as fit its shape, so that they come far, and by chance anything. */
export function fieldsFor(chance: Chance, shape: Shape, ids: readonly string[]): Record<string, string> {
  const fields: Record<string, string> = {};
  for (const [key, field] of Object.entries(shape)) {
    if (key.endsWith('?') && chance.oneIn(2)) continue;
    if (chance.oneIn(25)) continue;
    const good = fitting(chance, field, ids);
    fields[key.replace('?', '')] = chance.oneIn(8)
      ? anyText(chance)
      : chance.oneIn(12)
        ? chance.pick(bareNames)
        : chance.oneIn(15)
          ? mangled(chance, good)
          : good;
  }
  if (chance.oneIn(20)) fields[chance.pick(bareNames)] = anyText(chance);
  return fields;
}
