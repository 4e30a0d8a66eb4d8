package checker_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/ruleset/rulesettest"
	"plumbrule/checker/source"
)

// sheet collects facts that were typed nowhere: each subject gets two places
// of its own in a document that holds nothing but places, one for the subject
// and one for the value that is measured.
type sheet struct {
	facts facts.Facts
	want  []expectation
}

// expectation is what must come of a subject.
type expectation struct {
	what    string
	outside bool
	unread  bool // nothing is to be said of it but that it is left alone
}

// at gives the places of the next subject.
func (s *sheet) at() (subject, value []string) {
	n := 2 * len(s.want)
	return []string{"/" + strconv.Itoa(n)}, []string{"/" + strconv.Itoa(n+1)}
}

func (s *sheet) expect(outside bool, format string, args ...any) {
	s.want = append(s.want, expectation{what: fmt.Sprintf(format, args...), outside: outside})
}

// document has a place for everything on the sheet.
func (s *sheet) document(t *testing.T) *source.Document {
	t.Helper()
	doc, err := source.Read("sheet.json", []byte("["+strings.TrimSuffix(strings.Repeat("1,", 2*len(s.want)), ",")+"]"))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// outside tells for every subject whether one of its results is outside, and
// whether it has a result at all.
func (s *sheet) outside(results []result.Result) (outside, seen []bool) {
	outside, seen = make([]bool, len(s.want)), make([]bool, len(s.want))
	for _, r := range results {
		if len(r.At) == 0 {
			continue
		}
		n, err := strconv.Atoi(strings.TrimPrefix(r.At[0], "/"))
		if err != nil || n/2 >= len(s.want) {
			continue
		}
		if r.Outcome == result.Outside || r.Outcome == result.Within {
			seen[n/2] = true
			outside[n/2] = outside[n/2] || r.Outcome == result.Outside
		}
	}
	return outside, seen
}

// said gives for every subject what was said of it.
func (s *sheet) said(results []result.Result) []string {
	said := make([][]string, len(s.want))
	for _, r := range results {
		if len(r.At) == 0 {
			continue
		}
		if n, err := strconv.Atoi(strings.TrimPrefix(r.At[0], "/")); err == nil && n/2 < len(said) {
			said[n/2] = append(said[n/2], string(r.Outcome)+r.At[0]+r.Needs)
		}
	}
	lines := make([]string, len(said))
	for i := range said {
		slices.Sort(said[i])
		lines[i] = strings.Join(said[i], " ")
	}
	return lines
}

// keys are the values of a table's keys, by name of the key.
type keys map[string]string

func keysOf(f rulesettest.Found) keys {
	k := keys{}
	for i, key := range f.Table.Keys {
		k[key.Name] = f.At[i]
	}
	return k
}

func (k keys) length(name string) measure.Length {
	return measure.Length(k.whole(catalog.Length, name))
}

// read reads the value that stands under no name.
func (k keys) read(kind catalog.Kind) (int64, error) { return rulesettest.Whole(kind, k[""]) }

func (k keys) whole(kind catalog.Kind, name string) int64 {
	v, err := rulesettest.Whole(kind, k[name])
	if err != nil {
		panic(fmt.Sprintf("key %s: %v", name, err)) // a table of the repository was read with these keys
	}
	return v
}

func shown[T any](v T, at []string) *facts.Of[T] { return &facts.Of[T]{Value: v, At: at} }

// speciesOf names one species of each group, as a builder would write it.
var speciesOf = map[string]string{
	"southern pine": "southern pine", "douglas fir-larch group": "hem-fir", "redwood group": "western red cedar",
	"other species": "hem-fir", "douglas fir-larch": "douglas fir", "hem-fir and western cedars": "hem-fir",
	"redwood": "redwood", "spruce-pine-fir and red pine": "spf",
	"spruce-pine-fir": "s-p-f", "radiata pine": "radiata pine",
}

func lumber(k keys, at []string) facts.Lumber {
	species, grade := speciesOf[k["group"]], "No. 2"
	if k["species"] != "" {
		species = k["species"]
	}
	if k["group"] == "radiata pine" {
		grade = "SG8"
	}
	if k["grade"] != "" {
		grade = k["grade"]
	}
	return facts.Lumber{Species: shown(species, at), Grade: shown(grade, at)}
}

// loads puts what is above a live load of 40 psf down as snow, which is how the
// columns of the tables are meant.
func (k keys) loads(at []string) (live, snow *facts.Pressure) {
	if k["live"] != "" {
		return shown(measure.Pressure(k.whole(catalog.Pressure, "live")), at), shown(measure.Pressure(0), at)
	}
	forty, _, _ := measure.ParsePressure("40 psf")
	load := measure.Pressure(k.whole(catalog.Pressure, "load"))
	if load > forty {
		return shown(forty, at), shown(load, at)
	}
	return shown(load, at), shown(measure.Pressure(0), at)
}

// area is a number of square feet in whole square millimetres.
func (k keys) area(at []string) *facts.TributaryArea {
	square := int64(math.Round(float64(k.whole(catalog.Count, "area")) * 304.8 * 304.8))
	return shown(facts.Tributary[int64]{Builder: square, Statics: square}, at)
}

// subject puts a member on the sheet to which one cell of a table applies.
type subject func(s *sheet, k keys, value measure.Length)

// subjects are the members of tables, by check and figure.
var subjects = map[string]subject{
	"joists/span spans":                       joistSpan,
	"joists/cantilever limits":                joistCantilever,
	"joists/cantilever limits_by_spacing":     joistCantilever,
	"beams/span spans":                        beamSpan,
	"posts/height by_size":                    post,
	"posts/height by_area":                    post,
	"posts/height by_spans":                   post,
	"footings/area sides":                     footingOf("square"),
	"footings/area sides_by_spans":            footingOf("square"),
	"footings/area diameters":                 footingOf("round"),
	"footings/area diameters_by_spans":        footingOf("round"),
	"footings/thickness thicknesses":          footingOf("thick"),
	"footings/thickness thicknesses_by_spans": footingOf("thick"),
	"ledger/fastener-spacing spacings":        ledgerSpacing,
	"ledger/fastener-placement row_to_top":    ledgerRow,
	"decking/joist-spacing spacing":           decking,
	"decking/joist-spacing by_wood":           decking,
}

func joistSpan(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	live, snow := k.loads(at)
	s.facts.JoistSpans = append(s.facts.JoistSpans, facts.JoistSpan{
		At: at, Joists: at, From: "ledger", To: "B1", Count: 1, Missing: []string{},
		ClearSpan: shown(value, place), SpanToCenter: shown(value, place),
		Spacing: shown(k.length("spacing"), at), Size: shown(k["size"], at), Lumber: lumber(k, at),
		LiveLoad: live, GroundSnowLoad: snow,
	})
}

func joistCantilever(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	live, snow := k.loads(at)
	// Where the table has no back-span, one is taken of which a quarter does not govern.
	behind, spacing := 30*measure.Foot, 16*measure.Inch
	if k["back_span"] != "" {
		behind = k.length("back_span")
	}
	if k["spacing"] != "" {
		spacing = k.length("spacing")
	}
	s.facts.JoistCantilevers = append(s.facts.JoistCantilevers, facts.JoistCantilever{
		At: at, Joists: at, Past: "B1", Count: 1, Missing: []string{},
		Cantilever: shown(value, place), BackSpan: shown(behind, at), Spacing: shown(spacing, at),
		Size: shown(k["size"], at), Lumber: lumber(k, at), LiveLoad: live, GroundSnowLoad: snow,
	})
}

// beamSpan has joists that pass the beam by a quarter of their span, so that
// their effective span is the actual one in every edition; none that pass where
// a table counts the cantilever with the joists.
func beamSpan(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	live, snow := k.loads(at)
	joists := k.length("joist_span")
	past := joists / 4
	if k["group"] == "spruce-pine-fir" {
		past = 0
	}
	bay := facts.BeamSpan{
		At: at, Beam: "B1", Bay: 1, Missing: []string{},
		ClearSpan: shown(value, place), SpanToCenter: shown(value, place),
		JoistSpan: shown(joists, at), JoistClearSpan: shown(joists, at), JoistCantilever: shown(past, at),
		Lumber: lumber(k, at), LiveLoad: live, GroundSnowLoad: snow,
	}
	plies, size, built := strings.Cut(k["size"], "-")
	if !built {
		plies, size = "1", k["size"]
	}
	n, _ := strconv.ParseInt(plies, 10, 64)
	bay.Plies, bay.Size = shown(n, at), shown(size, at)
	s.facts.BeamSpans = append(s.facts.BeamSpans, bay)
}

func post(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	live, snow := k.loads(at)
	p := facts.Post{
		At: at, Beam: "B1", N: 1, Missing: []string{},
		Height: shown(value, place), Size: shown(k["size"], at), Lumber: lumber(k, at), LiveLoad: live, GroundSnowLoad: snow,
	}
	if k["plies"] != "" {
		p.BeamPlies = shown(k.whole(catalog.Count, "plies"), at)
	}
	if k["area"] != "" {
		p.TributaryArea = k.area(at)
	}
	if k["beam_span"] != "" {
		p.BeamSpan, p.JoistSpan = shown(k.length("beam_span"), at), shown(k.length("joist_span"), at)
	}
	s.facts.Posts = append(s.facts.Posts, p)
}

func footingOf(what string) subject {
	return func(s *sheet, k keys, value measure.Length) {
		at, place := s.at()
		live, snow := k.loads(at)
		f := facts.Footing{
			At: at, Beam: "B1", N: 2, Missing: []string{}, Kind: shown("cast concrete", at),
			SoilBearing: shown(measure.Pressure(k.whole(catalog.Pressure, "soil")), at), LiveLoad: live, GroundSnowLoad: snow,
		}
		switch what {
		case "square":
			f.Shape, f.Side = shown("square", at), shown(value, place)
		case "round":
			f.Shape, f.Diameter = shown("round", at), shown(value, place)
		default:
			f.Thickness = shown(value, place)
		}
		if k["area"] != "" {
			f.TributaryArea = k.area(at)
		} else {
			f.BeamSpan, f.JoistSpan = shown(k.length("beam_span"), at), shown(k.length("joist_span"), at)
		}
		s.facts.Footings = append(s.facts.Footings, f)
	}
}

// rimOf names one material of each group of house rims.
var rimOf = map[string]string{
	"band joist": "solid sawn", "sawn lumber": "solid sawn",
	"engineered rim board": "engineered rim board", "concrete or masonry": "concrete",
}

func ledgerSpacing(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	live, snow := k.loads(at)
	joists, rim := k.length("joist_span"), rimOf[k["rim"]]
	if k["material"] != "" {
		rim = k["material"]
	}
	s.facts.Ledgers = append(s.facts.Ledgers, facts.Ledger{
		At: at, Missing: []string{}, PointLoads: []facts.PointLoad{}, FastenersShown: true,
		RimMaterial: shown(rim, at), RimThickness: shown(k.length("rim_thickness"), at),
		FastenerType: shown(k["fastener"], at), FastenerSpacing: shown(value, place), Sheathing: shown(k.length("gap"), at),
		JoistSpan: shown(joists, at), JoistClearSpan: shown(joists, at), LiveLoad: live, GroundSnowLoad: snow,
	})
}

func ledgerRow(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	s.facts.Ledgers = append(s.facts.Ledgers, facts.Ledger{
		At: at, Missing: []string{}, PointLoads: []facts.PointLoad{}, FastenersShown: true,
		Size: shown(k["size"], at), FastenerType: shown(k["fastener"], at), BottomRowToTop: shown(value, place),
	})
}

func decking(s *sheet, k keys, value measure.Length) {
	at, place := s.at()
	angle, joists := measure.Angle(0), int64(3)
	if k["lay"] == "diagonal" {
		angle = 45_000_000
	}
	if k["reach"] == "single" {
		joists = 2
	}
	s.facts.Decking = append(s.facts.Decking, facts.Decking{
		At: at, Material: shown("wood", at), Lumber: facts.Lumber{Species: shown(k["wood"], at)}, Thickness: shown(k.length("thickness"), at), BoardAngle: shown(angle, at),
		JoistSpacing: shown(value, place), JoistCount: shown(joists, at), JoistsPerBoard: shown(joists, at),
	})
}

// relationOf tells on which side of a table's cells the inside lies.
func relationOf(t *testing.T, checks *catalog.Catalog, f rulesettest.Found) result.Relation {
	t.Helper()
	return checks.Find(f.Check).Figure(f.Figure).Relation
}

// figuresOf gives a set with one check and those whose figures it reads.
func figuresOf(checks *catalog.Catalog, set *ruleset.Set, id string) *ruleset.Set {
	part := *set
	part.Checks = nil
	for _, name := range append([]string{id}, checks.Find(id).Reads...) {
		if c := set.Check(name); c != nil {
			copied := *c
			copied.Figures = slices.Clone(c.Figures)
			part.Checks = append(part.Checks, copied)
		}
	}
	return &part
}
