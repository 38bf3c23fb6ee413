import type { Rule } from './rule.js';

/** One rule in another language over the folded text (small letters, no accents). */
const row = (name: string, pattern: string, example: string, not: string): Rule => ({
  name,
  kind: 'alarm',
  pattern: new RegExp(`(?<![\\p{L}])(?:${pattern})(?![\\p{L}])`, 'gu'),
  unless: null,
  unlessNear: null,
  example,
  not,
});
const gap = '(?: \\S+){0,3}';

/** The gravest sentences in the languages that a class in an English-speaking school most often brings; patterns are read over the folded text, not the mended words. */
export const languageRules: readonly Rule[] = [
  row(
    'French',
    `(?:je (?:veux|voudrais|vais|pense a|prefere)|envie de) (?:mourir|me tuer|disparaitre|me suicider|m'en aller pour toujours)|(?:je ne|j'ai|j) ?(?:veux|ai)? ?plus (?:vivre|envie de vivre|etre la)|(?:pere|mere|papa|maman|beau-pere|oncle|frere|il|elle|on)${gap} (?:me|nous) (?:tape|frappe|bat|touche|fait mal|menace|enferme|crie dessus)|(?:j'ai|on a)${gap} (?:peur de (?:rentrer|mon|ma|lui)|rien a manger|faim tous)|(?:aide|aidez)[- ]moi|ne (?:le )?dis a personne|je suis seule?${gap} (?:a la maison|depuis)|notre secret`,
    'je veux mourir',
    'je veux lire',
  ),
  row(
    'Spanish',
    `(?:quiero|quisiera|voy a|ganas de|prefiero|deseo) (?:morir|morirme|matarme|suicidarme|desaparecer)|no quiero (?:vivir|estar aqui|seguir)|(?:papa|mama|padre|madre|padrastro|tio|hermano|el|ella|alguien)${gap} (?:me|nos) (?:pega|golpea|toca|lastima|hace dano|amenaza|grita|encierra)|tengo miedo${gap} (?:casa|papa|padre|el)|no (?:hay|tengo|tenemos)${gap} (?:comida|que comer)|ayudame|(?:nuestro|es un) secreto|no (?:le )?digas a nadie|estoy sol[oa]${gap} (?:en casa|desde)`,
    'quiero morir',
    'quiero leer',
  ),
  row(
    'German',
    `(?:ich )?(?:will|mochte|wunsche)${gap} (?:sterben|tot sein|nicht mehr (?:leben|da sein|hier sein)|mich umbringen|verschwinden)|mich umbringen|nicht mehr leben|(?:papa|mama|vater|mutter|stiefvater|onkel|bruder|er|sie|jemand|opa)${gap} (?:schlagt|haut|verprugelt|tut|fasst|schlug|bedroht|sperrt)${gap} (?:mich|mir|uns|meine? (?:mama|mutter|schwester|bruder|papa))|(?:schlagt|haut|verprugelt|bedroht) (?:mich|uns)|fasst mich an|tut mir weh|angst${gap} (?:nach hause|vor (?:papa|meinem|ihm|meiner))|nichts zu essen|kein essen|hilf mir|helft mir|unser geheimnis|sag (?:es )?niemand\\S*|ich bin${gap} allein${gap} (?:zu hause|seit)`,
    'ich will sterben',
    'ich will lesen',
  ),
  row(
    'Polish',
    `(?:chce|chcialbym|chcialabym|wole) (?:umrzec|sie zabic|zniknac)|nie chce${gap} (?:zyc|tu byc)|zabije sie|(?:tata|mama|ojciec|matka|ojczym|wujek|brat|on|ona)${gap} (?:mnie|nas) (?:bije|dotyka|krzywdzi|uderzyl|kopie|straszy)|(?:bije|dotyka|krzywdzi) (?:mnie|nas)|boje sie${gap} (?:wrocic|isc do domu|taty|ojca|go)|nie (?:mam|mamy|ma)${gap} (?:jedzenia|jesc|co jesc)|jestem sama?${gap}|pomoz(?:cie)? mi|nasza tajemnica|nie mow nikomu`,
    'chce umrzec',
    'chce czytac',
  ),
  row(
    'Portuguese or Italian',
    `quero morrer|quero me matar|nao quero (?:mais )?viver|(?:pai|mae|padrasto|tio|ele|ela)${gap} (?:me|nos) (?:bate|toca|machuca|bateu)|me bate|tenho medo${gap} casa|nao (?:ha|tem|temos) comida|me ajud[ae]|voglio morire|voglio uccidermi|non voglio (?:piu )?vivere|(?:papa|mamma|padre|zio|lui|lei)${gap} mi (?:picchia|tocca|fa male|colpisce)|mi picchia|ho paura${gap} casa|aiutami|aiutatemi|non c'e${gap} (?:cibo|da mangiare)`,
    'quero morrer',
    'quero ler',
  ),
  row(
    'Ukrainian or Russian',
    `(?:хочу|хочеться|хочется) (?:померти|вмерти|умереть|сдохнуть|зникнути|исчезнуть)|не хочу${gap} (?:жити|жить)|(?:вбити|убить|вбию|убью) себе?я?|(?:тато|мама|батько|вітчим|папа|отец|отчим|он|вона|він|она)${gap} (?:мене|меня|нас) (?:б'є|бьє|бьет|бье|чіпає|трогает|ображає|обижает)|(?:б'є|бьє|бьет|бье) (?:мене|меня|нас)|допоможіть|помогите|боюс[яь]${gap} (?:додому|домой)|(?:нема|немає|нет)${gap} (?:їжі|їсти|еды)`,
    'хочу умереть',
    'хочу читати',
  ),
  row(
    'Turkish, Romanian or Arabic letters in Latin',
    `olmek istiyorum|yasamak istemiyorum|kendimi oldur\\S*|(?:babam|annem|amcam|uvey babam)${gap} (?:bana|beni|bize)${gap} (?:vuruyor|dovuyor|dokunuyor)|beni dovuyor|yardim edin|yemek yok|vreau sa mor|nu mai vreau sa traiesc|(?:tata|mama|tatal|unchiul)${gap} ma (?:bate|loveste|atinge)|ma bate|ajutati-ma|mi-e frica${gap} acasa|nu avem mancare`,
    'olmek istiyorum',
    'okumak istiyorum',
  ),
  row(
    'Hindi or Urdu in Latin letters',
    `(?:main |mai |me |mujhe )?(?:marna|mar jana) (?:chahta|chahti|hai)|jeena nahi|(?:papa|abbu|ammi|mummy|chacha|uncle|bhai|woh|wo)${gap} (?:mujhe|mujhko|humko|hame)${gap} (?:maarte|marte|marta|maarta|chhute|chhuta|marti)|mujhe (?:maarte|marte|maarta|marta)|ghar jane se dar|khana nahi|madad karo|bachao`,
    'mujhe marna hai',
    'mujhe padhna hai',
  ),
  row(
    'Arabic or Welsh',
    `(?:اريد|أريد|بدي) (?:ان |أن )?(?:اموت|أموت)|(?:ابي|أبي|بابا|عمي)${gap} يضربني|يضربني|ساعدوني|dw i eisiau marw|dwi eisiau marw|dw i ddim eisiau byw|mae (?:dad|mam)${gap} yn (?:fy nharo|taro)|helpwch fi`,
    'dwi eisiau marw',
    'dwi eisiau darllen',
  ),
];
