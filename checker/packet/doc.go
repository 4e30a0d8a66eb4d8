// Package packet assembles what is handed over at the permit counter: title
// block, drawings with numbered findings, the findings in full, what is not
// shown, a schedule of every check of every rule set, what was assumed, what the
// sets do not cover, what no check reads, sources, and the cautions.
//
// [Build] gives a [Packet] of sections whose words are ready to print, so that
// every format says the same in the same order. Numbers of findings are those of
// the review letter.
//
// The package judges nothing and draws nothing: outcomes come with the report,
// drawings with the sheets. It does not write HTML or PDF; packages below its
// folder do.
//
// Floor: above the numbering of findings, below its formats.
package packet
