const FILE_LINE = `FILE is a yard file (.gpkg) or GeoJSON (RFC 7946) whose features carry kind and name.
kind is zone, bed, hardscape, building, water, tree, keep-off, check-plot, spigot or landmark;
a polygon without a kind is a zone, a point without one a landmark.`;

const EXIT_LINE =
  'Exit code: 0 done, 1 the input is bad (the message says what and how to mend it), 2 usage.';

/** The text of `--help`, by command; '' is the overview. */
export const HELP: Readonly<Record<string, string>> = {
  '': `platpace areas FILE           what is in the yard and how much of it is treated
platpace plan FILE ...        cut it into loads and walk it
platpace convert IN OUT       yard file to GeoJSON and back
platpace check FILE           everything that is wrong or doubtful
platpace COMMAND --help       more on each

${FILE_LINE}
${EXIT_LINE}
`,
  areas: `platpace areas FILE [--json[=PATH] | --working]

Prints gross, cut-out, net and treated area of every zone, with the standard deviation where it is known.
  --json         the same as JSON, in square metres at full precision, on standard output
  --json=PATH    the same in a file
  --working      how every area comes about, corner by corner, as the window copies it

${FILE_LINE}
${EXIT_LINE}
`,
  plan: `platpace plan FILE [--load-area AREA --swath LENGTH] [...]

Cuts the treated ground into sections of at most one load and lays the passes. A yard file with a job is planned
by its newest job, and every flag stands in for what that job says; --load-area and --swath plan without its product
and applicator, and are needed where there is no job.
  --load-area AREA    what one load covers, e.g. 100m2 or 1000ft2
  --swath LENGTH      what one pass treats, e.g. 1.8m or 6ft
  --policy even|fewest   equal sections in each zone, or every load full
  --heading auto|DEG  compass bearing of the lanes; auto picks the one with the least walking
  --last DEG --turn 45|90   lanes turned from last time's bearing
  --rounds 1|2        2 walks everything twice at half the rate, the second time square to the first
  --start PLACE       where the walk begins: the name of a spigot or landmark, or EAST,NORTH from the yard's origin
  --finish PLACE      where it ends; EAST,NORTH is in metres unless a unit is given, e.g. 4,-2.5 or 12ft,3ft
  --pace SPEED        walking pace, e.g. 0.9m/s or 3ft/s; only times depend on it
  --step LENGTH       length of one step; only counts of steps depend on it
  --hose LENGTH       the hose each section needs, from any spigot
  --spigot NAME       from this one only
  --clear LENGTH      how far the hose keeps from the corners it is laid round
  --flags             where to set the flags of every cut line, by tape
  --json [PATH]       the plan as GeoJSON with a summary; without PATH on standard output
  --pdf PATH          the printed sheet
  --paper letter|a4   for the sheet; letter where feet are used, else a4

JSON: features by role: net-area; section (id, zone, load, areaM2, headingDeg); cut-line (between, cut, held, lengthM);
pass (section, order, round, kind, lengthM) in walking order. The member summary holds zones, sections with their
figures, loads (how many), fills (load, sections, areaM2), lengths, time and coverage in percent. All lengths in
metres, areas in square metres.

${FILE_LINE}
${EXIT_LINE}
`,
  convert: `platpace convert IN OUT [--replace] [--json]

From a yard file (.gpkg) to GeoJSON (.geojson or .json), or back. Never overwrites without --replace.
GeoJSON keeps outlines, points, the yard's name and its frame; pictures, products, applicators and jobs stay
in the yard file.
  --replace    OUT may be there already
  --json       say what was written as JSON

${EXIT_LINE}
`,
  check: `platpace check FILE [--json[=PATH]]

Lists everything that is wrong (exit code 1) and everything doubtful (exit code 0), each with how to mend it.

${FILE_LINE}
${EXIT_LINE}
`,
};
