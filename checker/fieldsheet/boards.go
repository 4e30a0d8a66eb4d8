package fieldsheet

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// boards lists rows, the last rip, and where boards may end.
func (p *platform) boards() {
	d := p.m.Decking
	if d == nil {
		p.missing("boards", "platforms[].decking")
		p.tally.boards.unknown = true
		return
	}
	s := Section{Title: "Boards" + p.of}
	s.add(p.boardMeasures(&s, d))
	s.add(p.jointTable(d))
	s.add(p.breakers(d))
	p.section(s)
}

// boardMeasures lists what is known of the boards whatever their angle, and
// the rows where they run square across a rectangle.
func (p *platform) boardMeasures(s *Section, d *model.Decking) Table {
	t := list("")
	for _, f := range []struct {
		value *model.Length
		what  string
		field string
	}{
		{d.BoardWidth, "board width", "board_width"},
		{d.Gap, "gap between boards", "gap"},
	} {
		if f.value == nil {
			p.missing("boards: "+f.what, "platforms[].decking."+f.field)
			continue
		}
		t.row(text(f.what), length(f.value.V))
	}
	if d.BoardAngle == nil {
		p.missing("boards: rows", "platforms[].decking.board_angle")
		p.tally.boards.unknown = true
		return t
	}
	t.row(text("away from square across the joists"), angle(d.BoardAngle.V))
	if span := p.boardSpan(d.BoardAngle.V); span > 0 {
		t.row(text("joist to joist along the board"), length(span))
	}
	if !p.countRows(s, &t, d) {
		p.tally.boards.unknown = true
	}
	return t
}

// boardSpan is the joist spacing along a board at an angle; 0 where the
// spacing is not known.
func (p *platform) boardSpan(away measure.Angle) measure.Length {
	fact := p.joistFact()
	if fact == nil || fact.Spacing == nil {
		return 0
	}
	if away == 0 {
		return fact.Spacing.Value
	}
	cos := math.Cos(float64(away) / float64(measure.Degree) * math.Pi / 180)
	return measure.Length(math.Round(float64(fact.Spacing.Value) / cos))
}

// countRows adds rows, last rip and row length of boards that run square
// across a rectangle; false where the number of boards does not follow.
func (p *platform) countRows(s *Section, t *Table, d *model.Decking) bool {
	if d.BoardAngle.V != 0 {
		s.Notes = append(s.Notes, "Boards on an angle: every row has a length of its own, so rows are not counted here.")
		return false
	}
	if d.PictureFrame != nil {
		p.missing("rows of boards inside the border", "whether the border runs along the house too")
		return false
	}
	if len(p.plan.Outline) != 4 {
		s.Notes = append(s.Notes, "The outline is no rectangle, so rows are not counted here.")
		return false
	}
	if p.plan.Past == nil {
		p.missing("rows of boards", "platforms[].decking.overhang")
		return false
	}
	if p.plan.Decked == nil || d.BoardWidth == nil || d.Gap == nil {
		return false
	}
	depth, board, gap := *p.plan.Decked, d.BoardWidth.V, d.Gap.V
	rows, err := geometry.BoardRows(depth, board, gap)
	if err != nil {
		return false
	}
	long := p.rowLength()
	t.row(text("depth to cover"), length(depth))
	t.row(text("rows"), count(rows.Count))
	t.row(text("last row"), length(rows.Last))
	if d.LastRip != nil && d.LastRip.V != rows.Last {
		t.row(text("last row as drawn"), length(d.LastRip.V))
	}
	if rows.Spare > 0 {
		t.row(text("left over past the last row"), length(rows.Spare))
	}
	t.row(text("length of a row"), length(long))
	s.add(waysOut(depth, board, gap, &rows))
	p.tally.boards.add(p.boardSize(d), p.stock(long), int64(rows.Count))
	if p.stock(long) == 0 {
		t.Notes = append(t.Notes, "A row is longer than any stock: every row has an end joint.")
	}
	return true
}

func (p *platform) boardSize(d *model.Decking) string {
	switch {
	case d.Nominal != nil:
		return word(d.Nominal)
	case d.Thickness != nil && d.BoardWidth != nil:
		return d.Thickness.V.Text(p.sys) + " x " + d.BoardWidth.V.Text(p.sys)
	}
	return ""
}

// rowLength is how long a row is: across the joists, edge to edge of the
// decking. A row along the side of the house does not pass it there.
func (p *platform) rowLength() measure.Length {
	box := p.plan.Outline.Bounds()
	whole, past := p.across(box.Max)-p.across(box.Min), *p.plan.Past
	if p.turned() {
		return whole + past // from the house out
	}
	return whole + 2*past
}

// waysOut lists what to do about a last row of less than half a board.
func waysOut(depth, board, gap measure.Length, rows *geometry.Rows) Table {
	if rows.Count < 3 || 2*rows.Last >= board {
		return Table{}
	}
	t := list("Last row under half a board: three ways out")
	n := measure.Length(rows.Count)
	open := geometry.Pitch{Over: depth - (n-1)*board, Parts: int64(n - 2)}
	t.row(text(fmt.Sprintf("gap: %d full rows at", n-1)), length(open.Length()))
	if closed := depth - n*board; closed >= 0 {
		tight := geometry.Pitch{Over: closed, Parts: int64(n - 1)}
		t.row(text(fmt.Sprintf("gap: or %d full rows at", n)), length(tight.Length()))
	}
	ends := geometry.Pitch{Over: board + rows.Last, Parts: 2}
	t.row(text("trim: first and last row both to"), length(ends.Length()))
	t.row(text(fmt.Sprintf("frame: %d full rows, decking shorter by", n-1)), length(rows.Last+gap))
	t.row(text(fmt.Sprintf("frame: %d full rows, decking deeper by", n)), length(board-rows.Last))
	return t
}

// jointTable lists where boards that do not reach may end: on the last joist
// center that a stock length covers. Joints that are drawn are held against the
// joists instead.
func (p *platform) jointTable(d *model.Decking) Table {
	if !p.framed() || len(p.joists) == 0 || d.BoardAngle == nil || d.BoardAngle.V != 0 {
		return Table{}
	}
	if d.ButtJoints != nil && len(d.ButtJoints.Positions) > 0 {
		return p.drawnJoints(d.ButtJoints.Positions)
	}
	if p.plan.Past == nil || len(p.plan.Outline) != 4 {
		return Table{}
	}
	start := p.across(p.plan.Outline.Bounds().Min) - *p.plan.Past
	if p.turned() {
		start = p.across(p.plan.Outline.Bounds().Min) // boards start at the house
	}
	whole := p.rowLength()
	t := Table{
		Title:   "Board ends on joist centers",
		Columns: []Column{{"Stock, joist", Words}, {"Cut to", Length}, {"Rest of the row", Length}},
		Notes:   []string{"Square the first end, cut the other on the joist center. Never end neighboring rows on the same joist."},
	}
	for _, stock := range p.stockLengths() {
		if stock >= whole {
			break
		}
		for _, j := range slices.Backward(p.joists) {
			if end := j.center - start; end <= stock {
				t.row(text(p.stockText(stock)+", joist "+strconv.Itoa(j.number)), length(end), length(whole-end))
				break
			}
		}
	}
	return t
}

// drawnJoints holds the joints of the drawing against the joist centers.
func (p *platform) drawnJoints(drawn []*model.Length) Table {
	t := Table{
		Title:   "Board ends as drawn",
		Columns: []Column{{"Joint, joist", Words}, {"From the left end", Length}, {"Off the joist center", Length}},
	}
	if p.turned() {
		t.Columns[1].Head = "From the house"
	}
	left := p.across(p.plan.Outline.Bounds().Min)
	for i, at := range drawn {
		nearest := p.joists[0]
		for _, j := range p.joists {
			if apart(j.center-left, at.V) < apart(nearest.center-left, at.V) {
				nearest = j
			}
		}
		t.row(text(fmt.Sprintf("%d, joist %d", i+1, nearest.number)), length(at.V), length(apart(nearest.center-left, at.V)))
	}
	return t
}

// breakers lists the boards that others end against.
func (p *platform) breakers(d *model.Decking) Table {
	t := Table{Title: "Breaker boards, center line", Columns: []Column{{"End", Words}, {"Along, from left end", Length}, {"Out from the house", Length}}}
	for i := range d.BreakerBoards {
		b := &d.BreakerBoards[i]
		if b.From == nil || b.To == nil {
			continue
		}
		for _, end := range []struct {
			name string
			at   *model.Point
		}{{"starts", b.From}, {"ends", b.To}} {
			along, out := p.base.place(geometry.Point{X: end.at.X, Y: end.at.Y})
			t.row(text(fmt.Sprintf("breaker %d %s", i+1, end.name)), length(along), length(out))
		}
	}
	return t
}
