export const licencesWords = {
  name: "Licences",
  about: "Whose work is in the app, and on what terms.",
} as const;
