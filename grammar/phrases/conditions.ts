/** Wind, sky and temperatures. Wind and sky are kept in a few plain words. */
import type { Statement } from "../statement.ts";
import { given, type Phrase, type Said, sure } from "./phrase.ts";

const conditions = (fields: {
  wind?: string;
  sky?: string;
  waterC?: number;
  airC?: number;
}): Statement => ({
  kind: "conditions",
  ...fields,
});

/** First row that is said gives the word that is kept; a row is a list of word rows. */
type Words = readonly [kept: string, said: string][];

const keptWord = (said: Said, words: Words): string | undefined =>
  words.find(([, rows]) =>
    said.says(...rows.split(" | ").map((row) => row.replaceAll("'", ""))),
  )?.[0];

const alternatives = (words: Words): string => words.map(([, said]) => said).join(" | ");

const WIND_MOVES: Words = [
  [
    "dropping",
    "dropping | dropped | dropped off | dropping | dropping off | died down | died | dying down | died off | easing | easing off | eased | eased off | gone down | going down | calming down | calmed down | gone | less wind | backing off | drops | went down",
  ],
  [
    "rising",
    "picked up | picking up | got up | getting up | gone up | got stronger | getting stronger | stronger | strengthening | increasing | increased | building | freshening | freshened | up | picking up a bit | got up a bit | blowing up | kicked up | kicking up | getting worse | picks up | rising",
  ],
  [
    "strong",
    "strong | howling | blowing hard | blowing a gale | blowing a hooley | gale force | really blowing | very strong | blowing | terrible | horrendous",
  ],
  ["gusting", "gusting | gusty | blowing in gusts | swirling"],
  [
    "changed",
    "changed | turned | changed direction | swung | swung round | shifted | gone round | come round | switched | turned round | moved round | changing | backed round",
  ],
  [
    "facing",
    "facing | in my face | into my face | in our faces | in my teeth | blowing into me | blowing in my face",
  ],
  [
    "behind",
    "off my back | behind me | over my back | from behind | on my back | off the back | behind",
  ],
  ["calm", "calm"],
  ["light", "light"],
  ["steady", "steady"],
  ["cold", "cold"],
  ["warm", "warm"],
  ["left to right", "left to right | from the left | off my left | off the left"],
  ["right to left", "right to left | from the right | off my right | off the right"],
  ["across", "across | side on | blowing across | across me"],
];

const WIND_KINDS: Words = [
  ["calm", "no | flat calm no | hardly any | barely any | zero | not much | very little"],
  [
    "light",
    "light | slight | gentle | soft | little bit of | bit of | bit of a | a bit of a | little | a little | a bit of",
  ],
  [
    "strong",
    "strong | big | heavy | stiff | gale force | really strong | very strong | howling | hard | more",
  ],
  ["gusting", "gusty | gusting | swirling"],
  ["steady", "steady | moderate"],
  ["cold", "cold"],
  ["warm", "warm"],
  ["facing", "facing | head"],
  ["behind", "back | following"],
  ["across", "cross | side"],
];

const QUARTERS: Words = [
  ["north-east", "north east | northeast | north easterly | northeasterly"],
  ["north-west", "north west | northwest | north westerly | northwesterly"],
  ["south-east", "south east | southeast | south easterly | southeasterly"],
  ["south-west", "south west | southwest | south westerly | southwesterly"],
  ["north", "north | northerly"],
  ["south", "south | southerly"],
  ["east", "east | easterly"],
  ["west", "west | westerly"],
];

const WIND =
  "wind's | wind | the wind's | the wind | wind is | the wind is | wind has | wind's now | the wind has | breeze | breeze is | breeze's | the breeze | the breeze is | the breeze has | it's got";

export const wind: Phrase = {
  id: "wind",
  patterns: [
    `(${WIND}) [just | really | now | a bit | all | blowing | coming] (${alternatives(WIND_MOVES)}) [to the (${alternatives(QUARTERS)})] [a bit | now | a lot | again | a touch | slightly | completely]`,
    `(${WIND} | it's) [now | just] [gone | swung | turned | gone round | come round | blowing | coming | moved round | changed | backed | veered] [round | around] [to | from | in | into] [the | a] (${alternatives(QUARTERS)}) [now | wind]`,
    `[a | it's | there's a bit of a | a bit of a | there's | got a | very | it's a | now a | nice | getting a | getting | that's a | turning into a] (${alternatives(WIND_KINDS)}) (wind | breeze | breeze on it) [now | again | at all]`,
    `[a | it's | it's a | now a | got a | cold | light | strong] (${alternatives(QUARTERS)}) (wind | breeze) [now]`,
    "[a | it's a | now a | got a | light | strong | cold] (north easterly | north westerly | south easterly | south westerly | northerly | southerly | easterly | westerly) [now]",
    "(very still | gone still | it's still | still now | it's gone still | flat calm | dead calm | it's gone calm | it's gone flat calm | gone calm | it's calm | gone flat calm | it's flat calm | wind free | it's dead calm | calm now | no wind | not a breath of wind) [now]",
    "(getting windy | it's getting windy | it's windy | windy | getting breezy | it's breezy | blowing a gale | it's blowing a gale | it's blowing | getting gusty | come on windy | it's come on windy | gusty | it's got windy | gone windy)",
  ],
  examples: {
    "wind's picked up": [conditions({ wind: "rising" })],
    "wind's gone round to the north": [conditions({ wind: "north" })],
    "wind from the west": [conditions({ wind: "west" })],
    "light wind": [conditions({ wind: "light" })],
    "south westerly wind": [conditions({ wind: "south-west" })],
    "north westerly": [conditions({ wind: "north-west" })],
    "flat calm": [conditions({ wind: "calm" })],
    "it's getting windy": [conditions({ wind: "rising" })],
  },
  states(said) {
    const kept =
      keptWord(said, QUARTERS) ??
      (said.says("windy", "breezy") ? "rising" : undefined) ??
      (said.says("calm", "still", "wind free", "not a breath of wind") ? "calm" : undefined) ??
      keptWord(said, WIND_MOVES) ??
      keptWord(said, WIND_KINDS);
    return kept === undefined ? undefined : sure(conditions({ wind: kept }));
  },
};

const SKY: Words = [
  [
    "dry",
    "dry | rain's stopped | stopped raining | rain has stopped | rain stopped | the rain's stopped | it's stopped raining | rain's gone off | rain's cleared | rain's eased off | rain's easing | stopped spitting | the rain's easing off | rain has eased | the rain has stopped | it's stopped spitting | dried up | it's dry | it's dried up",
  ],
  [
    "heavy rain",
    "heavy rain | hammering down with rain | it's hammering down with rain | pouring | pouring down | it's pouring | it's pouring down | chucking it down | it's chucking it down | hammering down | lashing it down | raining hard | it's raining hard | it's hammering down | heavy shower | raining heavily | it's lashing down | it's tipping it down | tipping down",
  ],
  [
    "drizzle",
    "drizzle | drizzly | drizzle's started | bit drizzly | drizzling | it's drizzling | spitting | it's spitting | light rain | started drizzling | started spitting | a bit of drizzle | it's started spitting | bit of rain | light shower | fine rain | spots of rain",
  ],
  [
    "rain",
    "raining | it's raining | it's started raining | started raining | starting to rain | it's starting to rain | rain's started | rain | rain's come in | the rain's started | rain coming | rain has started | here comes the rain | rain's back | the rain's come | it's come on to rain | rain started | showers | shower coming over | started to rain | it's started to rain",
  ],
  ["sleet", "sleet | sleeting"],
  ["snow", "snow | snowing | it's snowing | hail | hailing | it's hailing"],
  ["thunder", "thunder | thundering | thunder about | lightning | there's thunder"],
  [
    "fog",
    "fog | foggy | mist | misty | fog's come down | fog's lifted | mist's lifting | it's foggy | it's misty",
  ],
  [
    "cloud",
    "sun's gone in | the sun's gone in | sun's gone | clouded over | it's clouded over | clouding over | it's clouding over | gone cloudy | it's gone cloudy | cloudy | it's cloudy | overcast | it's overcast | it's gone overcast | gone overcast | cloud cover | cloud's come over | clouds coming over | gone dull | it's gone dull | dull | grey sky | sun's gone behind a cloud | sun's gone behind the clouds | sun's behind the clouds | gone dark | full cloud | sun gone in | cloud's rolled in | cloud's come in | cloud | it's gone grey | cloudy sky",
  ],
  [
    "clearing",
    "clearing | sky's clearing | cleared | clearing up | brightening up | it's brightening up | clouds clearing | cloud's breaking | it's cleared up | it's clearing | it's brightened up | sky's cleared | clouds are breaking | cloud's cleared | cloud's breaking up | clearing skies | brightened up",
  ],
  [
    "sun",
    "sun | sun's out | the sun's out | sun's come out | the sun's come out | sun out | sunny | it's sunny | bright sunshine | sunshine | bright sun | sun's shining | blue sky | blue skies | clear sky | clear skies | sun's back out | it's gone sunny | sun's back | sun's come back out | gone bright | it's gone bright | full sun | sun's coming out | sun's breaking through | it's bright | bright and sunny | sun's on the water | the sun's back out | sun is out | sun has come out | hot sun",
  ],
];

export const sky: Phrase = {
  id: "sky",
  patterns: [
    `[sky | sky is | sky's] (${alternatives(SKY.slice(0, 6))}) [now | again]`,
    `[sky | sky is | sky's] (${alternatives(SKY.slice(6, 8))}) [now | again]`,
    `[sky | sky is | sky's] (${alternatives(SKY.slice(8))}) [now | again]`,
  ],
  examples: {
    "it's raining": [conditions({ sky: "rain" })],
    "it's foggy": [conditions({ sky: "fog" })],
    "sun's out": [conditions({ sky: "sun" })],
  },
  states(said) {
    const kept = keptWord(said, SKY);
    return kept === undefined ? undefined : sure(conditions({ sky: kept }));
  },
};

const BE =
  "is | at | now | is now | is at | reading | down to | up to | about | temperature | temp | temperature is | temp is | temperature now | temp now | temperature's | temp's | temperature at | temp at | temperature of | temp down to | temp up to | temperature's now | has dropped to | has gone up to | temperature reading";

export const waterTemperature: Phrase = {
  id: "water-temperature",
  patterns: [
    `[the] (water | water's | water temp's | the water's | lake | lake's) [${BE}] (<temperature> | <number>)`,
    "<temperature> [in the | for the | is the | of] (water | water temperature | water temp)",
  ],
  examples: {
    "water eleven degrees": [conditions({ waterC: 11 })],
    "eleven degrees in the water": [conditions({ waterC: 11 })],
    "water temperature is 11": [conditions({ waterC: 11 })],
  },
  states(said) {
    const waterC = said.first("temperature") ?? said.first("number");
    return waterC === undefined
      ? undefined
      : { statements: [conditions({ waterC })], ...unlikely(waterC, 0, 35) };
  },
};

export const airTemperature: Phrase = {
  id: "air-temperature",
  patterns: [
    `[the] (air | air's | the air's | outside | air temp's) [${BE}] (<temperature> | <number>)`,
    "<temperature> [in the | for the | is the | of] (air | air temperature | air temp | outside)",
    "(temperature | temp | temperature's | temp's | temperature is | it's | the temperature's | temperature now | temp is | it's now | the temperature is | temperature's dropped to | temperature's up to) <temperature>",
  ],
  examples: {
    "air eighteen degrees": [conditions({ airC: 18 })],
    "eighteen degrees in the air": [conditions({ airC: 18 })],
    "temperature is minus two": [conditions({ airC: -2 })],
    "air temp 18": [conditions({ airC: 18 })],
  },
  states(said) {
    const airC = said.first("temperature") ?? said.first("number");
    return airC === undefined
      ? undefined
      : { statements: [conditions({ airC })], ...unlikely(airC, -20, 40) };
  },
};

const unlikely = (value: number, least: number, most: number) =>
  given({ doubts: value < least || value > most ? ["an unlikely temperature"] : undefined });
