import { eachMatch } from './each-match.js';
import { foldText } from './folding.js';

/** Rude words of the languages that classes bring along, folded to plain letters; held wherever they stand. This project's own choice, without those that are ordinary English. */
const rude =
  // Spanish, Portuguese, Italian, French, Romanian
  'puta putas puto putos mierda joder jodete gilipollas cabron cabrona pendejo pendeja chingar chinga chingada chingado verga maricon culero imbecil estupido estupida hijueputa malparido gonorrea ' +
  'merda caralho porra foda fodase foder viado otario buceta arrombado desgracado vagabunda cazzo stronzo stronza vaffanculo puttana troia coglione coglioni minchia frocio scemo scema bastardo ' +
  'merde putain connard connasse connards salope salopes pute encule enculer enculé nique niquer batard batards abruti abrutie bouffon debile pouffiasse tapette ftg proasta proasto muie cacat dracu fraiere tampit tampita ' +
  // German, Dutch, Scandinavian
  'scheisse scheiss scheis scheiße scheissdreck arschloch arsch arschgeige fotze hurensohn huso nutte wichser wixer ficken fick fickt gefickt missgeburt schlampe schwuchtel spasti spast depp trottel vollidiot drecksau miststuck penner hackfresse ' +
  'kut klootzak hoer kanker kankerlijer tyfus mongool godverdomme neuken lul jävla javla jävlar javlar fitta kuksugare knulla idioter fytte faen helvete forpulet ' +
  // Polish, Czech, Slovak, Ukrainian, Russian, South Slavic, Hungarian, Albanian
  'kurwa kurwy chuj chuja chuju huj pierdol pierdole pierdolony pierdolic spierdalaj wypierdalaj jebac jebany jebane zjeb pojeb pojebany skurwysyn suka dupa dupek gowno debil debile idiota idiotka kretyn cwel szmata dziwka glupek gnoj ' +
  'kurva kokot picus pico debilni hovno blbec blbe kreten krava blyat blyad blya cyka сука блять бляд хуй хуйня пизда пиздец ебать ебан мудак дебил идиот идиотка дурак дура тупой тупая придурок гандон пидор чмо урод уродина козёл скотина дурень довбень бовдур ' +
  'kurac picka pička jebem jebote jebi sranje govno budala retardiran geci fasz picsa bazdmeg hulye kocsog buzi budallë budalla pidh kurve ' +
  // Turkish, Arabic, Persian, Hindi, Urdu, Bengali, Somali
  'salak salaksin aptal aptalsin gerizekali gerizekalı geri-zekali amk amina aq orospu orospucocugu siktir sikerim yavsak serefsiz kahpe ibne dangalak mankafa salakca embesil ' +
  'sharmuta sharmouta sharmoota kalb kelb hmar hmara 7mar 7ayawan zamel kahba qahba ghabi ya7mar koskesh kosnanat jende olagh ahmagh kesafat كلب حمار شرموطة غبي غبية حيوان قحبة زامل ' +
  'madarchod bhenchod behenchod bhosdike bhosdi chutiya chutiye gandu gaandu kutta kutte kutti kamina kameena kamine harami haramzada haramkhor randi gadha gadhe ullu bewakoof pagal bokachoda khankir nacas wasakh ' +
  // Tagalog, Malay, Chinese, Japanese, Korean, Vietnamese, Greek
  'putangina bobong ulol tarantado bodoh bangsat kontol goblok tolol shabi wangba caonima zhuzhu 傻逼 笨蛋 白痴 妈的 操你 滚开 baka kuso ばか バカ 馬鹿 死ね くそ ssibal shibal 씨발 시발 개새끼 바보 병신 vcl óc malaka malakas malakia gamoto skata vlaka vlakas poutana μαλακα μαλακας βλακα βλακας';

/** Words with which sentences of other languages are built, by which one is known. */
const foreign = new Set(
  (
    'der das ist sind ich nicht und ein eine einen sehr wie auf mit fur von zu kann hat aber auch er sie wir du war im den dem des wenn weil ' +
    'el la los las es en que por muy con una un pero su se como para del al mi tu si lo donde cuando porque esta este ' +
    'le les est je il elle une tres sur avec dans pas et de du ce cette qui mais pour sont nous vous ils ne ' +
    'het een niet ik jij zijn wat van voor heeft hij zij ook kan maar deze dit naar bij hoor veel wel geen ' +
    'og jeg det ikke til som pa av har vi han hun med och jag inte att var pa for ar sa ett fra kan skal blir ' +
    'nie jest na ze jak ale czy dla po co bardzo tak ma ten ta to bo od za ve bir bu cok ile ama icin mi ne da de gibi var yok daha ben sen biz ' +
    'non che di per sono molto il della nel ma anche come piu nu este si cu pe ca mai sunt o um uma nao muito os as mas foi ele ela em ' +
    'ang ng sa mga ay ako siya hindi po na hai ka ki ke main aur nahi yeh woh ko se mein est sum deus'
  ).split(' '),
);
const english = new Set(
  'the is are was were you your and of to this that it my he she they his her with for not have has what why how who can will would should but if because in on at'.split(
    ' ',
  ),
);

/** Whether a text seems to be in another language, so that some listed words mean something else there: more words of such than of English. */
export function isForeign(text: string): boolean {
  const all = text.match(/\p{L}+/gu) ?? [];
  const others = all.filter((word) => foreign.has(word) && !english.has(word)).length;
  const own = all.filter((word) => english.has(word)).length;
  return others >= 1 && others > own;
}

/** Listed English words that are plain ones elsewhere: German for thick, Dutch for how, Swedish for end, French for late, and the like. */
const innocent: ReadonlySet<string> = new Set(
  'dick hoe slut fart cum prick ass spast bum fag fan pet puff retard phoque homo kant kunt dik kok gift dumm slag kook pik sex six tit con bite pute arse fack prik ars rape prise negro mist fick hell cul die gay coq pisa retar pris'.split(
    ' ',
  ),
);

const list = rude
  .trim()
  .split(/ +/u)
  .flatMap((word) => [word.normalize('NFKD').replace(/\p{Mn}/gu, ''), foldText(word).text])
  .filter((word) => !/^(?:idiot|idioti?|debil|moron)$/u.test(word));
const words = new RegExp(`(?<![\\p{L}\\p{N}])(?:${list.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
const unspaced = /傻逼|笨蛋|白痴|妈的|操你|滚开|死ね|씨발|시발|개새끼|병신/gu;

/** Whether a listed English word is a plain one in other languages. */
export function plainElsewhere(word: string): boolean {
  return innocent.has(word);
}

const listed = new Set(list);

/** Whether a word of plain letters is a rude one of another language. */
export function isRudeElsewhere(word: string): boolean {
  return word.length >= 5 && listed.has(word);
}

/** Rude words of other languages in a folded text: index and length of each. */
export function rudeElsewhere(text: string): readonly { word: string; at: number }[] {
  return [...eachMatch(words, text), ...eachMatch(unspaced, text)].map((match) => ({
    word: match[0],
    at: match.index,
  }));
}
