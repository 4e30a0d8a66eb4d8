package model

import "strconv"

// HouseEdge is the name of the edge against the house.
const HouseEdge = "house"

// RectangleEdges names the edges of a rectangle, walked from the house's left end.
func RectangleEdges() []string { return []string{HouseEdge, "right", "front", "left"} }

// Names gives the name of every edge in walking order. Edges of a rectangle
// have fixed names; an edge that nobody named is called by its number, from 1.
func (o *Outline) Names() []string {
	switch {
	case len(o.Walk) > 0:
		names := make([]string, len(o.Walk))
		for i := range o.Walk {
			names[i] = edgeName(i, o.Walk[i].Edge)
		}
		return names
	case len(o.Corners) > 0:
		names := make([]string, len(o.Corners))
		for i := range o.Corners {
			var name *Words
			if i < len(o.EdgeNames) {
				name = o.EdgeNames[i]
			}
			names[i] = edgeName(i, name)
		}
		return names
	}
	return RectangleEdges()
}

func edgeName(i int, name *Words) string {
	if name != nil {
		return name.V
	}
	return "edge " + strconv.Itoa(i+1)
}
