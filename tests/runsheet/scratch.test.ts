import { writeFileSync } from "node:fs";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { openRunSheet } from "./openRunSheet";
import { clock } from "./plainRun";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
const T = [[41.86,[72.14,65.92,63.31,62.76,62.72,62.71],[48.02,47.86,47.85],[42.33,42.31],41.87],[42.13,[71.88,65.8,63.17,62.61,62.58,62.58],[48.12,47.95,47.94],[42.58,42.57],42.13],[41.57,[72.41,66.31,63.6,63.02,62.98,62.98],[47.84,47.69,47.68],[41.98,41.97],41.57]] as const;
async function filled(options: RunSheetOptions, far = 99, swap = false) {
  const s = await openRunSheet(options);
  const { sheet } = s;
  if (far >= 0) { await s.type(sheet.setup.date, 46347); await s.type(sheet.setup.operator, "orchard crew"); await s.type(sheet.setup.material, "plum prunings"); 
  for (const k of sheet.samples) { const [v,d,c,a,e] = T[k-1]!; await s.type(sheet.setup.name(k), ["tree 4","tree 4","tree 7"][k-1]!); await s.vessel(v,k);
    for (const [i,g] of d.slice(0, far).entries()) await s.round(i+1, k===1?clock(9+i*0.5):null, g, k);
    if (far > 6 && sheet.charring) { for (const [i,g] of c.entries()) await s.fire("charring", i+1, swap && k===2 && i===2 ? 42.57 : g, k===1?{lit: clock(13+2*i,20), set:450, measured:441, held:60, quiet: clock(14+2*i,25), opened: clock(15+2*i,40-i), seen:"white smoke"}:{}, k);
    if (sheet.ashing) for (const [i,g] of a.entries()) await s.fire("ashing", i+1, swap && k===2 && i===1 ? 47.94 : g, k===1?{lit: clock(19+i*4,20), set:550, measured:541, held:180, opened: clock(23,40)}:{}, k);
    await s.type(sheet.end!.vessel(k), e); } }
  if (far>6 && sheet.composition) { await s.type(sheet.composition.carbon, 48.6); await s.type(sheet.composition.hydrogen, 6.0); await s.type(sheet.composition.oxygen, 42.8); await s.type(sheet.composition.nitrogen, 0.5); await s.type(sheet.settings.repeatability, 0.01);await s.type(sheet.settings.material, "mild steel");await s.type(sheet.settings.oven, 105);} }
  return s;
}
const base = { kind: "ashing", weighIns: 6, intervalMinutes: 30, readability: 0.01, vessel: "lidded tin", replicates: 3 } as const;
const out: [string, RunSheetOptions, number, boolean][] = [["blank3", base, -1, false],["filled3", base, 99, false],["half3", base, 4, false],["swap3", base, 99, true],["blank1", {...base, replicates:1, weighIns: 8, kind:"charring"}, -1, false],["dry1", {...base, replicates:1, kind:"drying"}, 99, false],["big6", {...base, replicates: 6, weighIns: 60, panZeros:true, temperatures:true}, -1, false],["w8", {...base, weighIns: 8}, -1, false],["w12z", {...base, weighIns: 12, panZeros: true}, -1, false]];
test.each(out)("%s", async (name, options, far, swap) => {
  const s = await filled(options, far, swap);
  writeFileSync(`/tmp/out/${name}.xlsx`, await saveXlsx(s.engine));
  if (far > 0) console.info(name + "\n" + (await s.head()).join("\n"));
  s.close();
}, 60000);
