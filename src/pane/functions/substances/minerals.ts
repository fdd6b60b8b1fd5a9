import type { Substance } from "./Substance";

const mineral = (formula: string, residue: string, en: string, others: Pick<Substance, "de" | "fr" | "es" | "takenAs"> = {}): Substance => ({
  formula,
  kind: "mineral",
  residue,
  en,
  ...others,
});

/** Carbonates, hydroxides and clays, and what calcining leaves of them. */
export const minerals: readonly Substance[] = [
  mineral(
    "CaCO3",
    "CaO",
    "limestone, calcium carbonate, chalk, calcite, marble, whiting, aragonite, eggshell, egg shell, seashell, oyster shell, carbonate of lime, precipitated chalk",
    {
      de: "Kalkstein, Calciumcarbonat, Kreide, Marmor, Kalk",
      fr: "calcaire, carbonate de calcium, craie, marbre",
      es: "caliza, piedra caliza, carbonato de calcio, tiza, mármol",
    },
  ),
  mineral("MgCO3", "MgO", "magnesite, magnesium carbonate", { de: "Magnesit", fr: "magnésite", es: "magnesita" }),
  mineral("CaMg(CO3)2", "CaO·MgO", "dolomite, dolomitic limestone, calcium magnesium carbonate", { de: "Dolomit", fr: "dolomie", es: "dolomita" }),
  mineral("FeCO3", "Fe2O3", "siderite, iron carbonate, ferrous carbonate, spathic iron", {
    de: "Siderit, Spateisenstein",
    fr: "sidérite",
    es: "siderita",
  }),
  mineral("MnCO3", "Mn3O4", "rhodochrosite, manganese carbonate", { de: "Manganspat" }),
  mineral("ZnCO3", "ZnO", "smithsonite, zinc carbonate, zinc spar", { de: "Zinkspat" }),
  mineral("PbCO3", "PbO", "cerussite, lead carbonate"),
  mineral("Pb3(CO3)2(OH)2", "PbO", "white lead, basic lead carbonate", { de: "Bleiweiß", fr: "blanc de plomb", es: "albayalde" }),
  mineral("SrCO3", "SrO", "strontianite, strontium carbonate"),
  mineral("BaCO3", "BaO", "witherite, barium carbonate"),
  mineral("CoCO3", "Co3O4", "cobalt carbonate"),
  mineral("NiCO3", "NiO", "nickel carbonate"),
  mineral("CdCO3", "CdO", "cadmium carbonate, otavite"),
  mineral("Ag2CO3", "Ag", "silver carbonate"),
  mineral("Cu2CO3(OH)2", "CuO", "malachite, copper carbonate, basic copper carbonate, verdigris patina", { de: "Malachit, Kupfercarbonat" }),
  mineral("Cu3(CO3)2(OH)2", "CuO", "azurite", { de: "Azurit" }),
  mineral("NaHCO3", "Na2CO3", "baking soda, bicarbonate of soda, sodium bicarbonate, sodium hydrogen carbonate, bicarb, bread soda, nahcolite", {
    de: "Natron, Natriumhydrogencarbonat, Backsoda",
    fr: "bicarbonate de soude, bicarbonate de sodium",
    es: "bicarbonato de sodio, bicarbonato",
  }),
  mineral("KHCO3", "K2CO3", "potassium bicarbonate, potassium hydrogen carbonate"),
  mineral("Na3H(CO3)2·2H2O", "Na2CO3", "trona, sodium sesquicarbonate"),
  mineral("Mg5(CO3)4(OH)2·4H2O", "MgO", "hydromagnesite, magnesia alba, light magnesium carbonate, climbing chalk, gym chalk"),
  mineral("Ca(OH)2", "CaO", "slaked lime, hydrated lime, calcium hydroxide, builders lime, pickling lime, milk of lime, limewater, portlandite", {
    de: "Löschkalk, gelöschter Kalk, Calciumhydroxid",
    fr: "chaux éteinte, hydroxyde de calcium",
    es: "cal apagada, hidróxido de calcio",
  }),
  mineral("Mg(OH)2", "MgO", "brucite, magnesium hydroxide, milk of magnesia"),
  mineral("Al(OH)3", "Al2O3", "gibbsite, aluminium hydroxide, aluminum hydroxide, alumina hydrate, alumina trihydrate, hydrargillite"),
  mineral("AlO(OH)", "Al2O3", "boehmite, diaspore"),
  mineral("FeO(OH)", "Fe2O3", "goethite, limonite, yellow ochre, yellow ocher, bog iron, lepidocrocite", {
    de: "Goethit, Ocker",
    fr: "ocre",
    es: "ocre",
  }),
  mineral("Fe(OH)3", "Fe2O3", "iron hydroxide, ferric hydroxide"),
  mineral("Cu(OH)2", "CuO", "copper hydroxide, cupric hydroxide"),
  mineral("Zn(OH)2", "ZnO", "zinc hydroxide"),
  mineral("Ni(OH)2", "NiO", "nickel hydroxide"),
  mineral("Al2Si2O5(OH)4", "Al2Si2O7", "kaolin, china clay, kaolinite, halloysite, pipe clay", {
    de: "Kaolin, Porzellanerde, Kaolinit",
    fr: "kaolin, kaolinite",
    es: "caolín, caolinita",
  }),
  mineral("CaC2O4·H2O", "CaO", "calcium oxalate, calcium oxalate monohydrate, whewellite", {
    de: "Calciumoxalat",
    fr: "oxalate de calcium",
    es: "oxalato de calcio",
  }),
  mineral("MgC2O4·2H2O", "MgO", "magnesium oxalate"),
  mineral("FeC2O4·2H2O", "Fe2O3", "iron oxalate, ferrous oxalate"),
  mineral("Ca(CH3COO)2", "CaO", "calcium acetate"),
  mineral("H3BO3", "B2O3", "boric acid, boracic acid, sassolite", { de: "Borsäure", fr: "acide borique", es: "ácido bórico" }),
];
