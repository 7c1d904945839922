/** What must be seen on whichever screen is open. */
export const noticeWords = {
  storing: {
    label: "Storing",
    unsaved: (count: number) => `${count} ${count === 1 ? "entry is" : "entries are"} not stored.`,
    unread: "What is stored cannot be read.",
    damaged: (count: number) =>
      `${count} stored ${count === 1 ? "record could not be read and was" : "records could not be read and were"} set aside. The rest is whole; an export takes them along.`,
  },
  sample: {
    label: "Sample session",
    playing: (done: number, of: number) => `Sample session: phrase ${done} of ${of}`,
    over: "That was the sample session.",
    leave: "Leave the sample",
  },
  update: {
    label: "New version",
    isHere: "A new version is here.",
    take: "Take it now",
  },
} as const;
