import type { Substance } from "./Substance";

const hydrate = (salt: string, water: string, en: string, others: Pick<Substance, "de" | "fr" | "es"> = {}): Substance => ({
  formula: `${salt}·${water === "1" ? "" : water}H2O`,
  kind: "hydrate",
  residue: salt,
  en,
  ...others,
});

/** Salts with crystal water under the name they are sold by; "anhydrous" before a name gives the salt without its water. */
export const hydrates: readonly Substance[] = [
  hydrate(
    "CuSO4",
    "5",
    "bluestone, blue vitriol, copper sulphate, copper sulfate, cupric sulfate, copper sulfate pentahydrate, chalcanthite, blue copperas",
    {
      de: "Kupfersulfat, Kupfervitriol, Blaustein",
      fr: "sulfate de cuivre, vitriol bleu",
      es: "sulfato de cobre, vitriolo azul",
    },
  ),
  hydrate("CaSO4", "2", "gypsum, calcium sulphate dihydrate, calcium sulfate, alabaster, selenite, terra alba, land plaster", {
    de: "Gips",
    fr: "gypse",
    es: "yeso",
  }),
  hydrate("CaSO4", "0.5", "plaster of Paris, bassanite, hemihydrate plaster, calcium sulfate hemihydrate, casting plaster, pottery plaster, stucco", {
    de: "Stuckgips, Modellgips",
    fr: "plâtre",
    es: "escayola",
  }),
  hydrate("MgSO4", "7", "epsom salt, epsom salts, epsomite, bitter salt, magnesium sulphate, magnesium sulfate, magnesium sulfate heptahydrate", {
    de: "Bittersalz, Magnesiumsulfat",
    fr: "sel d'Epsom, sulfate de magnésium",
    es: "sal de Epsom, sulfato de magnesio",
  }),
  hydrate("MgSO4", "1", "kieserite", { de: "Kieserit" }),
  hydrate("Na2CO3", "10", "washing soda, soda crystals, sal soda, sodium carbonate decahydrate", {
    de: "Kristallsoda, Waschsoda",
    fr: "cristaux de soude",
    es: "sosa de lavar",
  }),
  hydrate("Na2CO3", "1", "sodium carbonate monohydrate, thermonatrite"),
  hydrate("Na2SO4", "10", "Glauber's salt, glauber salt, mirabilite, sodium sulphate decahydrate", {
    de: "Glaubersalz",
    fr: "sel de Glauber",
    es: "sal de Glauber",
  }),
  hydrate("Na2B4O7", "10", "borax, sodium tetraborate, sodium borate, tincal", { de: "Borax", fr: "borax", es: "bórax" }),
  hydrate("FeSO4", "7", "green vitriol, copperas, iron sulphate, iron sulfate, ferrous sulphate, ferrous sulfate, melanterite", {
    de: "Eisensulfat, Eisenvitriol",
    fr: "sulfate de fer",
    es: "sulfato de hierro",
  }),
  hydrate("ZnSO4", "7", "white vitriol, zinc sulphate, zinc sulfate, zinc sulfate heptahydrate, goslarite", {
    de: "Zinksulfat",
    fr: "sulfate de zinc",
  }),
  hydrate("MnSO4", "1", "manganese sulphate, manganese sulfate"),
  hydrate("NiSO4", "6", "nickel sulphate, nickel sulfate"),
  hydrate("CoCl2", "6", "cobalt chloride, cobaltous chloride", { de: "Cobaltchlorid", fr: "chlorure de cobalt" }),
  hydrate("CoSO4", "7", "cobalt sulphate, cobalt sulfate"),
  hydrate("CaCl2", "2", "calcium chloride dihydrate, ice melt flakes", { de: "Calciumchlorid-Dihydrat" }),
  hydrate("CaCl2", "6", "calcium chloride hexahydrate"),
  hydrate("MgCl2", "6", "magnesium chloride hexahydrate, bischofite, nigari"),
  hydrate("BaCl2", "2", "barium chloride, barium chloride dihydrate", { de: "Bariumchlorid", fr: "chlorure de baryum" }),
  hydrate("SrCl2", "6", "strontium chloride"),
  hydrate("CuCl2", "2", "copper chloride, cupric chloride"),
  hydrate("FeCl3", "6", "ferric chloride hexahydrate, iron chloride hexahydrate"),
  hydrate("SnCl2", "2", "tin chloride, stannous chloride, tin salt"),
  hydrate("KAl(SO4)2", "12", "alum, potash alum, potassium alum, potassium aluminium sulphate, potassium aluminum sulfate, pickling alum", {
    de: "Alaun, Kalialaun",
    fr: "alun",
    es: "alumbre",
  }),
  hydrate("KCr(SO4)2", "12", "chrome alum, potassium chromium sulfate"),
  hydrate("Al2(SO4)3", "18", "aluminium sulphate, aluminum sulfate, papermaker's alum"),
  hydrate("Na2S2O3", "5", "hypo, sodium thiosulphate, sodium thiosulfate, fixer salt"),
  hydrate("CH3COONa", "3", "sodium acetate trihydrate, hot ice", { de: "Natriumacetat-Trihydrat" }),
  hydrate("Na3PO4", "12", "trisodium phosphate, TSP"),
  hydrate("Na2HPO4", "12", "disodium phosphate dodecahydrate"),
  hydrate("Na2SiO3", "5", "sodium metasilicate pentahydrate"),
  hydrate("KNaC4H4O6", "4", "Rochelle salt, seignette salt, potassium sodium tartrate", { de: "Seignettesalz", fr: "sel de Seignette" }),
  hydrate("C6H12O6", "1", "glucose monohydrate, dextrose monohydrate"),
];
