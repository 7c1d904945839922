/**
 * How quantities are spoken, in JSGF notation: for the sentences that are sampled from the grammar
 * and for a recogniser that is bound to it. Kept to the sizes that are said of each; the reader
 * itself reads far more.
 */
const DIGITS = "one | two | three | four | five | six | seven | eight | nine";
const TEENS = "ten | eleven | twelve | thirteen | fourteen | fifteen";
const TENS = "twenty | thirty | forty | fifty | sixty | seventy | eighty | ninety";

export const QUANTITY_RULES: Readonly<Record<string, string>> = {
  digit: DIGITS,
  "two-to-nine": "two | three | four | five | six | seven | eight | nine",
  "to-fifteen": `${DIGITS} | ${TEENS}`,
  "to-eleven": `${DIGITS} | ten | eleven`,
  "two-to-twenty":
    "<two-to-nine> | ten | eleven | twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty",
  tens: TENS,
  "to-ninety-nine": "<to-fifteen> | sixteen | seventeen | eighteen | nineteen | <tens> [<digit>]",
  fraction: "a half | a quarter | three quarters",
  pounds: "<two-to-twenty> (pound | pounds) [<to-fifteen> [ounces]]",
  weight:
    "<pounds> | one pound [<to-fifteen>] | a pound [<to-fifteen> | and <fraction>] | half a pound | three quarters of a pound | a quarter of a pound | <two-to-nine> and <fraction> pounds | <to-fifteen> ounces | an ounce | <two-to-nine> point <digit> kilos | a kilo [and a half] | half a kilo | <two-to-nine> hundred grams | fifty grams | a hundred grams | a <two-to-twenty> pounder",
  length:
    "<tens> [<digit>] (centimetre | centimetres) | <to-fifteen> (inch | inches) | <two-to-twenty> and <fraction> inches | an inch | <two-to-nine> (foot | feet) [<to-eleven>] | a foot [and a half] | half a metre | a metre [and a half | <tens>] | one metre <tens> | <two-to-twenty> metres | <two-to-twenty> and a half metres | one point <digit> metres",
  metres:
    "<two-to-twenty> metres | <two-to-nine> and a half metres | eleven and a half metres | thirteen and a half metres",
  few: "two | three | a couple of",
  temperature: "[minus] <to-fifteen> [point five] degrees | <tens> [<digit>] degrees",
  duration:
    "<two-to-twenty> minutes | thirty minutes | a minute [and a half] | half an hour | an hour | <tens> seconds | a quarter of an hour",
  number: "<two-to-twenty>",
  count: "a couple of | a brace of | half a dozen | a dozen",
  ordinal: "second | third | fourth | fifth | sixth",
};
