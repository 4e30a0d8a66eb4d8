package draw

import (
	"math"
	"slices"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// Sizes of letters, in points.
//
// Capitals of the smallest are 1.8 mm high on paper, where the heights of
// lettering for technical drawings begin (ISO 3098, from memory).
const (
	small  = 7.2
	normal = 8.0
	large  = 10.5
)

// figure is one picture at one scale, in points from the origin of the plan.
type figure struct {
	fonts  *paper.Fonts
	say    func(term string) string // in the words of the rule sets
	system measure.System
	scale  scale
	title  string

	lines, leaders, words []paper.Item
	dims                  []*dimension
	// taken is the room of words and markers; strokes are the lines that words
	// had better keep off, by the weight that lines are drawn with now.
	taken   []paper.Box
	kept    []paper.Box // ends of dimensions, stairs, openings: notes keep off, their leaders need not
	strokes []stroke
	weight  float64
	anchors []anchor
	symbols []symbol
	missing []string
	remarks []string
	rulers  rulers
	// extensions are the extension lines drawn so far.
	extensions []stroke
	soon       []func() // words that have little choice
	pending    []func()
	draft      bool // words that can move are left out
	// most is how large the figure may become with its notes, nil for any size;
	// reached is how large it is by now.
	most    *paper.Extent
	reached paper.Extent
	// findings are marked on their spots, on which no words stand.
	findings []finding
	spots    []paper.Box
}

// stroke is a line that words keep off, the more the greater its weight.
type stroke struct {
	a, b   paper.Point
	weight float64
}

// anchor is the spot of the drawing for what a pointer leads to.
type anchor struct {
	pointer string
	spot    paper.Point
}

// at puts a place of the plan on paper.
func (f *figure) at(p geometry.Point) paper.Point {
	return paper.Point{X: f.on(p.X), Y: f.on(p.Y)}
}

// on is a length on paper.
func (f *figure) on(l measure.Length) float64 { return float64(l) * f.scale.points() }

func (f *figure) all(ring geometry.Ring) []paper.Point {
	points := make([]paper.Point, len(ring))
	for i, p := range ring {
		points[i] = f.at(p)
	}
	return points
}

// draw adds lines and areas.
func (f *figure) draw(list ...paper.Item) {
	for _, item := range list {
		if _, pattern := item.(paper.Hatch); !pattern {
			item.Draw(strokes{f})
		}
	}
	f.lines = append(f.lines, list...)
}

// strokes is a canvas that remembers where lines run. A gap in a heavy line, which
// says what is cut or where an edge lies, loses more than one in a light one.
type strokes struct{ f *figure }

// Path implements paper.Canvas.
func (s strokes) Path(p paper.Path) {
	if p.Stroke == paper.NoStroke || p.Stroke == paper.Faint {
		return
	}
	weight := s.f.weight
	switch p.Stroke {
	case paper.Cut, paper.Grade:
		weight *= 3
	case paper.Bold:
		weight *= 2
	}
	for i := range p.Points {
		if k := (i + 1) % len(p.Points); k > 0 || p.Closed {
			s.f.strokes = append(s.f.strokes, stroke{p.Points[i], p.Points[k], weight})
		}
	}
}

// Text implements paper.Canvas.
func (s strokes) Text(paper.Text) {}

// Group implements paper.Canvas.
func (s strokes) Group(_ string, draw func()) { draw() }

// keepOff remembers a line that words had better not cross.
func (f *figure) keepOff(a, b paper.Point) {
	f.strokes = append(f.strokes, stroke{a, b, f.weight})
}

// lightly draws lines that matter little when words cross them.
func (f *figure) lightly(do func()) {
	was := f.weight
	f.weight = was / 5
	do()
	f.weight = was
}

func (f *figure) line(a, b paper.Point, stroke paper.Stroke) { f.draw(paper.Line(a, b, stroke)) }

// write adds words where they are and keeps their room.
func (f *figure) write(t paper.Text) {
	f.words = append(f.words, t)
	box := t.Box()
	f.taken = append(f.taken, box)
	f.reached = f.reached.With(box.Corners[:]...)
}

// anchor remembers the spot of an element. The first one given counts.
func (f *figure) anchor(pointer string, spot paper.Point) {
	f.anchors = append(f.anchors, anchor{pointer, spot})
}

// miss notes something that the design does not show, by its field or in words.
func (f *figure) miss(what string) {
	if what = fieldWords(what); !slices.Contains(f.missing, what) {
		f.missing = append(f.missing, what)
	}
}

// remark notes how something is drawn.
func (f *figure) remark(words string) {
	if !slices.Contains(f.remarks, words) {
		f.remarks = append(f.remarks, words)
	}
}

// later sets words when everything else has its place: they find room, the rest
// cannot move.
func (f *figure) later(set func()) { f.pending = append(f.pending, set) }

// sooner sets words after the dimensions have their figures and before the words
// that are put off till later: these have one line to stand along.
func (f *figure) sooner(set func()) { f.soon = append(f.soon, set) }

// settle sets the words that were put off; a draft goes without.
func (f *figure) settle() {
	if f.draft {
		return
	}
	clusters := f.clusters()
	f.letter()
	if f.most != nil {
		f.reached = paper.Bounds(f.items())
	}
	for _, set := range f.soon {
		set()
	}
	for _, c := range clusters {
		f.markAt(c.spot, c.tags)
	}
	for _, set := range f.pending { // those of the first kind may have added some
		set()
	}
	f.soon, f.pending = nil, nil
}

// use notes that the legend has to explain a symbol.
func (f *figure) use(s symbol) {
	if !slices.Contains(f.symbols, s) {
		f.symbols = append(f.symbols, s)
	}
}

// items are all items in the order in which they are painted: words come last,
// since they wipe the lines below them away.
func (f *figure) items() []paper.Item {
	list := slices.Concat(f.lines, f.leaders)
	for _, d := range f.dims {
		list = append(list, d.Dimension)
	}
	for _, d := range f.dims {
		list = append(list, d.Label)
	}
	return append(list, f.words...)
}

// free reports whether a box meets no words and no marker.
func (f *figure) free(boxes ...paper.Box) bool {
	for _, b := range boxes {
		if slices.ContainsFunc(f.taken, b.Meets) || slices.ContainsFunc(f.spots, b.Meets) {
			return false
		}
	}
	return true
}

// open reports whether boxes are free for notes and markers, which also keep off
// what is kept clear.
func (f *figure) open(boxes ...paper.Box) bool {
	for _, b := range boxes {
		if slices.ContainsFunc(f.kept, b.Meets) {
			return false
		}
	}
	return f.free(boxes...)
}

// crossings is the weight of the lines that run through boxes.
func (f *figure) crossings(boxes ...paper.Box) float64 {
	round := paper.NoExtent()
	for _, b := range boxes {
		round = round.With(b.Corners[:]...)
	}
	sum := 0.0
	for _, s := range f.strokes {
		// Most lines are far off, and seen to be with four comparisons.
		if max(s.a.X, s.b.X) <= round.Min.X || min(s.a.X, s.b.X) >= round.Max.X ||
			max(s.a.Y, s.b.Y) <= round.Min.Y || min(s.a.Y, s.b.Y) >= round.Max.Y {
			continue
		}
		if slices.ContainsFunc(boxes, func(b paper.Box) bool { return b.Crosses(s.a, s.b) }) {
			sum += s.weight
		}
	}
	return sum
}

// around lists places round a point on wider and wider rings, nearer ones first,
// so many on each ring, the rings so far apart.
func around(p paper.Point, from, to float64, ways int, apart float64) []paper.Point {
	var list []paper.Point
	for r := from; r <= to; r += apart {
		for i := range ways {
			// Start to the lower right, where the eye looks for a note.
			sin, cos := math.Sincos(2*math.Pi*float64(i)/float64(ways) + math.Pi/8)
			list = append(list, p.Plus(r*cos, r*sin))
		}
	}
	return list
}

// fieldWords puts the path of a field into words: "decking overhang" for
// "platforms[].decking.overhang". Words that are no path stay as they are.
func fieldWords(path string) string {
	if !strings.Contains(path, "[]") {
		return path
	}
	if path == "platforms[].measured_to" {
		return "what the outline is measured to (frame, fascia or decking)"
	}
	parts := strings.Split(strings.ReplaceAll(path, "[]", ""), ".")
	if parts[0] == "platforms" {
		parts = parts[1:]
	}
	for i, p := range parts {
		if i < len(parts)-1 && strings.HasSuffix(p, "s") && p != "joists" {
			p = strings.TrimSuffix(p, "s")
		}
		parts[i] = strings.ReplaceAll(p, "_", " ")
	}
	return strings.Join(parts, " ")
}
