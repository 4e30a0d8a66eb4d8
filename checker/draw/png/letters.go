package png

import (
	"math"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/image/vector"

	"image"
	"image/draw"

	"plumbrule/checker/draw/paper"
)

// outlineSize is the size at which outlines of letters are taken from the font.
// They are scaled and turned afterwards.
const outlineSize = 1000

// Text implements paper.Canvas.
func (c *canvas) Text(t paper.Text) {
	face := c.regular
	if t.Bold {
		face = c.bold
	}
	size := t.Size * c.scale / outlineSize
	along := 0.0
	switch t.Align {
	case paper.Middle:
		along = -t.Width / 2 * c.scale
	case paper.Right:
		along = -t.Width * c.scale
	}
	sin, cos := math.Sincos(t.Turn * math.Pi / 180)
	for _, r := range t.Words {
		i, err := face.GlyphIndex(&c.buffer, r)
		if err != nil {
			i = 0
		}
		advance := float64(outlineSize)
		if i != 0 {
			if a, err := face.GlyphAdvance(&c.buffer, i, fixed.I(outlineSize), font.HintingNone); err == nil {
				advance = float64(a) / 64
			}
		}
		start := along
		c.letter(face, i, t.Ink, func(p fixed.Point26_6) (float32, float32) {
			u, v := start+float64(p.X)/64*size, float64(p.Y)/64*size
			return float32(t.At.X*c.scale + u*cos + v*sin), float32(t.At.Y*c.scale - u*sin + v*cos)
		})
		along += advance * size
	}
}

// letter paints one letter; at turns a point of its outline into dots.
func (c *canvas) letter(face *sfnt.Font, i sfnt.GlyphIndex, ink paper.Ink, at func(fixed.Point26_6) (x, y float32)) {
	segments, err := face.LoadGlyph(&c.buffer, i, fixed.I(outlineSize), nil)
	if err != nil || len(segments) == 0 {
		return
	}
	low, high := [2]float32{math.MaxFloat32, math.MaxFloat32}, [2]float32{-math.MaxFloat32, -math.MaxFloat32}
	for _, s := range segments {
		for _, p := range s.Args {
			x, y := at(p)
			low, high = [2]float32{min(low[0], x), min(low[1], y)}, [2]float32{max(high[0], x), max(high[1], y)}
		}
	}
	// Args beyond those of a segment's kind are zero points on the base line at
	// the letter's start, which widens the box by little.
	left, top := int(low[0])-2, int(low[1])-2
	r := vector.NewRasterizer(int(high[0])+3-left, int(high[1])+3-top)
	shift := func(p fixed.Point26_6) (float32, float32) {
		x, y := at(p)
		return x - float32(left), y - float32(top)
	}
	for _, s := range segments {
		x0, y0 := shift(s.Args[0])
		x1, y1 := shift(s.Args[1])
		x2, y2 := shift(s.Args[2])
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			r.MoveTo(x0, y0)
		case sfnt.SegmentOpLineTo:
			r.LineTo(x0, y0)
		case sfnt.SegmentOpQuadTo:
			r.QuadTo(x0, y0, x1, y1)
		case sfnt.SegmentOpCubeTo:
			r.CubeTo(x0, y0, x1, y1, x2, y2)
		}
	}
	r.DrawOp = draw.Over
	size := r.Bounds().Size()
	r.Draw(c.img, image.Rect(left, top, left+size.X, top+size.Y), shade(ink.Gray()), image.Point{})
}
