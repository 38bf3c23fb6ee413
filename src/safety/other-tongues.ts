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

/** Words with which foreign sentences are built, by which one is known. */
const small =
  /(?<!\p{L})(?:der|die|das|ist|sind|ich|nicht|und|ein|eine|sehr|wie|auf|deutsch|german|spanish|french|dutch|danish|swedish|norwegian|polish|turkish|finnish|latin|romanian|portuguese|el|la|los|las|es|en|que|por|muy|con|una|pero|le|les|est|je|tu|il|elle|une|tres|sur|avec|dans|pas|het|een|niet|ik|jij|zijn|wat|van|voor|og|jeg|det|er|ikke|och|jag|inte|til|som|pa|att|den|vi|har|av|nie|jest|sie|na|sa|ve|bir|bu|cok|ile|non|che|di|per|sono|molto|si|nu|este|un|o|um|uma|nao|muito|sum|estne)(?!\p{L})/gu;
/** Listed English words that are plain ones elsewhere: German for thick, Dutch for how, Swedish for end, French for late, and the like. */
const innocent: ReadonlySet<string> = new Set(
  'dick hoe slut fart cum prick ass spast bum fag fan pet puff retard phoque homo kant kunt dik kok gift dumm slag kook pik sex six tit con bite pute arse fack prik ars rape prise negro mist fick hell cul die gay coq pisa retar pris'.split(
    ' ',
  ),
);

const list = [...new Set(rude.trim().split(/ +/u))].map((word) => foldText(word).text);
const words = new RegExp(`(?<![\\p{L}\\p{N}])(?:${list.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
const unspaced = /傻逼|笨蛋|白痴|妈的|操你|滚开|死ね|씨발|시발|개새끼|병신/gu;

/** Whether a text seems to be in (or about) another language, so that some listed words mean something else there. */
export function isForeign(text: string): boolean {
  return (text.match(small)?.length ?? 0) >= 2;
}

/** Whether a listed English word is a plain one in other languages. */
export function plainElsewhere(word: string): boolean {
  return innocent.has(word);
}

/** Rude words of other languages in a folded text: index and length of each. */
export function rudeElsewhere(text: string): readonly { word: string; at: number }[] {
  return [...eachMatch(words, text), ...eachMatch(unspaced, text)].map((match) => ({
    word: match[0],
    at: match.index,
  }));
}
