// Words and abbreviations as people who dry, char, burn, weigh and teach type them into cells: the bare texts, no values. One class a line.
const LISTS = {
  feedstocks:
    "wood pine oak ash birch beech spruce larch alder poplar willow maple elm fir cedar bamboo coconut coir copra husk shell pip stone pit nut walnut hazel almond olive pomace bark chip chips sawdust shaving twig root stick straw hay corn cob stover bagasse cane hemp flax jute sisal cotton kapok moss peat turf coal coke char charcoal biochar soot tar pitch bone hoof horn hide skin wool silk hop hops grain rice bran hull scion stock cutting fruit apple plum pear cherry orchard prunings",
  bench:
    "sample blank control vessel crucible boat dish tin pot lid tare gross net dry wet moist char burn ashed oven kiln furnace hood bin bag box tub cup can bottle flask stopper spoon hook tongs desiccator balance scale weight point noise count input output unit units ounce pound ton tons inch foot top bottom side front back north south sun wind snow rain hot cold",
  soilsAndSolids:
    "clay sand silt soil loam lime chalk marl gypsum slag scoria pumice tuff flint quartz salt soda potash brine rust ochre brick tile glass cement mortar concrete stucco plaster paint ink dust grit fines coarse",
  kitchen:
    "coffee tea cocoa sugar honey milk cheese butter bread dough flour rice pasta beans soup couscous tofu soy onion potato carrot beet fish pork chips nuts spice",
  markers:
    "none null nil void empty todo tbd tbc tba ok okay yes off on not done skip stop start test void fail pass high low out unknown other misc same ditto see note how why who so if this thus until upon with both such own too soon now",
  numbersThatAreNone: "NaN NaT nan inf infinity #N/A N/A NA n.a. n/a #DIV/0! #VALUE! #REF! #NUM! #NAME? 1.#IND 1.#QNAN -- - ? TRUE FALSE",
  laboratory:
    "KHP TNT THF PVC PVA PVP PET PLA PTFE ABS EDTA EGTA DMSO DMF DMA DCM SDS SLS BSA TRIS HEPES MES MOPS PIPES BES TES CTAB DTT PMSF IPTG DPPH PNP MTT DAB OPD TMB PBS TBE TAE TBST MEK MIBK MTBE ETBE IPA NMP ACN DME DEE TBA TFE TFA TCA DEG TEG PEG MEG TEA TMA DEA MEA DMAP DBU DBN DCC EDC CDI NBS NCS NIS NHS DDQ AIBN BPO TBP TPP TOPO TEOS TMS HMDS PDMS TBAF TBAB MSA PHB PHT DIC DOC DOP DBP BHT BHA BPA BPS BPF HCH HCB PCP PCB DDT PFOS PFOA HNS TNB TNF DNT DNP DNB RDX HMX PETN",
  materials:
    "PP PS PC PU PUR PI PIB PBT PBS PPO PPS PVDC PVDF PVF POM PMMA PCL HIPS EPS XPS YBCO BSCCO YAG YSZ PZT KTP KDP KTN KNN BBO BTO STO PTO BFO ITO FTO IZO LFP LCO LTO NMC HAP TCP BCP CSH OPC FOC CNT CNTS BN-C CBN SIP OSB MDF LVL CLT",
  fertilisersAndWater:
    "NPK MAP DAP MKP SOP MOP NOP TSP SSP DCP BOD COD TOC DOC POC TIC TSS TDS VSS VOC SVOC PAH HFC CFC HCFC HFO PFC ODS COP UV PH EC TDN TON TKN BOD5 UV254 HFC134 CFC113",
  analyses:
    "CHN CHNS CHNSO ICP HPLC GC MS TGA DSC DTA XRF XRD FTIR NMR UV-VIS VIS ISO DIN ASTM STP NTP HHV LHV BTU PPM PPB PPT VOL WT MOL DB WB OD FC VM AR DAF QC QA SOP SD CV RSD LOD LOQ DI DO",
  offices:
    "HQ UK US EU UN-NO PO NO.1 ID SN PN PC TV CD DVD USB PDF CSV XLS PPT URL IT HR PR CEO CFO CIO CTO VIP FYI ASAP ETA USP FOB CIF VAT NI SWIFT BUSY PHOTO VIDEO STUDIO KIOSK WINDOW DOWN UP IN-OUT COUPON VOUCHER",
} as const;

export const tradeWords: readonly string[] = [...new Set(Object.values(LISTS).flatMap((list) => list.split(" ")))];

const capitalised = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1).toLowerCase();

/** Each word as typed in capitals, capitalised, in small letters, as plurals of capitals, at the end of a sentence and in brackets. */
export const spellings = (word: string): readonly string[] => [
  ...new Set([
    word,
    word.toUpperCase(),
    capitalised(word),
    word.toLowerCase(),
    ...(/\d$/.test(word) ? [] : [`${word.toUpperCase()}S`, `${word.toUpperCase()}s`, `${word.toUpperCase()}.`]),
    `(${word.toUpperCase()})`,
  ]),
];

/**
 * The spellings that stay formulas by the stated rule: a text that is both a word and a symbol or a compound in use is read as the formula
 * (with a note where it is two capitals that people also type as a word).
 */
export const BOTH: readonly string[] = ["COS", "COS.", "NCS", "NCS.", "(NCS)", "IF", "IF.", "(IF)", "Fe", "Pb", "Nb", "Os", "Pa", "Po", "Ni"];
