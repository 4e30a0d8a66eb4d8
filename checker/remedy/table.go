package remedy

import "strings"

// moves gives the kinds of change that may mend a finding of a check, the one
// that costs least work first. It says where to look and in which direction;
// whether a change mends anything, the check says. A check that is not in here
// is one that no number of the drawing mends: a hot tub, soil, what was
// measured on site.
func moves(check string) []move {
	topic, _, _ := strings.Cut(check, "/")
	switch topic {
	case "stairs":
		return ofStairs(check)
	case "handrail", "guards":
		return ofRails(check)
	case "ledger", "footings":
		return ofSupports(check)
	case "joists", "beams", "posts", "decking", "engineering", "egress":
		return ofFrame(check)
	case "layout", "scope":
		return nil
	}
	// Of a check that a rule set brings nothing is known but the value it points at.
	return []move{flip, accept(""), toward("", "", with, half())}
}

func ofStairs(check string) []move {
	switch check {
	case "stairs/riser-height":
		return []move{risers(against)}
	case "stairs/tread-depth":
		return []move{treads(with)}
	case "stairs/comfort":
		return []move{treads(with), risers(against)}
	case "stairs/pitch":
		return []move{treads(against), risers(against)}
	case "stairs/throat":
		return []move{larger("stringers", "stringers"), treads(against), risers(with)}
	case "stairs/stringer-span", "stairs/stringer-size":
		return []move{larger("stringers", "stringers")}
	case "stairs/open-riser":
		return []move{toward("", "", with, finer()), choose("riser_opening", "", "closed")}
	case "stairs/nosing", "stairs/tread-overlap":
		return []move{toward("nosing", "", with, finer())}
	case "stairs/tread-thickness", "stairs/nosing-radius":
		return []move{toward("", "", with, least())}
	case "stairs/width", "stairs/landing", "stairs/landing-width", "stairs/landing-by-width", "stairs/landing-door":
		return []move{toward("", "", with, whole())}
	case "stairs/width-at-rails":
		return []move{toward("", "", with, half())}
	case "stairs/winders":
		return []move{toward("", "", with, fine())}
	case "stairs/landing-slope", "stairs/riser-variation":
		return []move{choose("slope_along", "", "2%", "1%", "0.5%", "0%"), choose("slope_out", "", "2%", "1%", "0.5%", "0%")}
	case "stairs/tread-count":
		return []move{limit("treads")}
	case "stairs/lighting":
		return []move{flip}
	case "stairs/stringer-spacing":
		return []move{count("stringers/count", "stringers"), toward("stringers/spacing", "stringer spacing", with, whole())}
	}
	return nil
}

func ofRails(check string) []move {
	switch check {
	case "handrail/height", "guards/height", "guards/stair-height":
		return []move{toward("", "", with, half())}
	case "handrail/clearance", "handrail/projection":
		return []move{toward("", "", with, fine())}
	case "handrail/finger-recess":
		return []move{toward("", "", with, least())}
	case "handrail/grip":
		return []move{toward("", "", with, finer()), roundRail}
	case "handrail/continuity":
		return []move{flip}
	case "handrail/required", "handrail/both-sides":
		return []move{count("handrail/sides", "sides with a handrail"), handrailed}
	case "guards/opening", "guards/stair-opening", "guards/triangle-opening":
		return []move{toward("", "", with, finer())}
	case "guards/baluster-gap":
		return []move{shrink("infill/opening", "", least())}
	case "guards/post-spacing":
		return []move{toward("", "", with, whole())}
	case "guards/post-fixing":
		return []move{flip, accept("", "hold-down to joist", "hold-down to blocking", "listed bracket")}
	case "guards/required":
		return []move{guarded}
	case "guards/stair-required":
		return []move{stairGuarded}
	}
	return nil
}

func ofSupports(check string) []move {
	switch check {
	case "footings/area", "footings/pressure":
		return []move{form("diameter"), form("side")}
	case "footings/thickness", "footings/depth", "footings/near-house":
		return []move{toward("", "", with, whole())}
	case "ledger/size":
		return []move{accept("ledger")}
	case "ledger/fastener-spacing":
		return []move{toward("", "fastener spacing", with, whole())}
	case "ledger/fastener-placement":
		return []move{flip, toward("", "", with, fine())}
	case "ledger/fastener-type":
		return []move{screwed, toward("", "", with, finer())}
	case "ledger/flashing":
		return []move{flip}
	case "ledger/drainage-gap":
		return []move{toward("", "", with, least())}
	case "ledger/cladding":
		return []move{flip}
	case "ledger/flashing-metal":
		return []move{accept("", "stainless steel", "copper", "vinyl")}
	case "ledger/lateral-devices":
		return []move{
			count("lateral_devices/count", "lateral devices"), choose("capacity", "capacity of lateral devices", "1500 lb"),
			toward("", "", with, whole()),
		}
	case "footings/soil":
		return []move{choose("soil", "soil below footings", "compacted fill")}
	}
	return nil
}

func ofFrame(check string) []move {
	joists := larger("joists", "joists", "rim_joist", "ledger", "outside_joist")
	spaced := closer("joists/spacing", "joists/max_spacing")
	switch check {
	case "joists/span":
		return []move{spaced, joists, fromHouse(with)}
	case "joists/guard-joists":
		return []move{spaced, joists}
	case "joists/midspan-blocking":
		return []move{flip}
	case "joists/cantilever":
		return []move{fromHouse(against), joists, spaced}
	case "joists/bearing":
		return []move{toward("", "", with, half())}
	case "beams/joint-bearing":
		return []move{toward("bearing_at_joint", "", with, half()), larger("posts", "posts")}
	case "joists/hangers", "joists/ties", "decking/frame-blocking":
		return []move{flip}
	case "joists/lateral-restraint":
		return []move{accept("")}
	case "decking/joist-spacing":
		return []move{spaced, choose("board_angle", "board angle", "0")}
	case "decking/gap":
		return []move{toward("gap", "gap between boards", with, least())}
	case "decking/last-row":
		return []move{gaps}
	case "decking/fasteners":
		return []move{count("", "fasteners per joist")}
	case "beams/span":
		return []move{post, larger("beam", "beam"), count("plies", "plies")}
	case "beams/cantilever":
		return []move{endPost}
	case "beams/depth":
		return []move{larger("beam", "beam")}
	case "beams/bearing":
		return []move{toward("bearing_length", "", with, half()), larger("posts", "posts")}
	case "beams/ply-joint":
		return []move{overPost}
	case "posts/height", "posts/size", "posts/joint-post":
		return []move{larger("posts", "posts")}
	case "posts/base":
		return []move{flip, standoff, toward("", "", with, whole())}
	case "posts/cap":
		return []move{accept(""), count("", ""), toward("", "", with, finer())}
	case "posts/bracing":
		return []move{choose("braces/directions", "", "both")}
	case "engineering/agreement":
		return []move{spaced, joists, larger("beam", "beam"), fromHouse(with), fromHouse(against)}
	case "egress/door-landing":
		return []move{toward("", "", with, whole())}
	}
	return nil
}

// shrink makes a length smaller step by step, whatever the limit says: for what
// comes out uneven, a hair may do.
func shrink(field, label string, by step) move {
	return func(g *ground) [][]rung { return [][]rung{g.climb(g.find(field), label, -1, by, nil)} }
}
