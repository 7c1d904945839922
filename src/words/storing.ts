/** What went wrong with storing, and what to do about it. */
export const storingWords = {
  quota:
    "The phone has no room left for the log. Free some space; until then, export what is here.",
  refused:
    "This browser does not let the log be stored. Leave private browsing, or allow this site to store data.",
  closed: "The phone has closed the log. It is tried again; export if it goes on.",
  blocked:
    "Another tab holds the log in a different version. Close the other tabs; if that does not help, export what is here before you load the page again.",
  aborted: "The browser broke off storing. It is tried again; export if it goes on.",
  slow: "The phone takes long to store. It is tried again; export if it goes on.",
  unknown: "The log could not be stored. It is tried again; export if it goes on.",
} as const;
