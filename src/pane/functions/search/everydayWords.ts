import { isMaterial } from "./materials";
import { stem } from "./stem";

// Words that are near to one of our own and are no slip of it. A search passes over them where no phrase has them.
const VESSELS_AND_TOOLS =
  "bowl bucket basket barrel drum kettle cup mug plate saucer tray spoon spatula bottle flask vial tube bag sack box carton foil wrap cover cone frit " +
  "engobe bisque greenware sagger shelf prop burner grate hearth damper flue bellows tongs gloves goggles apron mask pliers shovel rake sieve mortar pestle " +
  "grinder hammer press mould mold pump hose valve filter funnel pipette syringe stirrer magnet lamp torch match lighter candle battery cable plug switch";
const FORMS =
  "powder lump flake granule shard slice block cube rod sheet strip sphere ball bead stick paste putty gel crust layer film fibre fiber thread";
const MEASURES =
  "pound ounce inch foot feet yard mile gallon quart teaspoon tablespoon tonne stone dozen half quarter third double triple pair few both";
const TIMES =
  "morning evening night noon today tonight tomorrow yesterday summer winter spring autumn week month year season early late soon often never always";
const PLACES =
  "school class college kitchen garden orchard farm field forest market shop house home street cellar attic barn bench table desk window door wall floor";
const PEOPLE_AND_THEIRS =
  "student pupil teacher lesson homework exam science parent friend neighbour customer farmer potter baker brewer maker beginner somebody someone letter picture present";
const QUALITIES =
  "cheap best worst good bad wrong strange nice fresh old new rough smooth hard soft clean dirty black white red green blue yellow grey gray brown pink " +
  "round flat thick thin bright dark coarse fine brittle sticky simple easy difficult expensive pretty proper rotten ripe raw stale frozen";
const DEEDS =
  "buy sell store keep stay pour stir shake fill crush grind sieve break crack chop cut split stack pile open close start begin wait watch hold " +
  "touch smell taste look read write print hope think believe guess care mind ask answer explain teach learn understand help plan choose pick " +
  "build throw waste clean wash rinse soak drain squeeze knead roll shape carve paint polish borrow bring carry deliver receive promise prefer wonder thought fail failure";

const stems = new Set([VESSELS_AND_TOOLS, FORMS, MEASURES, TIMES, PLACES, PEOPLE_AND_THEIRS, QUALITIES, DEEDS].join(" ").split(" ").map(stem));

/** True for a word that is spelled as it should be, and is never taken for a slip of another. */
export const isRightlySpelled = (word: string): boolean => stems.has(stem(word)) || isMaterial(word);
