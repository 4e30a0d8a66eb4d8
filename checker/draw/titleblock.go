package draw

import (
	"fmt"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
)

// caption is a figure's title, its scale and a scale bar, below it.
func (s *sheetSet) caption(f *figure, at paper.Point, width float64) []paper.Item {
	title := s.d.fonts.BoldText(f.title, large)
	bar, barWidth := s.scaleBar(f)
	sc := s.d.fonts.Text("scale "+f.scale.name, normal)
	whole := max(title.Width, sc.Width+14+barWidth)
	x, y := at.X+(width-whole)/2, at.Y+16
	field := s.format.field()
	x = min(max(x, field.Min.X), field.Max.X-whole)
	title.At = paper.Point{X: x, Y: y}
	sc.At = paper.Point{X: x, Y: y + 13}
	list := []paper.Item{title, sc}
	for _, item := range bar {
		list = append(list, item.Moved(x+sc.Width+14, y+13))
	}
	return list
}

// scaleBar is a bar of round lengths, for prints that were made smaller. Its
// base line starts at the origin.
func (s *sheetSet) scaleBar(f *figure) (list []paper.Item, width float64) {
	unit, name := measure.Foot, "ft"
	steps := []measure.Length{measure.Foot / 2, measure.Foot, 2 * measure.Foot, 4 * measure.Foot, 8 * measure.Foot, 20 * measure.Foot, 80 * measure.Foot, 400 * measure.Foot}
	if f.system == measure.Metric {
		unit, name = measure.Metre, "m"
		steps = []measure.Length{measure.Metre / 10, measure.Metre / 5, measure.Metre / 2, measure.Metre, 2 * measure.Metre, 5 * measure.Metre, 20 * measure.Metre, 100 * measure.Metre}
	}
	step := steps[0]
	for _, n := range steps {
		step = n
		if f.on(n) >= 22 {
			break
		}
	}
	const high = 3.2
	part := f.on(step)
	for i := range 3 {
		fill := paper.White
		if i%2 == 0 {
			fill = paper.Solid
		}
		list = append(list, paper.Rectangle(paper.Point{X: part * float64(i), Y: -high}, paper.Point{X: part * float64(i+1)}, paper.Thin, fill))
	}
	end := s.d.fonts.Text(fmt.Sprintf("%g %s", 3*float64(step)/float64(unit), name), small)
	end.At = paper.Point{X: 3*part + 4}
	return append(list, end), 3*part + 4 + end.Width
}

// titleBlock is the border of a sheet and the strip along its bottom.
func (s *sheetSet) titleBlock(sheet *paper.Sheet, i int) []paper.Item {
	low, high := paper.Point{X: margin, Y: margin}, paper.Point{X: sheet.Width - margin, Y: sheet.Height - margin}
	top := high.Y - stripHeight
	side := sheet.Width - margin - s.format.column() - gutter
	list := []paper.Item{
		paper.Rectangle(low, high, paper.Frame, paper.NoFill),
		paper.Line(paper.Point{X: low.X, Y: top}, paper.Point{X: high.X, Y: top}, paper.Frame),
	}
	if i < max(len(s.drawings), 1) { // sheets of notes only have columns of their own
		list = append(list, paper.Line(paper.Point{X: side, Y: low.Y}, paper.Point{X: side, Y: top}, paper.Thin))
	}
	revision := "not shown"
	if job := s.d.deck.Job; job != nil && job.Revision != nil {
		revision = job.Revision.V
	}
	cells := []struct {
		part        float64 // of the width
		name, words string
	}{
		{0.24, "job", s.job()},
		{0.07, "revision", revision},
		{0.2, "drawing", sheet.Name},
		{0.18, "drawn from", s.options.Source},
		{0.12, "rule sets", s.setNames()},
		{0.12, "scale, on " + s.format.named() + " paper", sheet.Scale},
		{0.07, "sheet", fmt.Sprintf("D%d of %d", i+1, len(s.sheets))},
	}
	if sheet.Scale == "" {
		cells[5].words = "none"
	}
	size := large
	if sheet.Width < 1000 {
		size = normal
	}
	x := low.X
	for n, c := range cells {
		width := c.part * (high.X - low.X)
		if n > 0 {
			list = append(list, paper.Line(paper.Point{X: x, Y: top}, paper.Point{X: x, Y: high.Y}, paper.Thin))
		}
		name := s.d.fonts.Text(c.name, small)
		name.At, name.Ink = paper.Point{X: x + 7, Y: top + 12}, paper.Gray
		list = append(list, name)
		for k, line := range s.fitted(c.words, size, width-14) {
			t := s.d.fonts.BoldText(line, size)
			t.At = paper.Point{X: x + 7, Y: top + 25 + float64(k)*13}
			list = append(list, t)
		}
		x += width
	}
	return list
}

// job is the title of the design.
func (s *sheetSet) job() string {
	if job := s.d.deck.Job; job != nil && job.Title != nil {
		return job.Title.V
	}
	return "untitled"
}

// setNames lists the rule sets that were run.
func (s *sheetSet) setNames() string {
	if s.options.Report == nil {
		return "none run"
	}
	var names []string
	for _, set := range s.options.Report.Sets {
		names = append(names, set.ID)
	}
	return strings.Join(names, ", ")
}

// fitted breaks words into at most two lines and says where some are left out.
func (s *sheetSet) fitted(words string, size, width float64) []string {
	lines := s.d.fonts.Wrap(words, size, width, true)
	if len(lines) <= 2 {
		return lines
	}
	second := lines[1]
	for s.d.fonts.Width(second+"...", size, true) > width && second != "" {
		second = strings.ToValidUTF8(second[:len(second)-1], "")
	}
	return []string{lines[0], strings.ToValidUTF8(second, "") + "..."}
}
