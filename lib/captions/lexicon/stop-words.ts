/** Words that a part's name neither holds nor begins with. */
export const stopWords = new Set(
  `a an the this that these those my your his her its our their some any each every both all no one two three four five six
  seven eight nine ten eleven twelve twenty thirty forty fifty sixty hundred thousand half quarter
  i you he she it we they me him them us who what which where when why how there here
  is are was were be been being am do does did done have has had having will would can could should shall may might must
  not never ever just only even also too very really quite rather so as than then now and or but if because of in on at to
  for from with without by into onto over under off up down out through between behind before after about around against
  along across inside outside near next past until till since while like get gets got getting go goes going gone went
  come comes came coming put puts putting take takes took taken taking make makes made making see sees saw look looks
  looking know think want wants wanted need needs needed use used using let say says said tell call called mean means
  give gives gave keep keeps kept hold holds held turn turns turned pull pulls pulled push pushed fit fits fitted leave
  leaves left lose set sets replace replaced replacing reuse reused clean cleaned cleaning undo undid slack nip tighten
  tightened unscrew unscrewed remove removed lift lifted drop dropped drill drilled press pressed tap tapped bore bored
  straightened straighten polish polished lap lapped hone honed scrape file filed cut cuts measure measured measuring check
  checked grab start started stop stopped lock locked find found well okay right yeah yes oh er uh um mind alone alright anyway please maybe
  probably still again back away together apart first second third last whole sort kind thing things something anything
  somebody someone anybody people way ways time times day days week weeks month months year years hour hours minute minutes morning afternoon evening lot bit more most less much many few enough same other
  another new old ones ll ve re d m s`.split(/\s+/),
);
