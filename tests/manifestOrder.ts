// The order in which Office takes the elements of a manifest: Office Add-ins documentation, "How to find the proper order of
// manifest elements", and the sequences of its schema TaskPaneAppVersionOverridesV1_0.xsd. Elements may be left out.

export const MANIFEST_ORDER = [
  "Id",
  "AlternateId",
  "Version",
  "ProviderName",
  "DefaultLocale",
  "DisplayName",
  "Description",
  "IconUrl",
  "HighResolutionIconUrl",
  "SupportUrl",
  "AppDomains",
  "Hosts",
  "Requirements",
  "DefaultSettings",
  "Permissions",
  "Dictionary",
  "VersionOverrides",
  "ExtendedOverrides",
] as const;

export const VERSION_OVERRIDES_ORDER: Readonly<Record<string, readonly string[]>> = {
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources", "WebApplicationInfo", "EquivalentAddins"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  ExtensionPoint: ["Script", "Page", "Metadata", "Namespace", "OfficeTab"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Action: ["TaskpaneId", "SourceLocation"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};
