package draw

import (
	"fmt"
	"strings"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
)

// Parts of a sheet, in points.
const (
	margin      = 28.0
	stripHeight = 46.0 // the title block along the bottom
	columnWidth = 236.0
	gutter      = 12.0
	titleRoom   = 34.0 // below a figure, for its title and scale bar
	between     = 26.0 // figures on one sheet
)

// format is a size of paper, lying.
type format struct {
	name          string
	width, height float64
}

func formats() []format {
	return []format{
		{"tabloid", 1224, 792}, // 17 x 11 in
		{"letter", 792, 612},
		{"a3", 1190.55, 841.89},
		{"a4", 841.89, 595.28},
	}
}

// named is the name of the paper as it is written: those of the ISO series with
// a capital letter.
func (f format) named() string {
	if strings.HasPrefix(f.name, "a") {
		return strings.ToUpper(f.name)
	}
	return f.name
}

// Papers lists the names of the sizes of paper.
func Papers() []string {
	var names []string
	for _, f := range formats() {
		names = append(names, f.name)
	}
	return names
}

func paperFormat(name string, system measure.System) (format, error) {
	if name == "" {
		name = "tabloid"
		if system == measure.Metric {
			name = "a3"
		}
	}
	for _, f := range formats() {
		if f.name == name {
			return f, nil
		}
	}
	return format{}, fmt.Errorf("unknown paper %q; papers: %s", name, strings.Join(Papers(), ", "))
}

// column is how wide the notes beside the drawing are; narrow on small paper.
func (f format) column() float64 { return min(columnWidth, f.width*0.24) }

// field is the room for figures.
func (f format) field() paper.Extent {
	return paper.Extent{
		Min: paper.Point{X: margin + gutter, Y: margin + gutter},
		Max: paper.Point{X: f.width - margin - f.column() - 2*gutter, Y: f.height - margin - stripHeight - gutter},
	}
}

// notes is the room for the notes beside the figures.
func (f format) notes() paper.Extent {
	return paper.Extent{
		Min: paper.Point{X: f.width - margin - f.column(), Y: margin + gutter},
		Max: paper.Point{X: f.width - margin - gutter, Y: f.height - margin - stripHeight - gutter},
	}
}

// sheetSet gathers drawings and turns them into sheets.
type sheetSet struct {
	d        *drafter
	format   format
	options  Options
	findings []finding
	drawings []drawing
	sheets   []*paper.Sheet
	rest     []entry // notes that found no room beside their drawing
}

func newSheetSet(d *drafter, f format, options Options) *sheetSet {
	return &sheetSet{d: d, format: f, options: options, findings: findings(options.Report, options.Previous)}
}

func (s *sheetSet) add(d drawing) { s.drawings = append(s.drawings, d) }

// finish lays all drawings out. Every finding is marked once, on the drawing
// that comes closest to what it concerns.
func (s *sheetSet) finish() []*paper.Sheet {
	homes := s.homes()
	for i := range s.drawings {
		s.sheet(i, homes)
	}
	if len(s.drawings) == 0 {
		s.start("Nothing can be drawn", "The design shows no outline, or nothing of what was asked for.")
		s.flow(s.entries(0, nil, homes))
	}
	s.continued()
	for i, sheet := range s.sheets {
		sheet.Number = fmt.Sprintf("D%d", i+1)
		sheet.File = fmt.Sprintf("d%d-%s", i+1, fileName(sheet.Name))
		sheet.Job = s.job()
		sheet.Items = append(sheet.Items, s.titleBlock(sheet, i)...)
	}
	return s.sheets
}

// home is where a finding is marked.
type home struct{ drawing, figure int } // drawing -1: no drawing has a spot for it

// homes finds the drawing and the figure for each finding.
func (s *sheetSet) homes() []home {
	figures := make([][]*figure, len(s.drawings))
	for i, drawing := range s.drawings {
		if len(s.findings) == 0 {
			break
		}
		for _, build := range drawing.figures {
			figures[i] = append(figures[i], build(pencil{scale: scales(s.d.deck.System)[0], draft: true}))
		}
	}
	list := make([]home, len(s.findings))
	for k := range s.findings {
		list[k] = home{-1, 0}
		best := 0
		places, view := s.findings[k].places(), s.findings[k].view()
		for i := range figures {
			for n, f := range figures[i] {
				_, near := f.spotFor(places)
				if near > 0 && s.drawings[i].view == view {
					near += 7 // more than a later place costs, less than a token is worth
				}
				if near > best {
					list[k], best = home{i, n}, near
				}
			}
		}
	}
	return list
}

// arrangement is the figures of a sheet at a scale, and where they stand.
type arrangement struct {
	figures []*figure
	extents []paper.Extent
	places  []paper.Point
}

// arrange builds the figures of a drawing at the largest scale that fits the
// field, one below the other or side by side. Where notes would cost more than
// one step of scale they are confined to the field, and those that find no room
// there stand beside the drawing.
func (s *sheetSet) arrange(i int, homes []home) arrangement {
	field := s.format.field()
	const largest = 10
	var fitting []scale // without their words
	for _, sc := range append(scales(s.d.deck.System), smallest(s.d.deck.System)) {
		if sc.times < largest { // is no help
			continue
		}
		a := s.at(i, pencil{scale: sc, draft: true}, homes)
		if !a.stack(field) && !a.row(field) {
			continue
		}
		fitting = append(fitting, sc)
		if a := s.at(i, pencil{scale: sc}, homes); a.stack(field) || a.row(field) {
			return a
		}
		if len(fitting) > 1 {
			break
		}
	}
	for _, sc := range fitting {
		if a := s.confined(i, sc, homes); a.stack(field) || a.row(field) {
			return a
		}
	}
	for _, sc := range scales(s.d.deck.System) {
		if len(fitting) == 0 || sc.times <= fitting[0].times {
			continue
		}
		if a := s.confined(i, sc, homes); a.stack(field) || a.row(field) {
			return a
		}
	}
	a := s.confined(i, smallest(s.d.deck.System), homes)
	a.stack(field)
	return a
}

// confined builds the figures so that each keeps to its share of the field.
func (s *sheetSet) confined(i int, sc scale, homes []home) arrangement {
	field := s.format.field()
	a := s.at(i, pencil{scale: sc, draft: true}, homes)
	n := float64(len(a.extents))
	most := make([]*paper.Extent, len(a.extents))
	var width, height float64
	for _, e := range a.extents {
		width += e.Width()
		height += e.Height() + titleRoom
	}
	stacked := a.stack(field)
	for k, e := range a.extents {
		w, h := field.Width(), e.Height()+(field.Height()-height-between*(n-1))/n
		if !stacked {
			w, h = e.Width()+(field.Width()-width-between*(n+1))/n, field.Height()-titleRoom
		}
		most[k] = &paper.Extent{Max: paper.Point{X: w, Y: h}}
	}
	return s.at(i, pencil{scale: sc}, homes, most...)
}

// at builds the figures of a drawing, each at most as large as is said, if so.
func (s *sheetSet) at(i int, p pencil, homes []home, most ...*paper.Extent) arrangement {
	var a arrangement
	for n, build := range s.drawings[i].figures {
		p.findings, p.most = nil, nil
		if n < len(most) {
			p.most = most[n]
		}
		for k, h := range homes {
			if h == (home{i, n}) {
				p.findings = append(p.findings, s.findings[k])
			}
		}
		f := build(p)
		a.figures = append(a.figures, f)
		a.extents = append(a.extents, paper.Bounds(f.items()))
	}
	return a
}

// stack stands figures one below the other; false if they do not fit.
func (a *arrangement) stack(field paper.Extent) bool {
	height, widest := 0.0, 0.0
	for _, e := range a.extents {
		height += e.Height() + titleRoom
		widest = max(widest, e.Width())
	}
	height += between * float64(len(a.extents)-1)
	a.places = a.places[:0]
	y := field.Min.Y + max(field.Height()-height, 0)/2
	for _, e := range a.extents {
		x := field.Min.X + (field.Width()-e.Width())/2
		a.places = append(a.places, paper.Point{X: x - e.Min.X, Y: y - e.Min.Y})
		y += e.Height() + titleRoom + between
	}
	return height <= field.Height() && widest <= field.Width()
}

// row stands figures side by side; false if they do not fit.
func (a *arrangement) row(field paper.Extent) bool {
	width, highest := 0.0, 0.0
	for _, e := range a.extents {
		width += e.Width()
		highest = max(highest, e.Height())
	}
	gap := (field.Width() - width) / float64(len(a.extents)+1)
	if gap < between || highest+titleRoom > field.Height() {
		return false
	}
	a.places = a.places[:0]
	x := field.Min.X + gap
	for _, e := range a.extents {
		y := field.Min.Y + (field.Height()-e.Height()-titleRoom)/2
		a.places = append(a.places, paper.Point{X: x - e.Min.X, Y: y - e.Min.Y})
		x += e.Width() + gap
	}
	return true
}

// start begins a sheet.
func (s *sheetSet) start(name, about string) *paper.Sheet {
	sheet := &paper.Sheet{Name: name, About: about, Width: s.format.width, Height: s.format.height}
	s.sheets = append(s.sheets, sheet)
	return sheet
}

// sheet lays one drawing out with its notes.
func (s *sheetSet) sheet(i int, homes []home) {
	drawing := s.drawings[i]
	sheet := s.start(drawing.name, drawing.about)
	a := s.arrange(i, homes)
	for k, h := range homes {
		if h.drawing == i {
			sheet.Findings = append(sheet.Findings, s.findings[k].number)
		}
	}
	for n, f := range a.figures {
		sheet.Scale = f.scale.name
		at, e := a.places[n], a.extents[n]
		group := paper.Group{Kind: "figure", Items: f.items()}
		sheet.Items = append(sheet.Items, group.Moved(at.X, at.Y))
		sheet.Items = append(sheet.Items, s.caption(f, paper.Point{X: e.Min.X + at.X, Y: e.Max.Y + at.Y}, e.Width())...)
	}
	s.flow(s.entries(i, a.figures, homes))
}

// fileName turns words into the name of a file.
func fileName(words string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(words) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
	}
	return strings.Trim(b.String(), "-")
}
