package pdf

import "plumbrule/checker/pdfpages"

// Measures of the page in points.
const (
	margin   = 40
	footRoom = 12
	footLine = 15  // above the edge; below the border of a drawing
	tint     = 235 // gray behind headings, 255 being white
	pad      = 3   // round what stands in a box or a cell
)

// The styles of the packet.
var (
	kindStyle    = pdfpages.Style{Face: "B", Size: 8, Leading: 11}
	titleStyle   = pdfpages.Style{Face: "B", Size: 19, Leading: 23}
	sectionStyle = pdfpages.Style{Face: "B", Size: 12.5, Leading: 16}
	partStyle    = pdfpages.Style{Face: "B", Size: 10, Leading: 13}
	bodyStyle    = pdfpages.Style{Size: 8.6, Leading: 11.4}
	strongStyle  = pdfpages.Style{Face: "B", Size: 8.6, Leading: 11.4}
	stampStyle   = pdfpages.Style{Face: "B", Size: 11.5, Leading: 15}
	smallStyle   = pdfpages.Style{Size: 7, Leading: 9}
	rowStyle     = pdfpages.Style{Size: 7.3, Leading: 9}
	rowHeadStyle = pdfpages.Style{Face: "B", Size: 7.3, Leading: 9}
	moreStyle    = pdfpages.Style{Size: 6.6, Leading: 9}
	headStyle    = pdfpages.Style{Face: "B", Size: 7, Leading: 9}
	footStyle    = pdfpages.Style{Size: 7, Leading: 9}
)
