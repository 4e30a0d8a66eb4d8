package fieldsheet

import (
	"fmt"
	"math"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// pour is a number of footings alike.
type pour struct {
	name string
	n    int
	each float64 // cubic metres
}

// footings lists the concrete of the footings, alike ones together.
func (p *platform) footings() {
	var pours []pour
	for _, post := range p.postPlaces() {
		footing := p.m.Footings
		if post.own != nil && post.own.Footing != nil {
			footing = post.own.Footing
		}
		if footing == nil {
			p.missing("concrete for footings", "platforms[].footings")
			continue
		}
		if kind := word(footing.Kind); kind != "" && kind != "cast concrete" {
			p.tally.others.add(kind, 1)
			continue
		}
		name, each, ok := p.footingVolume(footing)
		if !ok {
			continue
		}
		found := false
		for i := range pours {
			if pours[i].name == name {
				pours[i].n++
				found = true
			}
		}
		if !found {
			pours = append(pours, pour{name, 1, each})
		}
	}
	t := Table{Columns: []Column{{"Footing", Words}, {"No.", Count}, {"Each", Volume}, {"All of them", Volume}}}
	total, n := 0.0, 0
	for _, like := range pours {
		t.row(text(like.name), count(like.n), volume(like.each), volume(like.each*float64(like.n)))
		total, n = total+like.each*float64(like.n), n+like.n
	}
	if len(pours) > 1 {
		t.row(text("together"), count(n), text(""), volume(total))
	}
	p.tally.concrete += total
	s := Section{Title: "Concrete for footings" + p.of}
	s.add(t)
	if len(t.Rows) > 0 {
		s.Notes = append(s.Notes, "As drawn, without waste or over-digging. "+p.depths())
	}
	p.section(s)
}

// depths says how deep footings go, and how deep near the house.
func (p *platform) depths() string {
	f := p.m.Footings
	if f == nil || f.Depth == nil {
		p.missing("depth of footings", "platforms[].footings.depth")
		return ""
	}
	words := "Underside " + f.Depth.V.Text(p.sys) + " below grade"
	if f.NearHouseDepth != nil {
		words += ", " + f.NearHouseDepth.V.Text(p.sys) + " close to the house"
	}
	return words + "."
}

// footingVolume names a footing by its shape and gives the concrete in it; ok
// is false where a measure is not shown, which is then noted.
func (p *platform) footingVolume(f *model.Footing) (name string, cubicMetres float64, ok bool) {
	sys := p.sys
	var area float64
	switch {
	case f.Diameter != nil:
		d := metres(f.Diameter.V)
		name, area = "round "+f.Diameter.V.Text(sys), math.Pi/4*d*d
	case f.Side != nil:
		name, area = "square "+f.Side.V.Text(sys), metres(f.Side.V)*metres(f.Side.V)
	case f.Along != nil && f.Out != nil:
		name, area = f.Along.V.Text(sys)+" x "+f.Out.V.Text(sys), metres(f.Along.V)*metres(f.Out.V)
	default:
		p.missing("concrete for footings", "platforms[].footings.shape and its size")
		return "", 0, false
	}
	if f.Thickness == nil {
		p.missing("concrete for footings", "platforms[].footings.thickness")
		return "", 0, false
	}
	name += ", " + f.Thickness.V.Text(sys) + " thick"
	cubicMetres = area * metres(f.Thickness.V)
	pier, ok := p.pierVolume(f)
	if f.PierDiameter != nil && ok {
		name += fmt.Sprintf(", with pier %s", f.PierDiameter.V.Text(sys))
	}
	return name, cubicMetres + pier, ok
}

// pierVolume is the concrete between a footing and the top of its pier. A
// footing that shows no pier has none to reckon with; one whose pier has no
// height is not guessed at.
func (p *platform) pierVolume(f *model.Footing) (cubicMetres float64, ok bool) {
	if f.PierDiameter == nil {
		return 0, true
	}
	depth := f.Depth
	if depth == nil || f.TopAboveGrade == nil {
		p.missing("concrete for piers", "platforms[].footings.depth and top_above_grade")
		return 0, false
	}
	d, h := metres(f.PierDiameter.V), metres(depth.V-f.Thickness.V+f.TopAboveGrade.V)
	return math.Pi / 4 * d * d * max(h, 0), true
}

func metres(l measure.Length) float64 { return float64(l) / float64(measure.Metre) }
