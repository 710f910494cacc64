/** Each thing that is looked at: what it is called, and what it comes to with what to do. */
type Outcomes = Readonly<Record<string, string>>;

/** Before a job: whether this phone hears, speaks, buzzes and stays awake. */
export const phone = {
  title: "Check this phone",
  intro: "Before the job, where you'll work. It takes half a minute.",
  start: "Check it",
  again: "Check again",
  noScripts: "With scripts off this phone can't listen or speak. Use the buttons.",
  yes: "Yes",
  no: "No",
  locked: "A phone with a locked screen does not listen. Keep it on, or unlock it and press Talk.",
  checks: {
    secure: {
      name: "Address",
      good: "Secure.",
      bad: "Not secure: phones don't listen here. Ask the office for the https address.",
    },
    storage: {
      name: "Storage",
      good: "Keeps what it needs.",
      bad: "Keeps nothing. Leave the private window, or free some space.",
    },
    clock: {
      name: "Clock",
      good: "Right to half a minute.",
      bad: "Off by more than half a minute. Set it to automatic; the job goes by the server's.",
    },
    awake: {
      name: "Screen",
      good: "Stays on by itself.",
      bad: "May go dark. In the phone's settings, let it go dark as late as it can.",
    },
    microphone: {
      name: "Microphone",
      good: "Works.",
      denied: "Not allowed. Allow it for this page in the browser's settings, and check again.",
      none: "None found. Plug in a headset, or use the buttons.",
      bad: "Doesn't give its sound. Close what else uses it, and check again.",
    },
    ear: {
      name: "This phone's own ear",
      waits: "Loading. The first time takes a while.",
      good: "Here, and it stays. It needs no signal, and no sound leaves the phone.",
      prebuilt: "Here, the small one: it hears less. The office can build the better one.",
      bad: "Didn't load. Stand by the truck's Wi-Fi, and check again.",
    },
    word: {
      name: "One word",
      waits: "Say it now:",
      good: "Heard.",
      loud: "Heard, but it's too loud here: press instead. Hold still works.",
      bad: "Not heard. Hold the phone a hand from your mouth, and check again.",
    },
    speaker: {
      name: "Speaker",
      waits: "Did you hear it speak?",
      good: "Heard.",
      bad: "Turn the volume up and silent mode off. Or read the screen.",
      none: "This browser doesn't speak. Read the screen.",
      says: "This is the guide. You should hear me over the generator.",
    },
    buzz: {
      name: "Buzz",
      waits: "Did you feel it?",
      good: "Felt.",
      bad: "Turn vibration on in the phone's settings. Or watch the screen.",
      none: "This phone doesn't buzz for a page. Watch the screen.",
    },
  } satisfies Readonly<Record<string, Outcomes>>,
  ears: {
    title: "Who listens",
    either: "Whichever fits",
    own: "This phone itself",
    browser: "The browser",
    eitherText: "The browser where there is signal, this phone where there is none.",
    ownText: "No signal needed, and no sound leaves the phone. It knows only what can be said at the call.",
    browserText: "Hears more, notes too. It may send the sound to its maker.",
    ask: "Ask the browser to stay on this phone",
    stays: "The browser listens on this phone: no sound leaves it.",
    leaves: "The browser can't: it may send the sound away.",
  },
} as const;
