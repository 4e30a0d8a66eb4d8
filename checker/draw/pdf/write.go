package pdf

import (
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"plumbrule/checker/draw/paper"
)

// family is the name of the letters inside the file.
const family = "drawing"

// Write writes the sheets as pages of one file under the title of the job. The
// error says that the letters cannot be embedded or that the writer failed.
func Write(w io.Writer, sheets []*paper.Sheet) error {
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt"})
	fixed := time.Date(2000, time.January, 1, 0, 0, 0, 0, time.UTC)
	doc.SetCreationDate(fixed)
	doc.SetModificationDate(fixed)
	doc.SetCatalogSort(true)
	if len(sheets) > 0 {
		doc.SetTitle(sheets[0].Job, true)
	}
	doc.SetLang("en-US")
	Prepare(doc)
	fonts, err := paper.OpenFonts()
	if err != nil {
		return err
	}
	for _, s := range sheets {
		AddSheet(doc, fonts, s, 0)
	}
	if err := doc.Output(w); err != nil {
		return fmt.Errorf("write the PDF: %w", err)
	}
	return nil
}

// Prepare gives a document the letters of the drawings. Its unit must be the
// point.
func Prepare(doc *fpdf.Fpdf) {
	doc.AddUTF8FontFromBytes(family, "", paper.RegularTTF())
	doc.AddUTF8FontFromBytes(family, "B", paper.BoldTTF())
	doc.SetAutoPageBreak(false, 0)
	doc.SetMargins(0, 0, 0)
}

// AddSheet adds a page of the sheet's size and draws the sheet on it. Level is
// the depth of its bookmark, 0 for the first.
func AddSheet(doc *fpdf.Fpdf, fonts *paper.Fonts, s *paper.Sheet, level int) {
	// The page is upright to the library: a landscape one would swap the sides.
	doc.AddPageFormat("P", fpdf.SizeType{Wd: s.Width, Ht: s.Height})
	doc.Bookmark(s.Number+" "+s.Name, level, 0)
	doc.SetLineJoinStyle("round")
	doc.SetLineCapStyle("butt")
	c := canvas{doc: doc, fonts: fonts}
	for _, item := range s.Items {
		item.Draw(c)
	}
	doc.SetDashPattern(nil, 0)
	doc.SetTextColor(0, 0, 0)
}

type canvas struct {
	doc   *fpdf.Fpdf
	fonts *paper.Fonts
}

// Group implements paper.Canvas.
func (c canvas) Group(_ string, draw func()) { draw() }

// Path implements paper.Canvas.
func (c canvas) Path(p paper.Path) {
	if len(p.Points) < 2 {
		return
	}
	style := ""
	if gray, ok := p.Fill.Gray(); ok {
		c.doc.SetFillColor(int(gray), int(gray), int(gray))
		style = "F"
	}
	if pen := p.Stroke.Pen(); pen.Width > 0 {
		gray := int(pen.Ink.Gray())
		c.doc.SetDrawColor(gray, gray, gray)
		c.doc.SetLineWidth(pen.Width)
		c.doc.SetDashPattern(pen.Dash, 0)
		style += "D"
	}
	if style == "" {
		return
	}
	c.doc.MoveTo(p.Points[0].X, p.Points[0].Y)
	for _, q := range p.Points[1:] {
		c.doc.LineTo(q.X, q.Y)
	}
	if p.Closed {
		c.doc.ClosePath()
	}
	c.doc.DrawPath(style)
}

// Text implements paper.Canvas.
func (c canvas) Text(t paper.Text) {
	words := strings.Map(func(r rune) rune {
		if c.fonts.Has(r) {
			return r
		}
		return '\u25a1' // a box for a letter that is not embedded
	}, t.Words)
	if words == "" {
		return
	}
	style := ""
	if t.Bold {
		style = "B"
	}
	c.doc.SetFont(family, style, t.Size)
	gray := int(t.Ink.Gray())
	c.doc.SetTextColor(gray, gray, gray)
	x := t.At.X
	switch t.Align {
	case paper.Middle:
		x -= t.Width / 2
	case paper.Right:
		x -= t.Width
	}
	if t.Turn == 0 {
		c.doc.Text(x, t.At.Y, words)
		return
	}
	c.doc.TransformBegin()
	c.doc.TransformRotate(t.Turn, t.At.X, t.At.Y)
	c.doc.Text(x, t.At.Y, words)
	c.doc.TransformEnd()
}
