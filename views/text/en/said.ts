import type { Command } from "../../../machines/install/commands.ts";
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
    case "carryOn":
      return "Carry on";
    case "answer":
      return valueText(command.value);
    case "waive":
      return `Left, because ${command.because}`;
    case "makeSafe":
      return "Make safe";
    case "standDown":
      return `Stand down, because ${command.because}`;
    case "note":
      return `Note: ${command.text}`;
    case "reading": {
      const { reading } = command;
      return reading.of === "thunder"
        ? "Thunder heard"
        : `Wind ${reading.mph} mph${reading.gustMph === null ? "" : ` gusting ${reading.gustMph}`}`;
    }
    case "amend":
      return `Change the plan, because ${command.because}`;
    case "agree":
      return "Agreed";
    case "disagree":
      return "Not agreed";
  }
}
