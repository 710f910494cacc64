import type { BindingIntent, Command } from "../../../machines/install/commands.ts";
import { valueText } from "./limits.ts";

/** A command that was pressed or sent, as it reads in the thread. */
export function saidText(command: Command): string {
  switch (command.type) {
    case "next":
      return "Next";
    case "back":
      return "Back one";
    case "hold":
      return "HOLD";
    case "pause":
      return "Wait";
    case "readBack":
      return intentText(command.intent);
    case "correct":
      return "Correct";
    case "wrong":
      return "Wrong";
    case "carryOn":
      return "Carry on";
    case "answer":
    case "waive":
    case "standDown":
    case "reading":
      return intentText(command);
    case "makeSafe":
      return "Make safe";
    case "note":
      return `Note: ${command.text}`;
    case "amend":
      return `Change the plan, because ${command.because}`;
    case "agree":
      return "Agreed";
    case "disagree":
      return "Not agreed";
  }
}

/** What binds, as it is read back and as it stands in the record. */
export function intentText(ask: BindingIntent): string {
  switch (ask.type) {
    case "answer":
      return valueText(ask.value);
    case "waive":
      return `Left, because ${ask.because}`;
    case "standDown":
      return `Stand down, because ${ask.because}`;
    case "reading": {
      const { reading } = ask;
      return reading.kind === "thunder"
        ? "Thunder heard"
        : `Wind ${reading.mph} mph${reading.gustMph === null ? "" : ` gusting ${reading.gustMph} mph`}`;
    }
  }
}
