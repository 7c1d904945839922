/** Regional forms written the usual way, so that the patterns need not repeat them. */
const FORMS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    un: "one",
    nah: "no",
    naw: "no",
    wi: "with",
    nuther: "another",
    bout: "about",
    nae: "no",
    aboot: "about",
    oot: "out",
    whilst: "while",
    uns: "ones",
    thas: "thats",
    tek: "take",
    tekking: "taking",
    tekkin: "taking",
    puttin: "putting",
    goin: "going",
    feedin: "feeding",
    fishin: "fishing",
    shippin: "shipping",
    droppin: "dropping",
    changin: "changing",
    switchin: "switching",
    mek: "make",
    wor: "was",
    weren: "was",
    gorra: "got a",
    gotta: "got a",
    foulhooked: "foul hooked",
    foulhooker: "foul hooker",
    thirtheen: "thirteen",
    yon: "that",
    summat: "something",
    nowt: "nothing",
    owt: "anything",
    tother: "other",
    em: "them",
    pund: "pound",
    oonce: "ounce",
    tha: "that",
    ye: "you",
    wee: "little",
    bonny: "nice",
    bostin: "nice",
    grand: "nice",
    canny: "nice",
    belting: "nice",
    belter: "nice",
    mint: "nice",
    cushty: "nice",
  }),
);

/** The usual words for one, mostly the word itself. */
export const usualWords = (word: string): string[] => FORMS.get(word)?.split(" ") ?? [word];

/** Before these "me" is "my". */
const OWNED = new Set(
  "total rig line lash net nets depth dinner weight set setup hook hookbait bait pace rate float pole last first second third fourth fifth sixth swim hooklength target keepnet lunch break tackle elastic feed peg limit bag catch distance tally brew tea".split(
    " ",
  ),
);

/** "me rig" is "my rig". */
export const isMine = (word: string, next: string | undefined): boolean =>
  word === "me" && next !== undefined && OWNED.has(next);
