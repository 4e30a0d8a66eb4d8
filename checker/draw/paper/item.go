package paper

// Point is a place on the sheet.
type Point struct{ X, Y float64 }

// Plus is p moved by dx and dy.
func (p Point) Plus(dx, dy float64) Point { return Point{X: p.X + dx, Y: p.Y + dy} }

// Item is one thing on a sheet.
type Item interface {
	// Draw hands the item to a canvas as paths and words.
	Draw(c Canvas)
	// Moved is the item shifted by dx and dy.
	Moved(dx, dy float64) Item
}

// Canvas takes what items are made of, in the order in which it is painted.
type Canvas interface {
	Path(p Path)
	Text(t Text)
	// Group wraps what belongs together; kind names it in one word.
	Group(kind string, draw func())
}

// Path is a line, a polyline or, closed, an area.
type Path struct {
	Points []Point
	Closed bool
	Stroke Stroke
	Fill   Fill
}

// Line is the straight path from a to b.
func Line(a, b Point, stroke Stroke) Path { return Path{Points: []Point{a, b}, Stroke: stroke} }

// Rectangle is the upright area between two opposite corners.
func Rectangle(a, b Point, stroke Stroke, fill Fill) Path {
	return Path{Points: []Point{a, {b.X, a.Y}, b, {a.X, b.Y}}, Closed: true, Stroke: stroke, Fill: fill}
}

// Draw implements Item.
func (p Path) Draw(c Canvas) { c.Path(p) }

// Moved implements Item.
func (p Path) Moved(dx, dy float64) Item {
	p.Points = moved(p.Points, dx, dy)
	return p
}

func moved(points []Point, dx, dy float64) []Point {
	out := make([]Point, len(points))
	for i, q := range points {
		out[i] = q.Plus(dx, dy)
	}
	return out
}

// Align says which part of a text stands at its place.
type Align uint8

// The alignments.
const (
	Left Align = iota
	Middle
	Right
)

// Text is one line of words. At is on its base line.
type Text struct {
	At    Point
	Words string
	Size  float64 // of the letters, in points
	Bold  bool
	Align Align
	// Turn is in degrees against the clock: 90 reads from bottom to top.
	Turn float64
	Ink  Ink
	// Width is what the words measure in the sheet's own letters.
	Width float64
	// Clear paints the paper white behind the words, where lines run below.
	Clear bool
}

// Draw implements Item.
func (t Text) Draw(c Canvas) {
	if t.Clear {
		box := t.Box()
		c.Path(Path{Points: box.Corners[:], Closed: true, Fill: White})
	}
	c.Text(t)
}

// Moved implements Item.
func (t Text) Moved(dx, dy float64) Item {
	t.At = t.At.Plus(dx, dy)
	return t
}

// Group holds items that belong together.
type Group struct {
	Kind  string
	Items []Item
}

// Draw implements Item.
func (g Group) Draw(c Canvas) {
	c.Group(g.Kind, func() {
		for _, item := range g.Items {
			item.Draw(c)
		}
	})
}

// Moved implements Item.
func (g Group) Moved(dx, dy float64) Item {
	items := make([]Item, len(g.Items))
	for i, item := range g.Items {
		items[i] = item.Moved(dx, dy)
	}
	g.Items = items
	return g
}

// Sheet is one finished sheet.
type Sheet struct {
	// Number and Name are as in its title block; File is a name for it in lower
	// case without spaces.
	Number, Name, File string
	// Job is the title of the set of drawings.
	Job string
	// About says in a sentence or two what is drawn, for those who cannot see it.
	About string
	// Scale is that of all figures on the sheet, as `1/4" = 1'-0"`; empty on a
	// sheet of notes.
	Scale string
	// Findings are the numbers of the findings marked on the sheet, rising.
	Findings      []int
	Width, Height float64
	Items         []Item
}
