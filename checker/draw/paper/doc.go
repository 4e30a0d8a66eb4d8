// Package paper is the display list of a drawing: lines, areas, arcs, words,
// dimensions, hatches and markers on a sheet of paper, in points of 1/72 inch
// from its upper left corner, y running down.
//
// It knows pens, line types and the widths of letters, and can tell how much
// room things take. It does not know what a deck is, and it writes no file:
// each output format replays the list on a Canvas of its own.
//
// Floor: above measure only.
package paper
