/** Words that carry nothing here; they are passed over wherever they stand. */
const FILLERS: ReadonlySet<string> = new Set(
  (
    "oh ooh ow eh aw och well okay ok yeah yep yes aye yup right then please " +
    "ta cheers just now there and also basically bloody flipping blooming blimey crikey anyway " +
    "alright really very quite fairly pretty definitely honestly literally here t ar gor yer mate bruv bro lol innit mush pal boyo butt kindly unfortunately obviously simply only exactly safely ***"
  ).split(" "),
);

/** Only at the beginning of a line; elsewhere they mean something ("so far"). */
const OPENERS: ReadonlySet<string> = new Set(["so", "like", "look"]);

export const isFiller = (word: string): boolean => FILLERS.has(word);

export const isOpener = (word: string): boolean => OPENERS.has(word);
