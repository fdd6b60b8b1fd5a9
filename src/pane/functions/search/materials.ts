import { stem } from "./stem";

// What is weighed, dried, charred or fired and has no formula. What it is made of asks for no quantity.
const WOODS =
  "pine birch oak beech spruce willow hazel elm alder larch fir cedar poplar aspen maple walnut hickory eucalyptus acacia chestnut sycamore juniper " +
  "yew rowan hawthorn hornbeam linden robinia bamboo bark cork sawdust shavings chips woodchips pellets briquettes twigs branches brushwood prunings";
const CROPS =
  "straw hay grass reed nettle hemp flax jute sisal kapok miscanthus bracken fern moss seaweed algae wheat barley rye oats millet sorghum maize corn rice " +
  "stover bagasse husks hulls shells nutshells coconut hazelnuts almonds peanuts pistachios acorns cones pinecones beans peas lentils soybeans rapeseed " +
  "sunflower apple pear plum cherry peach apricot grape vine pomace pumpkin potato carrot beetroot onion tomato hops leaf needles weeds stalks";
const FOODS =
  "flour bread dough crumbs biscuits pasta cereal cheese butter milk cream yoghurt honey jam coffee tea cocoa chocolate tobacco meat fish bone";
const EARTHS =
  "soil loam silt clay mud gravel pebbles rock granite basalt slate shale sandstone sediment peat turf compost humus mulch manure dung guano litter slurry " +
  "sludge sewage digestate bentonite feldspar mica pumice perlite vermiculite zeolite";
const MADE =
  "coal lignite anthracite brick cement mortar concrete plasterboard slag glass ceramic terracotta earthenware porcelain wool felt feathers hair horn leather " +
  "linen cotton cloth fabric textile cardboard carton plastic rubber polymer resin foam asphalt bitumen shellac";

const stems = new Set([WOODS, CROPS, FOODS, EARTHS, MADE].join(" ").split(" ").map(stem));

/** True for the name of a material that has no formula here: straw, oak, compost, brick. */
export const isMaterial = (word: string): boolean => stems.has(stem(word));

/** How many materials a search names; words beside one another are one name, as in "barley straw". */
export const namesApart = (words: readonly string[]): number =>
  new Set(words.flatMap((word, at) => (isMaterial(word) && !isMaterial(words[at + 1] ?? "") ? [stem(word)] : []))).size;
