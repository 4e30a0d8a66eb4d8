package draw_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// hard is a design that is hard to draw.
type hard struct {
	name, text string
}

// shape says what a hard design is made of. Lengths are inches; a metric design
// takes 25 mm for each.
type shape struct {
	metric          bool
	title, mark     string
	outline         string // rectangle, ell, notch, walk
	wide, deep      int
	rows, posts     int // beams along the house, posts below each
	joists          int // spacing
	alongHouse      bool
	risers, stairs  int
	rise            int // height of the surface
	uneven, landing bool
	openings, loads int
	seed            uint64
}

func (s shape) l(inches float64) string {
	if s.metric {
		return fmt.Sprintf("%.0f mm", inches*25)
	}
	if whole := int(inches); float64(whole) != inches {
		return fmt.Sprintf("%d-%d/8 in", whole, int((inches-float64(whole))*8))
	}
	return fmt.Sprintf("%.0f in", inches)
}

func (s shape) size(nominal string, thick, deep float64) string {
	if s.metric {
		return fmt.Sprintf("actual: %.0f mm x %.0f mm", thick*25, deep*25)
	}
	return "size: " + nominal
}

// corners of the outline, and the names of its edges from the house on.
func (s shape) corners() (points [][2]int, edges []string) {
	w, d := s.wide, s.deep
	switch s.outline {
	case "ell":
		return [][2]int{{0, 0}, {w, 0}, {w, d / 2}, {w / 2, d / 2}, {w / 2, d}, {0, d}}, []string{"house", "right", "return", "inner", "front", "left"}
	case "notch":
		return [][2]int{{0, 0}, {w, 0}, {w, d}, {w * 3 / 4, d}, {w * 3 / 4, d * 2 / 3}, {w / 2, d * 2 / 3}, {w / 2, d}, {0, d}},
			[]string{"house", "right", "front right", "notch right", "notch", "notch left", "front", "left"}
	case "clip":
		c := min(w, d) / 4
		return [][2]int{{0, 0}, {w, 0}, {w, d - c}, {w - c, d}, {0, d}}, []string{"house", "right", "clip", "front", "left"}
	}
	return [][2]int{{0, 0}, {w, 0}, {w, d}, {0, d}}, []string{"house", "right", "front", "left"}
}

// yaml is the design as a description.
func (s shape) yaml() string {
	var b strings.Builder
	put := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	r := rand.New(rand.NewPCG(s.seed, 7))
	put("deck: 1\njob: {title: %q, revision: %q}", s.title, "rev "+s.mark)
	put("house: {house_rim: {material: solid sawn, size: 2x10}")
	if s.openings > 0 {
		put("  , openings: [")
		for i := range s.openings {
			put("    {kind: %s, mark: W%d, along: %s, clear_width: %s},", []string{"door", "window"}[i%2], i+1, s.l(float64(6+i*s.wide/s.openings)), s.l(float64(max(s.wide/s.openings-12, 3))))
		}
		put("  ]")
	}
	put("}\nplatforms:\n  - mark: %q\n    support: ledger\n    measured_to: frame", s.mark)
	points, edges := s.corners()
	var corners []string
	for _, p := range points {
		corners = append(corners, fmt.Sprintf("[%s, %s]", s.l(float64(p[0])), s.l(float64(p[1]))))
	}
	put("    outline: {corners: [%s], edges: [%s]}", strings.Join(corners, ", "), strings.Join(edges, ", "))
	put("    surface_above_grade: %s\n    edges:", s.l(float64(s.rise)))
	for i, e := range edges[1:] {
		put("      %s: {drop: %s, guard: %s}", e, s.l(float64(s.rise)-float64(r.IntN(5))), []string{"G1", "G1", "none"}[i%3])
	}
	put("    ledger: {%s, attached_to: house_rim, fasteners: {type: bolt, diameter: %s, spacing: %s, rows: 2}}", s.size("2x10", 2, 9), s.l(0.5), s.l(16))
	direction := "out_from_house"
	if s.alongHouse {
		direction = "along_house"
	}
	put("    joists: {%s, direction: %s, layout: on_center, spacing: %s}", s.size("2x10", 2, 9), direction, s.l(float64(s.joists)))
	put("    rim_joist: {%s}", s.size("2x10", 2, 9))
	s.beams(put, r)
	put("    posts: {%s}\n    footings: {shape: round, diameter: %s, thickness: %s, depth: %s}", s.size("6x6", 5, 5), s.l(16), s.l(8), s.l(30))
	put("    decking: {material: composite, nominal: 5/4x6, thickness: %s, board_width: %s, gap: %s, board_angle: %d}", s.l(1), s.l(5.5), s.l(0.25), r.IntN(2)*45)
	if s.loads > 0 {
		put("    loads:")
	}
	for i := range s.loads {
		put("      - {kind: planter with a long name, at: [%s, %s]}", s.l(float64(s.wide*(i+1)/(2*s.loads+2))), s.l(float64(s.deep)/3))
	}
	put("guards: [{mark: G1, height: %s, infill: {kind: balusters, opening: %s, baluster_width: %s, bottom_gap: %s}}]", s.l(42), s.l(3.5), s.l(1.5), s.l(3))
	s.flights(put, r)
	return b.String()
}

func (s shape) beams(put func(string, ...any), r *rand.Rand) {
	if s.rows == 0 {
		return
	}
	put("    beams:")
	for i := range s.rows {
		wide := s.wide
		out := s.deep * (i + 1) / (s.rows + 1) / 2
		if s.outline == "rectangle" {
			out *= 2
		}
		var at []string
		for k := range s.posts {
			at = append(at, s.l(float64(6+r.IntN(4)+k*(wide-16)/max(s.posts-1, 1))))
		}
		put("      - {mark: B%d, %s, plies: 2, kind: dropped, from_house: %s, posts_at: [%s]}", i+1, s.size("2x10", 2, 9), s.l(float64(out)), strings.Join(at, ", "))
	}
}

func (s shape) flights(put func(string, ...any), r *rand.Rand) {
	if s.stairs == 0 {
		return
	}
	put("stairs:")
	_, edges := s.corners()
	front := s.wide
	edge := edges[len(edges)-2]
	if s.outline == "ell" || s.outline == "notch" {
		front /= 2
	}
	if s.outline == "clip" {
		front -= min(s.wide, s.deep) / 4
	}
	for k := range s.stairs {
		room := front / s.stairs
		put("  - mark: ST%d%s\n    from: {platform: %q, edge: %s, at: %s}\n    to: grade\n    width: %s", k+1, strings.TrimPrefix(s.mark, "P"), s.mark, edge, s.l(float64(k*room+1)), s.l(float64(max(min(room-4, 48), 10))))
		put("    total_rise: %s\n    risers: %d\n    tread_depth: %s\n    nosing: %s\n    riser_opening: %s", s.l(float64(s.rise)), s.risers, s.l(10.5), s.l(1), []string{"closed", s.l(3.5)}[k%2])
		if s.uneven {
			var list []string
			for range s.risers {
				list = append(list, s.l(float64(s.rise/s.risers)+float64(r.IntN(4))/8))
			}
			put("    measured_risers: [%s]", strings.Join(list, ", "))
			list = nil
			for range s.risers - 1 {
				list = append(list, s.l(10.5+float64(r.IntN(3))/8))
			}
			put("    measured_treads: [%s]", strings.Join(list, ", "))
		}
		put("    tread: {thickness: %s}\n    stringers: {kind: %s, %s, count: 3}", s.l(1), []string{"cut", "solid"}[k%2], s.size("2x12", 2, 11))
		put("    handrail: {sides: 2, height: %s}\n    guard: {height: %s}", s.l(36), s.l(40))
		if s.landing {
			put("    landing_bottom: {along: %s, out: %s, slope_out: 1%%, slope_along: 2%%}", s.l(60), s.l(48))
		}
	}
}

// hardShapes are designs at the ends of what is built.
func hardShapes() []shape {
	long := "The deck behind the house with the long name, second part, as measured again after the storm"
	plain := shape{title: "Plain", mark: "P", outline: "rectangle", wide: 192, deep: 144, rows: 1, posts: 3, joists: 16, risers: 7, stairs: 1, rise: 50, openings: 1}
	with := func(name string, change func(*shape)) shape {
		s := plain
		s.title = name
		change(&s)
		return s
	}
	return []shape{
		with("fourteen uneven risers", func(s *shape) { s.risers, s.rise, s.uneven, s.landing = 14, 105, true, true }),
		with("twenty four uneven risers", func(s *shape) { s.risers, s.rise, s.uneven = 24, 180, true }),
		with("two risers", func(s *shape) { s.risers, s.rise, s.uneven = 2, 15, true }),
		with("one riser", func(s *shape) { s.risers, s.rise = 1, 7 }),
		with("forty posts", func(s *shape) { s.wide, s.deep, s.rows, s.posts = 480, 240, 4, 10 }),
		with("four feet square", func(s *shape) { s.wide, s.deep, s.rows, s.posts, s.rise, s.risers = 48, 48, 1, 2, 24, 3 }),
		with("sixty feet long", func(s *shape) { s.wide, s.deep, s.posts, s.openings, s.stairs = 720, 120, 11, 5, 2 }),
		with("round a corner", func(s *shape) { s.outline, s.wide, s.deep, s.posts = "ell", 288, 264, 5 }),
		with("notched", func(s *shape) { s.outline, s.wide, s.deep, s.posts = "notch", 288, 240, 5 }),
		with("clipped, along the house", func(s *shape) { s.outline, s.alongHouse, s.landing = "clip", true, true }),
		with("many stairs", func(s *shape) { s.wide, s.stairs, s.landing = 360, 5, true }),
		with("many loads and openings", func(s *shape) { s.loads, s.openings = 4, 4 }),
		with("metric", func(s *shape) { s.metric, s.uneven, s.landing, s.rise, s.risers = true, true, true, 60, 9 }),
		with(long, func(s *shape) { s.mark = "P the upper terrace towards the garden of the neighbors" }),
		with(long+", in millimetres", func(s *shape) { s.metric, s.mark, s.outline = true, "P the upper terrace towards the garden", "ell" }),
	}
}

// anyShape is a design at random.
func anyShape(seed uint64) shape {
	r := rand.New(rand.NewPCG(seed, 3))
	pick := func(list ...string) string { return list[r.IntN(len(list))] }
	s := shape{
		seed: seed, title: fmt.Sprintf("Seed %d", seed), metric: r.IntN(3) == 0,
		mark:    pick("P", "P", "P2", "P the long deck behind the kitchen"),
		outline: pick("rectangle", "rectangle", "ell", "notch", "clip"),
		wide:    48 + 8*r.IntN(60), deep: 48 + 8*r.IntN(30),
		rows: r.IntN(4), posts: 2 + r.IntN(8), joists: []int{12, 16, 24}[r.IntN(3)], alongHouse: r.IntN(4) == 0,
		stairs: r.IntN(4), risers: 1 + r.IntN(16), uneven: r.IntN(2) == 0, landing: r.IntN(2) == 0,
		openings: r.IntN(4), loads: r.IntN(3),
	}
	s.rise = s.risers*7 + r.IntN(s.risers)
	const least = 16 // of an edge for each stair, so that none overlaps the next
	s.stairs = min(s.stairs, s.wide/2/least)
	return s
}

// hards are all hard designs: those at the ends, and some at random.
func hards(random int) []hard {
	var list []hard
	for _, s := range hardShapes() {
		list = append(list, hard{s.title, s.yaml()})
	}
	seeds := []uint64{26} // on letter its notes fit at no scale unless confined
	for seed := range uint64(random) {
		seeds = append(seeds, seed)
	}
	for _, seed := range seeds {
		s := anyShape(seed)
		list = append(list, hard{s.title, s.yaml()})
	}
	return list
}
