import type { VoiceStatus } from "../../voice/status.ts";

/** What the page says by itself, in the browser: it goes along with every page, as data. */
export const client = {
  hold: "HOLD",
  justMoved: "The call has just moved. Look, and press again.",
  notSent: "Not sent. Press again, or shout.",
  offline: "No contact with the server. This screen can't go on.",
  tooLong: "That was too long to be an answer. Say it in a few words.",
  goesDark: "This phone won't keep the screen on: it may go dark.",
  listen: "Listen all the time",
  stopListening: "Stop listening",
  speak: "Speak aloud",
  beQuiet: "Be quiet",
  status: {
    off: "Not listening.",
    starting: "Starting to listen.",
    listening: "Listening.",
    talking: "Listening: speak now.",
    none: "This browser can't listen. Use the buttons.",
    insecure: "Listening needs an https address. Use the buttons.",
    silent: "The browser won't start listening. Use the buttons.",
    denied: "The microphone is not allowed here. Allow it in the browser's settings, or use the buttons.",
    noMicrophone: "No microphone was found. Use the buttons.",
    network: "Listening needs a network, and there is none. Use the buttons.",
    keepsStopping: "Listening keeps stopping. Hold Talk while you speak, or use the buttons.",
    language: "This browser can't listen in English. Use the buttons.",
  } satisfies Record<VoiceStatus, string>,
} as const;
