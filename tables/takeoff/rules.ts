/**
 * How a take-off counts, one sentence a rule, shown with every take-off. Common practice, no source, except where a
 * rule names its table: that table carries the source.
 */
export const takeOffRules = {
  followers:
    'Where a run goes on as one other of the same pipe, nothing is counted but a coupling that is drawn; another size takes a reducing coupling, another material or way of joining an adapter. A coupling drawn at the start of the second run is that reducer or adapter.',
  tees: 'Where a run goes on as two others there is one tee, its sizes run in x run on x branch; as more, a row of tees with a nipple between each two in the size of the run that feeds them. The tee legs drawn in the runs are the legs of these tees and are not counted again. What goes straight on is the run drawn through the tee, else the larger, else the first.',
  mixedTees:
    'A tee is of the pipe that feeds it; a run of another material or way of joining leaves it by a nipple and an adapter.',
  devices:
    'A device has a connection on each side: couplings at a meter; unions at a heater, reducing valve, backflow assembly, softener, filter, mixing valve or other device; one threaded adapter at an expansion tank, an arrester or the inlet of a manifold. A manifold has a fitting at each port in use and a plug in each other.',
  mixingFixtures:
    'Showers, hand showers and bathtubs have a threaded adapter at each inlet of their valve, and for each outlet (two where a tub has a shower) an adapter at the valve and a drop-ear ell. The pipe from the valve to its outlets is not drawn and not counted.',
  stubs:
    'Hose bibbs have a drop-ear ell; flushometer valves, irrigation and make-up water a threaded connection; every other inlet a stub-out and a flexible supply, with a stop unless another shut-off is drawn in its run. The fixtures themselves are not counted.',
  joints:
    'A joint is counted for each end of pipe in a fitting: three at a tee, two at an ell, coupling or valve, one at a connection. Compression stops, corporation stops and curb stops bring their own nuts and have none.',
  pipe: 'Pipe is measured by its developed length as drawn, without waste; nipples are cut from what is left over.',
  phases:
    'Underground are the runs from the street up to the one with the first building shut-off, as long as they do not branch, unless told otherwise; stops and supplies at fixtures are trim; the rest is rough-in.',
  areas:
    'Pipe belongs to the level of the fixture where it ends, else to the level where it ends by height; outdoors is what is underground or feeds only hose bibbs and irrigation. What stands where runs meet belongs to the run that goes straight on.',
  supports:
    'In each run that is not underground: a hanger for each spacing begun of horizontal pipe (developed length less the rise), a riser support for each spacing begun of the rise, and a guide for each part of a spacing in the rise that is at least half of one, where the table asks for guides.',
  insulation: 'Insulation is measured along hot pipe of the size that the energy code names and larger.',
  sleeves: 'One sleeve where a run passes a floor, and one where the service comes in.',
  nailPlates: 'A number of nail plates at each inlet of an indoor fixture.',
  testing:
    'A test cap at each stub-out, drop-ear ell and threaded connection of a fixture, and one test gauge.',
} as const;
export type TakeOffRuleId = keyof typeof takeOffRules;
