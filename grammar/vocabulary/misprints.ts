/**
 * What recognisers print for the trade's words: near-homophones, from memory. Tried only on words
 * that no phrase took, and only where the whole line then makes sense.
 */

/** What is meant, and what is printed for it, separated by bars. */
const PRINTED: Readonly<Record<string, string>> = {
  one: "won | 1",
  two: "to | too | tu | 2",
  "what have i got": "what of i got | what have eye got | what of eye got | what i got",
  "six mil": "six ml | 6 ml | six mill",
  "four mil": "four ml | 4 ml",
  "eight mil": "eight ml | 8 ml",
  three: "free | tree | thee",
  four: "for | fore | fall | foe",
  five: "fife | hive",
  six: "sicks | sex | sics",
  seven: "heaven",
  eight: "ate | hate | aight",
  nine: "nein | line | mine",
  ten: "tin | tan | den",
  eleven: "a leaven | leaven | a eleven",
  twice: "twise | twines | price",
  twelve: "shelve",
  fourteen: "for teen | four teen | fore teen",
  fifteen: "fif teen | fit teen",
  sixteen: "six teen | sick steen",
  eighteen: "ate teen | eight teen | aid teen",
  twenty: "plenty",
  thirty: "dirty | thirsty",
  forty: "for tea | four tea | fought he | faulty",
  fifty: "fifth tea | nifty",
  "half a": "have a | halve a | hoff a | harf a | off a",
  half: "hoff | halve | harf | have",
  quarter: "quota | corner | porter",
  quarters: "quotas | quarter's of | quota",
  "three quarters of a": "three quarters of the",
  "pound and a half":
    "pounded a half | pound an a half | pound and a hoff | pound in a half | pound an a half | pound and a half a | pounds and half",
  pounds: "found | pants | pains | ponds | pond | pound's",
  pound: "found | pounded",
  ounces: "announces | bounces | trounces | answers | hances",
  ounce: "announce | bounce",
  kilos: "killers | key lows | keelos | kilo's | kellogs",
  grams: "grahams | gramps | crams",
  "point two": "point to | point too",
  "point four": "point for",
  "point eight": "point ate",
  inches: "hinges | itches | in cheese",
  "of a": "of the",
  fish: "phish | fisch | fishy",
  carp: "carb | cop | cart | card | crap | kart | cup | cap | carpet | cup | car | carve | harp | calp | corp",
  "carp two": "carpet to",
  "carp six": "carps sicks",
  f1: "f. 1 | effort | ef one | ef 1 | f won | formula 1 | formula one | effone | eff 1 | if one | s one | have one | f 1 | ft one | half one | effie one | fun | f11",
  tench:
    "trench | tent | stench | 10 ch | tenth | tensh | bench | drench | tense | tank | tents | french | ten ch | dench | wrench | finch | stanch",
  skimmer:
    "skinner | swimmer | scimmer | skimma | skimming | simmer | schemer | shimmer | scanner | skim her | glimmer",
  skimmers: "skinners | swimmers | skim as | simmers | schemers",
  roach:
    "coach | rhodes | approach | road | roache | broach | roads | roche | rogue | poach | reach | rouge | row ch | brooch",
  bream:
    "brim | cream | dream | breen | breem | green | bring | brain | bleam | breeme | stream | brean | beam | brene",
  perch:
    "church | purge | purch | birch | porch | search | perks | pouch | percher | lurch | merch | perched",
  rudd: "mud | rud | ruddy | rod | rut | rub | rood | bud | red",
  crucian:
    "crucial | crushing | croatian | crew sian | cru shun | crew shun | crushin | cruising | russian | crucien | crew shan | krusian | crew shin | creation | crusian | crewshan | cushion",
  "crucian carp": "crucian cart | crucian card",
  barbel:
    "barber | barbell | barbells | bar bell | barbie | marble | barbelle | babel | bubble | garble",
  chub: "chubb | job | chop | chubby | tub | cub | jub | shrub | chum | club",
  ide: "id | hide | eyed | aid | eye'd | ied | hyde | ides | eyed",
  gudgeon:
    "dungeon | gudgen | gudgin | good john | gudging | budgen | judging | bludgeon | budgie | cudgel | gudge in",
  hybrid: "high bread | hi brid | hi bread | hybride | high breed | high bred | hybrids",
  eel: "heel | ill | eels | yield | wheel",
  zander: "sander | xander | sandra | zanda | xanda | sanders | zandar | gander",
  pike: "pipe | bike | psych | hike | spike | pyke | pikes",
  trout: "trowt | trump | trough | shout | drought | trouts",
  mirror: "mira | mirrored | miller | nearer",
  common: "comment | coming | cotton | commons",
  pellet:
    "pallet | palate | palette | pelet | pallett | pelett | pilot | bullet | helmet | pellett | prelate",
  pellets: "pallets | palates | palettes | pelets | bullets | pilots | pellet's",
  maggot: "maggie | magnet | magotte | faggot | magget",
  maggots: "magnets | maggets | maggies | maggot's",
  caster: "cast her | castor | custer | casta | casting | cast a | faster | cursor | castle",
  worm: "warm | word | wurm | wormed | worn | swarm",
  corn: "con | horn | corner | cone | call on | born",
  bread: "bred | bed | breath | red",
  meat: "meet | mete | meant",
  "luncheon meat": "luncheon meet | lunch and meat",
  paste: "paced | pace | taste | past | pasted | pays",
  pinkie: "pinky's | pink he | pinking",
  hemp: "hemmed | help | hem | hemps",
  wafter: "rafter | waft her | waffle | wafer | after | wharf to",
  groundbait: "ground bate | ground bay | grand bait | ground debate | groundbate",
  "fifty grams of pellet": "50 gram a pellet",
  "grams of": "gram a | grammar",
  feed: "fees | feet in | feeder",
  feeding: "feeling | seeding | feeding's | bleeding",
  fed: "said | fared | feds",
  potted: "putted | spotted | plotted | part it | pottage",
  "potted in": "pot it in | part it in | potted hin",
  "rig's in": "ricks in | rigs hin | brigs in | wigs in | digs in",
  rig: "rick | rigged | brig | reg | rigg | wig | ring | rake | trig | gig | big | dig | rich",
  hook: "hoop | hawk | hooked | hock | huck | book | look | hug",
  size: "sighs | sized | sides | sise | side",
  "hook pulled":
    "hook pooled | hooked pulled | look pulled | hook polled | hook pool | hook bold | who pulled | hook pulls | hook paul | book pulled | hook pull it",
  "snapped me": "snap me | snapped me of | snapped knee | snapped knee | nap me",
  snapped: "snap | snaps | napped | slapped",
  "foul hooked":
    "fowl hooked | fall hooked | file hooked | full hooked | foul hook | fowl hook | foul looked | foul hoped | vowel hooked | foul booked | powell hooked",
  lost: "last | loss | cost | lust | frost",
  "dropped off": "drop toff | drop off | dropped of | drop of | dropt off",
  "off at the net": "off of the net | of at the net | off the net",
  "at the net": "of the net | at the nett | at then net | of the net",
  missed: "mist | midst | missy | miss",
  "missed one": "mist one | mist won | missed 1 | miss one | mr one",
  knock: "nock | lock | not | knot",
  liner: "linear | lina | liners | line her | lino | lineup",
  in: "inn",
  "per hour": "per our",
  "an hour": "an our | a nower",
  "in weight": "in wait",
  "by hand": "buy hand",
  "by the fish": "buy the fish",
  "new net": "knew net | new knit | nu net | knew knit | new neck | new nit | new neat",
  net: "nett | knit | neck | nit | met | next",
  "wind's": "wins | winds' | wings | whens",
  "sun's out": "sons out | son's out | sums out | suns owt",
  "sun's": "sons | son's | sums",
  "make that": "mate that | make fat | may that | maked that | made that | make the | makes that",
  "scratch that":
    "scratched that | scratch at | scratch the | scratch hat | scratch fat | cratch that | scratching that",
  "last one": "last 1 | last won | lost one",
  "the last one": "the last 1 | the last won",
  "take out": "takeout | take owt | take our",
  which: "witch | wish",
  depth: "death | debt | deaf | depths | deft | dept | beth | debts",
  bait: "bate | beit | bate's | bates | bay",
  best: "bess | breast | test",
  "how's the net": "house the net | how's the nett | houses the net | how's the neck",
  "how's": "house | hours",
  start: "star | starts | stark | stats",
  session: "cession | sessions | secession | section",
  "taking a": "take in a | take king a | taken a",
  break: "brake | brick | bake | brakes",
  "nudge me": "judge me | nudged me | nudge knee | nudging me | fudge me | nudge be",
  nudging: "judging | nudgin | fudging",
  shallower:
    "shallow her | shallow a | shallow or | shallow were | shell over | shallow ah | shower | shadow a",
  deeper: "deep her | deep a | keeper | dipper | deepa | deep or | deep ah",
  "out to": "out too | out 2 | out two | owt to",
  lash: "lush | flash | slash | lashes | latch | rash | lass",
  metres: "meet as | meters | meetings | matters",
  bite: "byte | bight | bites | bike",
  "all out": "all owt | all our | hall out | allout",
  "all in": "all inn | allin | hall in",
  feet: "feat",
  hooklength: "hook lent | hook lenth | hook links | hook lengths",
};

/** So unlike anything else that they are understood with nothing beside them. */
const ALONE: ReadonlySet<string> = new Set(["byte", "bight", "linear", "line her", "liner"]);

export interface Misprint {
  printed: readonly string[];
  meant: readonly string[];
}

/** Misprints by their first word, longest first. */
export const MISPRINTS: ReadonlyMap<string, readonly Misprint[]> = byFirstWord();

/** The single words that misprints stand for. */
export const TRADE_WORDS: readonly string[] = Object.keys(PRINTED).filter(
  (meant) => !meant.includes(" "),
);

/** Every word that takes part in a misprint. */
export const SUSPECTS: ReadonlySet<string> = new Set(
  [...MISPRINTS.values()].flatMap((rows) => rows.flatMap(({ printed }) => printed)),
);

export const standsAlone = (words: readonly string[]): boolean => ALONE.has(words.join(" "));

function byFirstWord(): ReadonlyMap<string, readonly Misprint[]> {
  const table = new Map<string, Misprint[]>();
  for (const [meant, list] of Object.entries(PRINTED)) {
    for (const row of list.split(" | ")) {
      const printed = row.replace(/['’.]/g, "").split(" ");
      const first = printed[0] as string;
      const misprint = { printed, meant: meant.replace(/['’]/g, "").split(" ") };
      table.set(first, [...(table.get(first) ?? []), misprint]);
    }
  }
  for (const rows of table.values()) rows.sort((a, b) => b.printed.length - a.printed.length);
  return table;
}
