package draw

import (
	"fmt"
	"strconv"

	"plumbrule/checker/measure"
)

// scale is the size of a drawing: one length on paper for so many in the work.
type scale struct {
	name  string // 1/4" = 1'-0", or 1:50
	times int64
}

// points is how many points a nanometre takes on paper.
func (s scale) points() float64 {
	const pointsPerInch = 72
	return pointsPerInch / float64(measure.Inch) / float64(s.times)
}

// scales are the scales that scale rulers have, the largest first.
func scales(system measure.System) []scale {
	if system == measure.Metric {
		var list []scale
		for _, n := range []int64{5, 10, 20, 25, 50, 75, 100, 200, 500, 1000} {
			list = append(list, scale{fmt.Sprintf("1:%d", n), n})
		}
		return list
	}
	var list []scale
	for _, s := range []struct {
		inches string
		times  int64
	}{{"3", 4}, {"1-1/2", 8}, {"1", 12}, {"3/4", 16}, {"1/2", 24}, {"3/8", 32}, {"1/4", 48}, {"3/16", 64}, {"1/8", 96}, {"3/32", 128}, {"1/16", 192}, {"1/32", 384}} {
		list = append(list, scale{s.inches + `" = 1'-0"`, s.times})
	}
	return list
}

// smallest is the scale for what none of the others brings onto a sheet.
func smallest(system measure.System) scale {
	list := scales(system)
	last := list[len(list)-1]
	return scale{"1:" + strconv.FormatInt(last.times*10, 10), last.times * 10}
}
