/** Sending a session on: what goes out, and what came of it. */
export const passOnWords = {
  title: "Pass it on",
  about: "What you see here is what goes out, and nothing else.",
  water: "Name the water",
  peg: "Name the peg",
  notes: "With my notes",
  as: "As",
  forms: { text: "Text", picture: "Picture", link: "Link", print: "Paper" },
  text: { share: "Share the text", subject: "A session on the bank" },
  picture: {
    drawing: "Drawing the picture…",
    share: "Share the picture",
    alt: (text: string) => `The picture that goes out. It says: ${text}`,
    failed: "This browser could not draw the picture. Send the text or the link instead.",
  },
  card: {
    fish: (count: number) => `${count} fish`,
    asSpoken: (count: number, unweighed: number) =>
      `${count} fish${unweighed > 0 ? `, ${unweighed} without a weight` : ""}; weight as spoken`,
    more: (lines: number) => `and ${lines} more`,
    by: "Pegscribe",
  },
  link: {
    making: "Making the link…",
    about:
      "The link holds the session itself. Whoever has it can look at it, without an account; it is stored nowhere else. What was heard is never in it.",
    eachFish: "With each fish and its time",
    length: (letters: string) => `${letters} letters long.`,
    share: "Share the link",
    shareFile: "Share it as a file",
    tooLong: (letters: string, most: string) =>
      `With ${letters} letters the link is too long for a message (${most} at the most), so it goes as a file, which is opened under Files. Without each fish it would be a short link.`,
    qr: "The same link, for another phone’s camera",
    noQr: "Too long for a QR code. Leave out each fish, and it fits.",
    noQrAtAll: "Too long for a QR code. Leave out the notes, and it fits.",
    seen: "What it shows",
    failed:
      "No link could be made of this session. Send the text or the picture, or its log as a file.",
    subject: "A session on the bank",
  },
  print: {
    about: "One or two pages of A4, black on white. The phone shows them before they are printed.",
    print: "Print it",
  },
  files: "Keep, move or take in the whole log",
  outcomes: {
    shared: "Handed over.",
    saved: "Saved among this phone’s downloads.",
    copied: "Copied: paste it into a message.",
    cancelled: "Not sent.",
    failed: "This browser would neither send, save nor copy it.",
  },
} as const;
