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
const wide = '(?: \\S+){0,6}';

/** The gravest sentences in the languages that a class in an English-speaking school most often brings; patterns are read over the folded text, not the mended words. */
export const languageRules: readonly Rule[] = [
  row(
    'French',
    `(?:je (?:veux|voudrais|vais|pense a|prefere|souhaite)|envie de|veux|voudrais)${gap} (?:mourir|crever|me tuer|disparaitre|me suicider|m'en aller pour toujours|dormir pour toujours)(?! de (?:rire|faim|chaud))|(?:je ne|j'ai|j|je|j'en)${gap} plus (?:vivre|envie de vivre|etre la|envie de rien|continuer|de raison)|veux plus (?:vivre|etre la)|me (?:fais|coupe|scarifie)${gap} (?:mal|bras|jambes|expres)|je me (?:coupe|scarifie|frappe)|(?:pere|mere|papa|maman|beau-pere|belle-mere|oncle|tonton|frere|cousin|grand-pere|il|elle|on|ils|coach|prof|voisin)${gap} (?:me|nous|m'|m'a|ma) ?(?:tape|tapent|frappe|frappent|bat|battent|touche|fait (?:du )?mal|menace|enferme|crie dessus|frappee?|tapee?|brule|gifle|force|caresse|jette)|(?:papa|pere|beau-pere|il) (?:frappe|tape|bat) (?:maman|ma mere|mon frere|ma soeur)|(?:j'ai|ai|on a)${gap} peur (?:de (?:rentrer|mon|ma|lui|papa|retourner)|chez|quand)|veux pas (?:rentrer|retourner)${gap} (?:chez|maison)|(?:rien|pas)(?: \\S+){0,2} a manger|pas mange depuis|faim tous|pas de (?:chauffage|lit|nourriture)|(?:aide|aidez)[- ]moi|ne (?:le )?(?:dis|dire|dit)${gap} (?:a personne|rien)|rien dire a|garder? (?:le|ce|un|notre) secret|notre secret|je suis seule?${gap} (?:a la maison|depuis)|(?:demande|veut|envoie|envoyer|envoyee?)${wide} (?:photos?|videos?|nue?s?)${wide}|(?:monsieur|homme|inconnu|adulte)${wide} (?:rencontrer|rencontre|voir|rendez-vous|photos?|secret)|je (?:vais )?(?:fugue|fuguer|m'enfuis|m'enfuir|me sauve|pars)${gap} (?:de (?:la maison|chez)|ce soir|demain|cette nuit|pour toujours)|fuguer?|(?:je|on) (?:te|vous|vais te|va te)${gap} (?:casse|casser|tue|tuer|plante|planter|creve|crever|frappe|defonce|defoncer|attends a la sortie)|(?:va|creve|allez|vas) (?:mourir|crever|te (?:tuer|pendre|suicider))|tue-toi|creve donc|(?:suicide|pends)-toi|un couteau (?:dans mon sac|pour)`,
    'je veux mourir',
    'je veux lire',
  ),
  row(
    'Spanish',
    `(?:quiero|quisiera|voy a|ganas de|prefiero|deseo|pienso en|gustaria|ojala)${gap} (?:morir|morirme|matarme|suicidarme|desaparecer|estar muert[oa]|dormir para siempre|no despertar)(?! de)|(?:ya )?no quiero (?:vivir|estar aqui|seguir|despertar|existir)|me (?:corto|hago dano|lastimo|quiero morir)|(?:papa|mama|padre|madre|padrastro|madrastra|tio|tia|hermano|primo|abuelo|el|ella|alguien|vecino|profe|entrenador|novio|ellos|me)${gap} (?:me|nos) (?:pegan?|golpean?|tocan?|lastiman?|hacen? dano|amenazan?|gritan?|encierran?|dan? (?:golpes|una paliza|con el cinturon)|queman?|pego|toco|obligan?|besa)|me (?:pega|golpea|toca|encierra) (?:mi|con|cuando|y|si|todos|cada|el)|(?:pega|golpea|pego) a (?:mi )?(?:mama|madre|hermano|hermana)|(?:dan|me da) (?:golpes|palizas)|(?:tengo|da|me da) miedo${gap} (?:casa|papa|padre|mi|volver|ir a casa)(?! (?:dragon))|no quiero (?:volver|ir|regresar) a (?:mi )?casa|no (?:hay|tengo|tenemos|como|comi|comemos|he comido)${gap} (?:comida|que comer|nada|cena|calefaccion)(?: (?:en casa|desde|hace))?|sin comer|ayudame|ayudenme|(?:nuestro|es un|un) secreto${gap}|no (?:le |se lo )?(?:digas|diga|dice|decir|puedo decir)${gap} (?:a nadie|a mama|a mi)|estoy sol[oa]${gap} (?:en casa|desde)|(?:pide|quiere|manda|mandar|mande|envie|pidio)${wide} (?:fotos?|videos?|desnud[oa])|(?:senor|hombre|adulto|desconocido)${wide} (?:veamos|vernos|encontrarnos|solos|secreto|noche|fotos?)|me (?:escapo|voy a escapar|voy a ir|fugo|voy) de (?:mi )?casa|no vuelvo (?:nunca|a casa)|(?:te voy a|voy a) (?:matar|pegar|romper|apunalar|partir)|te (?:mato|rompo|parto|apunalo)|muerete|matate|ojala te mueras|suicidate|cuchillo${gap} (?:mochila|para ti|colegio)|pistola${gap} (?:mochila|colegio|casa)`,
    'quiero morir',
    'quiero leer',
  ),
  row(
    'German',
    `(?:ich )?(?:will|mochte|wunsche|wunschte|wurde gern|denke)${wide} (?:sterben|tot sein|tot|nicht mehr (?:leben|da sein|hier sein|aufwachen)|mich umbringen|verschwinden|nie wieder aufwachen)(?! vor)|mich umbringen|umbringen will|nicht mehr leben|keine? lust mehr zu leben|(?:ich )?(?:ritze|schneide|verletze) mich|(?:papa|mama|vater|mutter|stiefvater|stiefmutter|onkel|tante|bruder|er|sie|jemand|opa|trainer|lehrer|nachbar|freund)${gap} (?:schlagt|haut|verprugelt|tut|fasst|schlug|schlagen|bedroht|sperrt|zwingt|brullt|wurgt|tritt)${gap} (?:mich|mir|uns|meine? (?:mama|mutter|schwester|bruder|papa))|(?:schlagt|haut|verprugelt|bedroht|schlagen|verprugeln|erpressen|erpresst) (?:mich|uns)|fasst mich${gap} an|sperrt mich|tut mir weh|angst${gap} (?:nach hause|heim|vor (?:papa|mama|meinem|ihm|meiner|zuhause))|(?:nicht|nie)${gap} (?:nach hause|heim) ?(?:gehen|will)?(?= |$|[.!])${gap}|(?:nichts|kein(?:e)?)${gap} (?:zu essen|essen|heizung|strom|bett)|hilf mir|helft mir|unser geheimnis|(?:keinem|niemand\\S*|nicht|mama|nix)${gap} (?:sagen|erzahlen|verraten|weitersagen)(?= |$|[.!,])|sag (?:es )?niemand\\S*|ich bin${gap} allein${gap} (?:zu hause|seit|daheim)|(?:will|mochte|schick|schicken|geschickt|fragt nach)${wide} (?:bilder|fotos?|nacktbilder|videos?)${gap}(?: von mir)?|nacktbild\\S*|(?:mann|erwachsener?|fremder?)${wide} (?:treffen|bilder|fotos|geheim\\S*|allein)|(?:hau(?:e)?|renne|laufe?|lauf|gehe)${gap} (?:ab|weg|fort)(?= |$|[.!])|ich (?:stech|steche|bring|bringe|mach|schlag|schlage|hau|prugel)${gap} (?:dich|euch|ihn|sie)${gap} ?(?:ab|um|kalt|tot|fertig|zusammen)|(?:messer|pistole|waffe)${wide} (?:mit|schule|dich|tasche|rucksack)|(?:bring|bringe|nehme?)${gap} (?:messer|waffe)|stirb|bring dich um|geh sterben|verreck\\S*|spring doch|hoffentlich stirbst|ware?st du (?:doch )?tot`,
    'ich will sterben',
    'ich will lesen',
  ),
  row(
    'Polish',
    `(?:chce|chcialbym|chcialabym|wole|mysle o|chcialem|chcialam)${gap} (?:umrzec|sie zabic|zniknac|smierci|nie zyc|zabic)|nie (?:chce|chce juz|mam ochoty)${gap} (?:zyc|tu byc|byc|istniec)|zabije sie|(?:kalecze|tne|rani[ea]) sie|(?:tata|mama|ojciec|matka|ojczym|macocha|wujek|brat|dziadek|trener|pan|ktos|on|ona|oni)${gap} (?:mnie|nas|mi) (?:bija?|dotykaja?|krzywdza?|uderzyl|kopia?|strasza?|grozi|zamyka|bil|pali)|(?:mnie|nas) (?:bija?|bije|bil|dotyka|kopie|krzywdzi|uderzyl|zamyka)|(?:bija?|bije|dotyka|krzywdzi|kopie|zamyka) (?:mnie|nas|mame)|boje sie${gap} (?:wrocic|wracac|isc|do domu|taty|ojca|ojczyma|go|domu)|nie (?:mam|mamy|ma)${gap} (?:jedzenia|jesc|co jesc|ogrzewania|domu)|jestem sama?${gap} (?:w domu|od|calymi)|pomoz(?:cie)? mi|nasza tajemnica|(?:nasz|to) sekret|nie (?:mow|mowic|powiedziec|moge powiedziec)${gap} (?:nikomu|mamie|rodzicom)|zebym? nie mowi\\S*|(?:prosi|chce|wysl\\S*|kaze)${wide} (?:zdjecia|zdjec|zdjecie|fotki|filmik)|(?:uciekam|uciekne|uciec)${gap} (?:z domu|dzis|dzisiaj|jutro|w nocy|z)(?= |$)|(?:zabije|pobije|dorwe|potne|dzgne) (?:cie|go|ja|was)|zdechnij|zabij sie|umrzyj|(?:mam|przyniose) (?:noz|pistolet)|zebys umarl\\S*`,
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
    `(?:olmek|oleyim|intihar|yok olmak)${gap} (?:istiyorum|istedim|edecegim|isterim)|olmek istiyorum|(?:artik )?yasamak istemiyorum|kendimi (?:oldur\\S*|kes\\S*)|kendime zarar|(?:babam|annem|amcam|dayim|abim|dedem|ogretmen|hoca|uvey (?:babam|annem)|biri|adam)${gap} (?:bana|beni|bize|bizi|annemi|kardesimi)${gap} (?:vuruyor|dovuyor|dokunuyor|vurdu|dovdu|dokundu|kilitliyor|yakti|bagiriyor|tehdit)|(?:beni|bizi) (?:dovuyor|doviyor|kilitliyor|dovdu)|bana (?:vuruyor|dokunuyor|vurdu)|eve (?:gitmek|gitmekten|donmek|donmekten) (?:istemiyorum|korkuyorum)|(?:babamdan|annemden|ondan) korkuyorum|yardim edin|(?:evde )?yemek yok|gunlerdir (?:ac|yemek)|(?:foto|fotograf|resim|resmimi|fotografimi)\\S*${gap} (?:istiyor|istedi|gonder\\S*)|kimseye (?:soyleme|soyleyemem|anlatma)|(?:evden|bu gece) kac(?:acagim|iyorum|mak)|seni (?:oldur\\S*|gebert\\S*|dov\\S*)|geber|kendini oldur|(?:sirrimiz|aramizda sir)|vreau sa mor|nu mai vreau sa traiesc|(?:tata|mama|tatal|unchiul)${gap} ma (?:bate|loveste|atinge)|ma bate|ajutati-ma|mi-e frica${gap} acasa|nu avem mancare`,
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
