package paper

// Stroke is a kind of line. Which one a thing gets says what it is, in black and
// white: weight for what is cut or seen, dashes for what is hidden.
type Stroke uint8

// The kinds of line.
const (
	NoStroke Stroke = iota
	Cut             // what is cut through, the outline of the surface
	Bold            // edges in front
	Edge            // edges seen
	Thin            // edges further back, treads, boards
	Fine            // dimensions, leaders, hatches
	Faint           // infill and patterns that must not drown the rest
	Hidden          // below or behind something
	Center          // center lines
	Open            // that something is there, its place not being shown
	Grade           // the ground
	Frame           // the border of the sheet
)

// Pen is how a stroke is drawn. Dash alternates drawn and left out lengths and
// is nil for a full line. All lengths are points.
type Pen struct {
	Width float64
	Dash  []float64
	Ink   Ink
}

// Pen gives the pen of a stroke; that of NoStroke has no width.
func (s Stroke) Pen() Pen {
	switch s {
	case Cut:
		return Pen{Width: 1.7}
	case Bold:
		return Pen{Width: 1.1}
	case Edge:
		return Pen{Width: 0.75}
	case Thin:
		return Pen{Width: 0.45}
	case Fine:
		return Pen{Width: 0.35}
	case Faint:
		return Pen{Width: 0.3, Ink: Gray}
	case Hidden:
		return Pen{Width: 0.6, Dash: []float64{5, 2.5}}
	case Center:
		return Pen{Width: 0.4, Dash: []float64{12, 2.5, 2, 2.5}}
	case Open:
		return Pen{Width: 0.75, Dash: []float64{1, 2.6}}
	case Grade:
		return Pen{Width: 1.3}
	case Frame:
		return Pen{Width: 1.1}
	}
	return Pen{}
}

// Fill is what an area is filled with.
type Fill uint8

// The fills.
const (
	NoFill Fill = iota
	White
	Shade // light gray, for what is cut through
	Solid
)

// Gray gives the gray of a fill, 0 black to 255 white; ok is false for no fill.
func (f Fill) Gray() (gray uint8, ok bool) {
	switch f {
	case White:
		return 255, true
	case Shade:
		return 222, true
	case Solid:
		return 0, true
	}
	return 0, false
}

// Ink is what lines and words are drawn with. Nothing is told by ink alone.
type Ink uint8

// The inks.
const (
	Black Ink = iota
	Gray
	Reverse // white words on a solid area
)

// Gray gives the gray of an ink, 0 black to 255 white.
func (i Ink) Gray() uint8 {
	switch i {
	case Gray:
		return 110
	case Reverse:
		return 255
	}
	return 0
}
