import { onFirstUse } from "../../../onFirstUse";

// Compounds and groups that are written in capitals alone, without a count. Every other text of two or more capitals that can be spelled in
// symbols (WOOD, TBD, PVC) is far more often a word or an abbreviation: no rule of composition tells CHIP from HNCO.
const WRITTEN_IN_CAPITALS = [
  // Two elements
  "CO NO HF HI KF KI KH HD DF BN BP VN VC VO VB WC WN UN UC UO YN YP IF OH CN",
  // Acids, bases and salts
  "HCN DCN HNC KCN ICN FCN KOH KOD HOD HDO HTO DTO DHO HOH TOH HOF HOI FNO NOF KSH KHS KNO KIO KFO HNO HONO KONO KOOH",
  "HOCN HCNO HNCO HONC KCNO KOCN KNCO HSCN HNCS HCNS KSCN KNCS KCNS SCN NCS OCN NCO CNO CNS HSNO",
  "COS OCS SCO OCO SCS OSO NNO ONO NCCN HCCH HOOH DOOD HSSH HSH FOOF FSSF HSOH ONNO OCCCO HCCCN HCCF FCCF ICCI NCCCN",
  "HCHO HCO CHO COOH HCOO COO OOCH CHOOH HCOOH HCOOD DCOOD DCOOH HCOOK KHCOO KOOCH KCOOH HCOF HCOI KCHOO",
  "HOOCCOOH KOOCCOOK KOOCCOOH HOOCCOOK COOHCOOH OHCCHO HOCCOH HOCO FCOF FCHO HCNO NCOH HNNH HOONO HOOO",
  // Compounds of the heavier elements, and solids
  "VOF VOI YOF YOI YOOH YSF UOS UNO UCO UCN VON VNO VCO VCN BOF BNO BCN BNC VOOH KBO KPS",
  // In Hill's order (HNCO is CHNO); without carbon in the alphabet's
  "FH FK FI IK HK INO CINO CHNO CKN CKNO CKNS CIN CFN CHKO FHO HIO HKO HKS FKO IKO CDN DKO DHO HNOS BHO FNOS CHFO CHIO",
].join(" ");

export const capitalFormulas = onFirstUse((): ReadonlySet<string> => new Set(WRITTEN_IN_CAPITALS.split(" ")));

// The words and abbreviations among them that people also type into cells.
export const alsoWords: ReadonlySet<string> = new Set(["NO", "HI", "IF", "BP", "VC", "UN", "WC", "NCS"]);
