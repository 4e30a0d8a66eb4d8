package checker_test

import (
	"fmt"
	"math"
	"testing"

	"plumbrule/checker/result"
)

// stairRow is a row of a published table of stairs, in millimeters; what a
// table does not limit is zero.
type stairRow struct {
	set, table, use      string
	riserMin, riserMax   float64
	treadMin, treadMax   float64
	pitch                float64 // degrees
	sumMin, sumMax       float64 // two risers and a tread
	width, headroom      float64
	risersMin, risersMax int
}

// stairTables are the rows as the sources print them, read apart from the sets.
func stairTables() []stairRow {
	return []stairRow{
		{set: "canada-nbc-2020", table: "NBC Part 9, private stairs from 2015 on", riserMin: 125, riserMax: 200, treadMin: 255, treadMax: 355},
		{set: "ca-on", table: "OBC 9.8.4, private stairs from January 2022 on", riserMin: 125, riserMax: 200, treadMin: 255, treadMax: 355},
		{set: "england-adk-2013", table: "Approved Document K 2013 Table 1.1, private stair", riserMin: 150, riserMax: 220, treadMin: 220, treadMax: 300, pitch: 42, sumMin: 550, sumMax: 700},
		{set: "australia-ncc-2022", table: "NCC Table D3D14, private stair", riserMin: 115, riserMax: 190, treadMin: 240, treadMax: 355, sumMin: 550, sumMax: 700, risersMax: 18},
		{set: "new-zealand", table: "D1AS1 Table 6, main private stairway", use: "main", riserMax: 190, treadMin: 280, pitch: 37},
		{set: "new-zealand", table: "D1AS1 Table 6, secondary private stairway", use: "secondary", riserMax: 200, treadMin: 250, pitch: 41},
		{set: "new-zealand", table: "D1AS1 Table 6, service stairway", use: "service", riserMax: 220, treadMin: 220, pitch: 47},
		{set: "new-zealand", table: "D1AS1 Table 6, accessible stairway", use: "accessible", riserMax: 180, treadMin: 310, pitch: 32},
		{
			set: "germany", table: "DIN 18065, dwellings of up to two units", riserMin: 140, riserMax: 200, treadMin: 230, treadMax: 370,
			sumMin: 590, sumMax: 650, width: 800, headroom: 2000, risersMax: 18,
		},
	}
}

// hair is the least that the tests tell apart, in millimeters.
const hair = 0.01

// abroad is a stair as it is tried at the corners of a row.
type abroad struct {
	use                           string
	riser, tread, width, headroom float64
	risers                        int
}

func (a abroad) yaml() []byte {
	use := ""
	if a.use != "" {
		use = "use: " + a.use + ", "
	}
	return fmt.Appendf(nil, `deck: 1
stairs:
  - {mark: ST1, %srisers: %d, total_rise: %.2f mm, tread_depth: %.2f mm, width: %.2f mm, headroom: %.2f mm}
`, use, a.risers, a.riser*float64(a.risers), a.tread, a.width, a.headroom)
}

// TestPublishedStairTables builds a stair at every corner of every row: there
// it is not outside, and a hair past it is.
func TestPublishedStairTables(t *testing.T) {
	tried := 0
	for _, row := range stairTables() {
		t.Run(row.set+"/"+row.table, func(t *testing.T) {
			try := func(check string, at, past abroad) {
				t.Helper()
				tried++
				for stair, want := range map[abroad]bool{at: false, past: true} {
					list := outcomes(t, row.set, check, row.table+".deck.yaml", stair.yaml())
					if has(list, result.Outside) != want || !want && !has(list, result.Within) {
						t.Errorf("%s: %s: outside is not %t", check, stair.yaml(), want)
					}
				}
			}
			row.corners(try)
		})
	}
	if tried < 40 {
		t.Errorf("only %d corners were tried", tried)
	}
}

// corners gives for every figure of the row a stair at it and one past it.
func (row *stairRow) corners(try func(check string, at, past abroad)) {
	plain := abroad{use: row.use, riser: 170, tread: 290, width: 1000, headroom: 2100, risers: 4}
	each := func(check string, limit, step float64, set func(*abroad, float64)) {
		if limit == 0 {
			return
		}
		at, past := plain, plain
		set(&at, limit)
		set(&past, limit+step)
		try(check, at, past)
	}
	riser := func(a *abroad, v float64) { a.riser = v }
	tread := func(a *abroad, v float64) { a.tread = v }
	each("stairs/riser-height", row.riserMax, hair, riser)
	each("stairs/riser-height", row.riserMin, -hair, riser)
	each("stairs/tread-depth", row.treadMin, -hair, tread)
	each("stairs/tread-depth", row.treadMax, hair, tread)
	sum := func(a *abroad, v float64) { a.tread = v - 2*a.riser }
	each("stairs/comfort", row.sumMin, -hair, sum)
	each("stairs/comfort", row.sumMax, hair, sum)
	each("stairs/width", row.width, -hair, func(a *abroad, v float64) { a.width = v })
	each("stairs/headroom", row.headroom, -hair, func(a *abroad, v float64) { a.headroom = v })
	risers := func(a *abroad, v float64) { a.risers = int(v) }
	each("stairs/risers-in-flight", float64(row.risersMax), 1, risers)
	each("stairs/risers-in-flight", float64(row.risersMin), -1, risers)
	// A riser at the limit of the pitch is no whole hundredth: the last one under
	// it is inside, the next one is not.
	under := math.Floor(plain.tread*math.Tan(row.pitch*math.Pi/180)/hair) * hair
	each("stairs/pitch", under, hair, riser)
}
