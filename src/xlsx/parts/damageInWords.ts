import { damagedPart, notAWorkbookFile } from "../../problems/files/fileProblems";
import type { DamagedFile } from "./FileParts";

/** What is said of a damaged file: which part of it, where that is known. */
export const damageInWords = ({ part, message }: DamagedFile): string => (part === undefined ? notAWorkbookFile : damagedPart(part, message));
