/** Times are measurements only where the work has them. */

/** What takes its time: soaking, heating, running, holding. */
export const processWords = new Set(
  "leak leaks leaked electrolysis tank soak soaked soaking soaks run running ran runs heat heated heating bake baked baking cook cooked boil boiled boiling hold holds held holding cure cures cured curing dry dries dried drying wait waited leave left stand stood sit sits sat warm warmed warming cool cooled cooling simmer ultrasonic charge charged charging spin spun idle idled idling test tested pressed pressing clamp clamped after every per within bath oven paraffin vinegar derust electrolysis set sets setting harden hardens go goes wind winds lasts flow drip drips stitch tumble tumbled blast blasted gelled steam steamed soakings quench temper tempered anneal annealed pump pumped rpm speed revs lapped lapping bulb torch dwell delay open discharge bleed pee prime fill fills drain drained acid citric descaler descale descaled solution hot overnight solder shot rinse melt developer".split(
    " ",
  ),
);

/** What shows a time to be told of, not worked to. */
export const anecdoteWords = new Set(
  "took takes spent spend chased wasted ago video videos film cut watching talking listening waiting life years later next see week weeks month months price work works labour told hunting searching looking figured scratching evening afternoon episode part sunday saturday monday friday night drive driving away old since history queue phone".split(
    " ",
  ),
);
