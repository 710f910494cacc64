/** How listening stands. */
export type VoiceStatus =
  | "off"
  | "starting"
  | "listening"
  | "talking"
  | "none"
  | "insecure"
  | "silent"
  | "denied"
  | "noMicrophone"
  | "network"
  | "keepsStopping"
  | "language"
  | "notHere"
  | "filesMissing"
  | "filesBroken"
  | "engineFailed";
