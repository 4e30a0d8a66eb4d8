package reporttest

import (
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// imperial has all outcomes and classes.
func imperial(t testing.TB) result.Design {
	s := open(t, "moewenweg.deck.yaml", "jobs/möwenweg.deck.yaml")
	s.design.Title, s.design.Revision, s.design.System = "Möwenweg rear deck", "B", measure.Imperial
	s.design.Sets = []string{"irc-2021", "common-practice"}
	s.design.Sheets, s.design.ReviewedAgainst = "S1 to S3, S10", "drawings of the contract"
	stairs(s)
	frame(s)
	gaps(s)
	return s.done()
}

// stairs adds one check by two sets, values that are words, a waiver.
func stairs(s *sheet) {
	riser := result.Result{
		Check: "stairs/riser-height", Title: "Riser height", Set: "irc-2021", Clause: "R311.7.5.1", Status: "recalled",
		Outcome: result.Outside, Consequence: result.LifeSafety, Mark: "ST1", See: "S3",
		At:   []string{"/stairs/0/risers", "/stairs/0/total_rise", "/stairs/0/measured_risers/6", "/stairs/0"},
		Have: inches(8, `8"`), Limit: limit(result.AtMost, inches(7.75, `7-3/4"`)), Margin: inches(-0.25, `-1/4"`),
		Message:     `riser height is 8", the limit is 7-3/4"`,
		Why:         "People fall where a step is higher than the foot expects.",
		Mend:        []string{"more risers: each becomes lower", "a raised landing at the foot, so that there is less to climb"},
		Remedies:    []result.Remedy{s.remedy(`8 risers instead of 7: measured 7", inside by 3/4"`, "/stairs/0/risers", "8")},
		Notes:       []string{"this figure is recalled, not read in print"},
		Fingerprint: "5d0c6a91e2f4",
	}
	riser.Remedies[0].Clears = []result.Cleared{
		{Check: riser.Check, Title: riser.Title, Set: riser.Set, At: riser.At[0], Mark: riser.Mark, Fingerprint: riser.Fingerprint},
		{Check: riser.Check, Title: riser.Title, Set: "common-practice", At: riser.At[0], Mark: riser.Mark, Fingerprint: riser.Fingerprint},
	}
	s.add(riser)

	grip := result.Result{
		Check: "handrail/grip", Title: "Handrail grip", Set: "irc-2021", Clause: "R311.7.8.5", Status: "published",
		Source: "an invented town's amendments, 2022 printing", Outcome: result.Outside, Consequence: result.LifeSafety, Mark: "ST1", See: "S3",
		At:   []string{"/stairs/0/handrail/profile/type"},
		Have: words("flat board"), Limit: limit(result.OneOf, words("round, shaped")),
		Amended:     "amended by an invented town, Ordinance 7; replaces round (irc-2018 R311.7.8.3)",
		Message:     "handrail profile is a flat board, a hand cannot close round it",
		Fingerprint: "0b77c3d15a08",
	}
	s.add(grip)

	// The second set reads the same place, but is not next to the first.
	riser.Set, riser.Clause, riser.Status, riser.Notes, riser.Remedies = "common-practice", "", "common practice", nil, nil
	riser.Limit, riser.Margin = limit(result.AtMost, inches(7.5, `7-1/2"`)), inches(-0.5, `-1/2"`)
	riser.Message = `riser height is 8", the limit is 7-1/2"`
	s.add(riser)

	s.add(result.Result{
		Check: "stairs/tread-depth", Title: "Tread depth", Set: "irc-2021", Clause: "R311.7.5.2", Status: "published",
		Outcome: result.Within, Consequence: result.LifeSafety, Mark: "ST1", See: "S3", At: []string{"/stairs/0/tread_depth"},
		Have: inches(10.25, `10-1/4"`), Limit: limit(result.AtLeast, inches(10, `10"`)), Margin: inches(0.25, `1/4"`),
	})
	s.add(result.Result{
		Check: "stairs/width", Title: "Stair width", Set: "irc-2021", Clause: "R311.7.1", Status: "published",
		Outcome: result.Within, Consequence: result.LifeSafety, Mark: "ST1", See: "S3", At: []string{"/stairs/0/width"},
		Have: inches(36, `36"`), Limit: limit(result.AtLeast, inches(36, `36"`)), Margin: inches(0, `0"`),
	})
	s.add(result.Result{
		Check: "guards/height", Title: "Guard height", Set: "irc-2021", Clause: "R312.1.2", Status: "published",
		Outcome: result.Excused, Consequence: result.LifeSafety, Mark: "欄干G1", See: "2/S2", At: []string{"/guards/0/height"},
		Have: inches(34, `34"`), Limit: limit(result.AtLeast, inches(36, `36"`)), Margin: inches(-2, `-2"`),
		Message:     `guard height is 34", the limit is 36"`,
		Reason:      "waived until 2027-01-31 by the invented plan reviewer, letter 14 of the job file: the guard is listed, and was there before",
		Fingerprint: "7ac1f09b3e55",
		Waiver: &result.Waiver{
			By: "the invented plan reviewer", Until: "2027-01-31", Document: "letter 14 of the job file",
			Reason: "the guard is listed, and was there before",
		},
	})
	s.add(result.Result{
		Check: "guards/opening", Title: "Guard opening", Set: "irc-2021", Clause: "R312.1.3", Status: "published",
		Outcome: result.Within, Consequence: result.LifeSafety, Mark: "欄干G1", See: "2/S2", At: []string{"/guards/0/infill/opening"},
		Have: inches(3.875, `3-7/8"`), Limit: limit(result.LessThan, inches(4, `4"`)), Margin: inches(0.125, `1/8"`),
	})
}

// frame adds the lighter classes and marks in a long line.
func frame(s *sheet) {
	s.add(result.Result{
		Check: "beams/ply-joint", Title: "Ply joint", Set: "irc-2021", Clause: "Table R507.5(1)", Status: "published",
		Outcome: result.Outside, Consequence: result.Structure, Mark: "梁B1", See: "sheet S10 detail 3",
		At:   []string{"/platforms/0/beams/0/ply_joints_at/0", "/platforms/0/beams/0/posts_at", "/platforms/0/beams/0"},
		Have: inches(36, `3'-0"`), Limit: limit(result.AtMost, inches(0, `0"`)), Margin: inches(-36, `-3'-0"`),
		Message:     `ply joint at 10'-0" of beam 梁B1 is 3'-0" from the nearest post`,
		Mend:        []string{"joint over a post"},
		Notes:       []string{"row southern pine, 2-2x10", "a joint off a post halves what the beam carries there"},
		Fingerprint: "c2e98804d7aa",
	})
	s.add(result.Result{
		Check: "joists/bearing", Title: "Joist bearing", Set: "common-practice", Status: "common practice",
		Outcome: result.Outside, Consequence: result.Durability, Mark: "A", See: "S1", At: []string{"/platforms/0/joists"},
		Have: words("no"), Limit: limit(result.Exactly, words("yes")),
		Message:     "joist tops of platform A have no tape",
		Fingerprint: "98d6f2b0c3e1",
	})
	s.add(result.Result{
		Check: "decking/gap", Title: "Decking gap", Set: "common-practice", Status: "common practice",
		Outcome: result.Outside, Consequence: result.Workmanship, Mark: "A", See: "S1", At: []string{"/platforms/0/decking/gap"},
		Have: inches(0.5, `1/2"`), Limit: limit(result.LessThan, inches(0.5, `1/2"`)), Margin: inches(0, `0"`),
		Message:     `gap between boards is 1/2", the limit is less than 1/2"`,
		Mend:        []string{"boards set closer"},
		Fingerprint: "41f3a7d9b60c",
	})
	s.add(result.Result{
		Check: "joists/span", Title: "Joist span", Set: "irc-2021", Clause: "Table R507.6", Status: "recalled",
		Outcome: result.Within, Consequence: result.Structure, Mark: "A", See: "S1", At: []string{"/platforms/0/joists"},
		Have: inches(138.0625, `11'-6 1/16"`), Limit: limit(result.AtMost, inches(168, `14'-0"`)), Margin: inches(29.9375, `29-15/16"`),
		Notes: []string{"row southern pine, 2x10, 16 in"},
	})
	s.add(result.Result{
		Check: "joists/span", Title: "Joist span", Set: "common-practice", Status: "common practice",
		Outcome: result.Within, Consequence: result.Structure, Mark: "A", See: "S1", At: []string{"/platforms/0/joists"},
		Have: inches(138.0625, `11'-6 1/16"`), Limit: limit(result.AtMost, inches(144, `12'-0"`)), Margin: inches(5.9375, `5-15/16"`),
	})
	s.add(result.Result{
		Check: "joists/cantilever", Title: "Joist cantilever", Set: "irc-2021", Status: "published",
		Outcome: result.DoesNotApply, Consequence: result.Structure, Mark: "A", See: "S1", At: []string{"/platforms/0/joists"},
		Reason: "no joist runs past its last support",
	})
}

// gaps adds what is not shown and what could not be checked.
func gaps(s *sheet) {
	missing := func(check, title, set, clause, pointer, mark, see, needs, message, fingerprint string, class result.Consequence) {
		s.add(result.Result{
			Check: check, Title: title, Set: set, Clause: clause, Status: "published", Outcome: result.NotShown, Consequence: class,
			At: []string{pointer}, Mark: mark, See: see, Needs: needs, Message: message, Fingerprint: fingerprint,
		})
	}
	missing("beams/bearing", "Beam bearing", "irc-2021", "R507.5.1", "/platforms/0/beams/0", "梁B1", "sheet S10 detail 3",
		"platforms[].beams[].bearing_length", "beam 梁B1: bearing length is not shown", "aa10", result.Structure)
	missing("guards/post-fixing", "Guard post fixing", "irc-2021", "R507.8", "/guards/0/posts", "欄干G1", "2/S2",
		"guards[].posts.fixing", "guard 欄干G1: fixing of the posts is not shown", "aa11", result.LifeSafety)
	missing("footings/depth", "Footing depth", "irc-2021", "R507.3.2", "/platforms/0/footings", "A", "S1",
		"platforms[].footings.depth", "footings of platform A: depth is not shown", "aa12", result.Structure)
	missing("guards/load", "Guard load", "common-practice", "", "/guards/0/posts", "欄干G1", "2/S2",
		"guards[].posts.fixing", "guard 欄干G1: fixing of the posts is not shown", "aa13", result.LifeSafety)
	missing("footings/area", "Footing area", "irc-2021", "Table R507.3.1", "", "", "",
		"site.soil_bearing", "soil bearing", "aa14", result.Structure)

	s.add(result.Result{
		Check: "layout/right-angle", Title: "Right angle", Set: "common-practice", Outcome: result.CouldNotRun, Consequence: result.Workmanship,
		Reason: "a town's own check asked for more time than it may have", Fingerprint: "bb20",
	})
}
