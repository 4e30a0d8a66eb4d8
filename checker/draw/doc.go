// Package draw lays a design out as drawings: plan, framing plan, elevation and
// section, stair section, on sheets with a title block, dimensioned, in a scale
// that a scale ruler has. The findings of a run are numbered on the spots that
// they concern, with the numbers that the review letter gives them.
//
// It draws what the facts were worked out from and nothing else. What the design
// does not show is left out, ended with a break line or dotted, and listed as
// not shown; it is never drawn as if it were known. It computes no spans and
// judges nothing, and it writes no file: packages svg, pdf and png do.
//
// Floor: above facts and the numbering of findings; below the commands.
package draw
