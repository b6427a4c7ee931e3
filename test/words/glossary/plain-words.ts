// Words on the pages that need no entry in the glossary: plain English, and names of the page's own parts. A term of the trade
// does not belong here; it gets its sentence in terms.ts.

const WORDS = `
abnormal about above add after again against age ago all along also alt alternating always an and
annex another answer answers any apart apply approval are around arrows as ask asked at back bad
bare be because become been before beginning begins below beside best better between bonded book
books both bottom box bring browser build builds but button by call came can cannot carries case cat
cautions cell change changed changes charges check choice choose chosen class clear close closed
colour common compare compared compares comparison construction copper copy corner cost count counts
credit dark day days decide decides delete design did difference different direct discharge distance
do does don't done down drag draw drawing drawn draws drew each easier edges edit effect efficiency
eight either else empty end ends enter equal error estimate even every everything examine exercise
exercises explore export failed far farther fast fed few figure figures file filled filter find
finish first fit fits five fold follow for forget forgotten found four free frequency from full fully
further gap gaps get give given go goes good grey group hand has have hear heat height help here
hide highest hint his hold holds hottest hour hours how if image import improve in inches infrared
inner input inseparable inside insulated into invented is it item its itself join judge judged judgement
judges just keep kept key keyboard keys kind know known laid languages large last later lay layerwright
lead learn learnt least leaves left length less lesson lessons let letter lies light like limit
limiting line lines link list lists little long look looked looking looks loose lost lower lowest
made main make manual many map mark marked match material matter may means measure measured mend
mended mending metre middle might minute mm mode more most move moved moves must name narrow near
nearer nearest need needed never new next nine no none normal not note notes nothing number numbers
odd of off old on once one only open opened operator or order other others our out outer outermost outward
outside over overlapping overshoot overvoltage own owner page pages paper part patient pen people
per photograph photographs pick picture pieces place places plan plot point points position possible
potentials power press print printed probability probe problem proof proposed protects pupil put
puts quantity question questions quick range rate rated reaches read readings reads really reason
reasons reflected remarks remove repair report resistance rest result results right rim ring round rounding
row rule rules run safe said same save saved say scale score search second seconds see seed seen
select sent series set seven several share sheet sheets shift short shortcuts should show showing
shown shows side since single six size slow small so sold solid some something source sources spare
split spot spread stands start starts stated step steps still stop store stress strong such sum
supply surface surroundings switch switches table tables take taken taking taped task teacher tell
ten tested text than that the their them then there these they thickness thing things think thirty
this those three through time times title to together tool top total touched touches tried trust try turns
two type under unit units until up upload upper use used uses value values version versions very
view voltage voltages wanders want was way ways weakest week well were what when where which while
who whole whose why wide width will window wire with within without withstood won word words work
worked worse worst would wound write year years yet you your zero zoom
`;

export const plainWords: ReadonlySet<string> = new Set(WORDS.trim().split(/\s+/));
