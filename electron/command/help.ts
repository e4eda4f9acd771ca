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
by its job; --load-area and --swath say otherwise, and are needed where there is no job.
  --load-area AREA    what one load covers, e.g. 100m2 or 1000ft2
  --swath LENGTH      what one pass treats, e.g. 1.8m or 6ft
  --heading auto|DEG  compass bearing of the lanes; auto picks the one with the least walking
  --policy even|fewest   equal sections in each zone, or every load full
  --spigot NAME --hose LENGTH   the hose each section needs, round buildings
  --json [PATH]       the plan as GeoJSON with a summary; without PATH on standard output
  --pdf PATH          the printed sheet
  --paper letter|a4   for the sheet; letter where feet are used, else a4

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
