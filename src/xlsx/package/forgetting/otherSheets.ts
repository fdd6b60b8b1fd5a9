import { relationshipsOf } from "../../parts/relationships";
import { dropEmptyExtensions } from "../besideCells/entryRules";
import type { EditableParts } from "../parts/EditableParts";
import { childrenNamed, elementsOf, elementsThat, removal, type Element } from "../parts/markup";
import { reachable, relationshipPart, removeParts, sweepUnreachable, unname } from "../parts/namedParts";
import { workbookOutline } from "../workbookOutline";
import { forgetPeopleWithoutComments } from "./commenters";
import { forgetFormats } from "./formats";
import { forgetPivotCharts } from "./pivotCharts";
import { forgetRichValues } from "./richValues";

/**
 * What a file may name as a whole and a workbook may name beside its sheets, of which no other sheet's content can be told, or which is looked through
 * by itself. Whatever else there is goes: pictures of the first sheet, the makers' own properties, forms of data, models of data, logs of changes,
 * connections, values handed in by other programs, and what later versions add.
 */
const OF_FILE: ReadonlySet<string> = new Set(["officeDocument", "core-properties", "extended-properties", "origin", "classificationlabels"]);
const OF_WORKBOOK: ReadonlySet<string> = new Set([
  ...["worksheet", "chartsheet", "dialogsheet", "xlMacrosheet", "theme", "styles", "sharedStrings", "calcChain", "vbaProject"],
  ...["pivotCacheDefinition", "slicerCache", "timelineCache", "externalLink", "sheetMetadata", "person", "FeaturePropertyBag"],
  ...["rdRichValue", "rdRichValueStructure", "rdRichValueTypes", "rdArray", "richStyles", "richValueRel", "rdSupportingPropertyBag"],
  ...["rdSupportingPropertyBagStructure", "rdRichValueWebImage"],
]);
/** Of the workbook's own elements and of its extensions, those that say something of other sheets or of parts that go. */
const ELEMENTS_GOING: ReadonlySet<string> = new Set(["webPublishObjects", "smartTagTypes", "customWorkbookViews", "functionGroups"]);
const EXTENSIONS_STAYING: ReadonlySet<string> = new Set([
  ...["workbookPr", "calcFeatures", "slicerCaches", "timelineCacheRefs", "pivotCaches", "timelineCachePivotCaches"],
]);
/** What the properties of a document list of all its sheets (ECMA-376 Part 1, 22.2.2). */
const PROPERTIES_GOING: ReadonlySet<string> = new Set(["HeadingPairs", "TitlesOfParts", "HLinks", "HyperlinksChanged"]);

const LIST_OF_PARTS = "[content_types].xml";

/** Takes out of a file whose other sheets were taken out all that it still keeps of those, so that whoever gets it gets these sheets and nothing else. */
export async function forgetOtherSheets(parts: EditableParts): Promise<void> {
  await forgetPivotCharts(parts);
  const { part } = await workbookOutline(parts);
  await sweepUnreachable(parts, async () => {
    await unnameOthers(parts, "", OF_FILE);
    await unnameOthers(parts, part, OF_WORKBOOK);
    await mendWorkbook(parts);
    await forgetRichValues(parts);
    await forgetPeopleWithoutComments(parts);
  });
  await forgetFormats(parts);
  for (const { type, target } of await relationshipsOf(parts, ""))
    if (type === "extended-properties" && parts.has(target)) {
      const { children } = elementsOf(target, await parts.text(target));
      await parts.edit(target, children.filter(({ name }) => PROPERTIES_GOING.has(name)).map(removal)); // prettier-ignore
    }
  await removeParts(parts, await strayParts(parts));
}

async function unnameOthers(parts: EditableParts, part: string, staying: ReadonlySet<string>): Promise<void> {
  const others = (await relationshipsOf(parts, part)).filter(({ type }) => !staying.has(type));
  if (others.length > 0) await unname(parts, part, new Set(others.map(({ id }) => id)));
}

async function mendWorkbook(parts: EditableParts): Promise<void> {
  const { part, root } = await workbookOutline(parts);
  const related = new Set((await relationshipsOf(parts, part)).map(({ id }) => id));
  const isStaying = (extension: Element): boolean =>
    extension.children.length > 0 &&
    extension.children.every(({ name }) => EXTENSIONS_STAYING.has(name)) &&
    elementsThat(extension, (one) => relationsOf(one).some((id) => !related.has(id))).length === 0;
  const extensions = childrenNamed(root, "extLst").flatMap(({ children }) => children.filter((one) => !isStaying(one)));
  const views = root.children.filter((one) => ELEMENTS_GOING.has(one.name) || elementsThat(one, ({ name }) => name === "absPath").length > 0);
  await parts.edit(part, [...views, ...extensions].map(removal));
  await dropEmptyExtensions(parts, part);
}

/** An id with a prefix, by which an element names a part; one without is another number. */
const relationsOf = ({ attributes }: Element): string[] => Object.keys(attributes).flatMap((name) => (name.endsWith(":id") ? (attributes[name] ?? []) : [])); // prettier-ignore

/** Parts that nothing names: left behind by some program, with whatever they hold. */
async function strayParts(parts: EditableParts): Promise<string[]> {
  const named = await reachable(parts);
  const lists = new Set([...named, ""].map((part) => relationshipPart(part).toLowerCase()));
  return parts.names().filter((name) => name !== LIST_OF_PARTS && !named.has(name) && !lists.has(name));
}
