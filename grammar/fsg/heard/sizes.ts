/** How quantities are heard: kept to what is believable in their slots. */
export const HEARD_SIZES: Readonly<Record<string, string>> = {
  "to-twenty-four":
    "/2/ ten | eleven | /2/ twelve | thirteen | /3/ fourteen | fifteen | /4/ sixteen | seventeen | /4/ eighteen | nineteen | /3/ twenty | /2/ twenty two | twenty four",
  weight:
    "/12/ <pounds> | /4/ (one | /2/ a) pound [/2/ <to-fifteen> [/2/ ounces]] | /4/ [/3/ a | one] pound and (/3/ a half | /2/ a quarter | three quarters) | /2/ half a pound | half pound | /2/ three quarters of a pound | three quarter pound | [a] quarter of a pound | /4/ <two-to-nine> and (/3/ a half | a quarter | three quarter) (/3/ pounds | pound) | /2/ <two-to-nine> pounds and (a half | a quarter | three quarters) | one and (a half | a quarter | three quarter) (/2/ pounds | pound) | /6/ <to-fifteen> (/3/ ounces | ounce) | an ounce | /3/ <to-nine> point <digit> (/3/ kilos | kilograms) | /2/ (/2/ a | one) kilo [and a half | <hundreds>] | /2/ <two-to-nine> kilos | half a kilo | kilo and a half | one and a half kilos | /3/ <hundreds> grams | (twelve | fifteen) hundred grams",
  pounds:
    "/8/ <two-to-nine> (/3/ pounds | /2/ pound) [/2/ <to-fifteen> | <to-fifteen> (/3/ ounces | ounce)] | /3/ <teens> (/3/ pounds | pound) [<to-fifteen> [ounces]] | twenty <digit> pounds",
  hundreds: "<two-to-nine> hundred | a hundred | a hundred and fifty | two hundred and fifty",
  "to-nine": "/2/ one | <two-to-nine>",
  "weight-of":
    "/6/ <two-to-twenty> pound [/2/ <to-fifteen> | <to-fifteen> ounce] | /2/ one pound [<to-fifteen>] | /3/ pound and a half | pound and (a quarter | three quarters) | /2/ pound | /3/ <two-to-nine> and (/2/ a half | a quarter | three quarter) pound | one and (a half | three quarter) pound | /2/ half pound | quarter pound | three quarter pound | /4/ <to-fifteen> ounce | /2/ <to-nine> point <digit> kilo | <hundreds> gram | kilo [and a half] | <two-to-nine> kilo | ounce",
  length:
    "/6/ <tens> [/2/ <digit>] (/4/ centimetres | centimetre) | /4/ <inch-count> inches | <inch-count> and (/2/ a half | a quarter) inches | (a | two | one) foot [six | and a half] [long] | half a metre | a metre",
  "length-of":
    "/3/ <tens> [/2/ <digit>] centimetre | /2/ <inch-count> inch | <inch-count> and a (half | quarter) inch",
  "inch-count":
    "/3/ <to-fifteen> | /2/ sixteen | seventeen | /2/ eighteen | nineteen | /2/ twenty | twenty two | twenty four",
  "short-length":
    "/8/ (/2/ five | /4/ ten | /2/ fifteen | /3/ twenty | twenty five | /2/ thirty | thirty five | /2/ forty | fifty) (/4/ centimetres | centimetre) | /5/ (/2/ an inch | one inch | another inch | /4/ <two-to-nine> inches | /2/ ten inches | twelve inches | eighteen inches | [a] couple of inches | six inch) | /3/ (/3/ a foot | another foot | half a foot | /2/ half a metre | a metre | two foot | two feet | one foot)",
  "depth-length":
    "/4/ <tens> [/2/ five] (/4/ centimetres | centimetre) | /2/ half a metre | /4/ (a | one) metre [/2/ <tens> | and a half | <tens> five] | /2/ two metres | one point <digit> metres | /4/ <two-to-nine> (/2/ foot | feet) [/2/ six | <to-eleven>] | <two-to-nine> and a half (foot | feet) | a foot [and a half] | one foot six | /2/ eighteen inches | <two-to-twenty> inches | twenty four inches | two and a half metres | three metres | (a | one) hundred and twenty centimetres",
  metres:
    "/6/ <two-to-twenty> metres | /2/ <two-to-nine> and a half metres | /2/ (eleven | thirteen | fourteen | ten | twelve) and a half metres | (eleven | thirteen | fourteen) point five metres",
  duration:
    "/6/ <two-to-twenty> minutes | /2/ thirty minutes | a minute and a half | one and a half minutes | /2/ half an hour | an hour | thirty seconds | (sixty | ninety) seconds | a quarter of an hour | sixty minutes",
  text: "feed | check the depth | have a drink",
};
