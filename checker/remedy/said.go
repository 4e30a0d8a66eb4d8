package remedy

import "strings"

// Says gives the words in which a change that mends a finding of a check may be
// told, those of values left out. None of them is a word of the design.
func Says(check string) []string {
	topic, _, _ := strings.Cut(check, "/")
	switch topic {
	case "stairs":
		return saidOfStairs()[check]
	case "handrail", "guards":
		return saidOfRails()[check]
	case "ledger", "footings":
		return saidOfSupports()[check]
	case "joists", "beams", "posts", "decking", "engineering", "egress", "layout", "scope", "lumber":
		return saidOfFrame()[check]
	}
	return nil
}

// filled puts values into the gaps of a text, written {}. The words of a set
// hold no braces.
func filled(text string, values []string) string {
	var out strings.Builder
	for i, piece := range strings.Split(text, "{}") {
		if i > 0 && i <= len(values) {
			out.WriteString(values[i-1])
		}
		out.WriteString(piece)
	}
	return out.String()
}

func saidOfStairs() map[string][]string {
	return map[string][]string{
		"stairs/comfort":          {"a handrail {} high, round, {}", "risers", "total run", "tread depth", "treads"},
		"stairs/landing":          {"landing bottom out"},
		"stairs/landing-by-width": {"landing bottom out"},
		"stairs/landing-door":     {"landing bottom clear of door"},
		"stairs/landing-slope":    {"landing bottom slope out"},
		"stairs/landing-width":    {"landing bottom along", "landing bottom out"},
		"stairs/lighting":         {"stair lighting"},
		"stairs/nosing":           {"stair nosing"},
		"stairs/nosing-radius":    {"stair nosing radius"},
		"stairs/open-riser":       {"stair riser opening"},
		"stairs/pitch":            {"a handrail {} high, round, {}", "risers", "total run", "tread depth", "treads"},
		"stairs/riser-height":     {"a handrail {} high, round, {}", "risers", "total run", "tread depth", "treads"},
		"stairs/riser-variation":  {"landing bottom slope along"},
		"stairs/stringer-size":    {"stringers"},
		"stairs/stringer-spacing": {"stringer spacing", "stringers"},
		"stairs/stringer-span":    {"stringers", "a support under the stringers {} from their top"},
		"stairs/throat":           {"a handrail {} high, round, {}", "risers", "stringers", "total run", "tread depth", "treads"},
		"stairs/tread-count":      {"treads"},
		"stairs/tread-depth":      {"total run", "tread depth"},
		"stairs/tread-overlap":    {"stair nosing"},
		"stairs/tread-thickness":  {"tread thickness"},
		"stairs/width":            {"stair width"},
		"stairs/width-at-rails":   {"stair clear width at handrail"},
		"stairs/winders":          {"winders narrowest tread depth", "winders tread depth at walkline"},
		"stairs/risers-in-flight": {"risers"},
		"stairs/slip-class":       {"tread slip class"},
		"stairs/tread-slope":      {"tread slope"},
	}
}

func saidOfRails() map[string][]string {
	return map[string][]string{
		"guards/baluster-gap":     {"infill opening"},
		"guards/height":           {"guard height"},
		"guards/opening":          {"infill opening"},
		"guards/post-fixing":      {"posts fixing", "posts notched"},
		"guards/post-spacing":     {"posts max spacing"},
		"guards/required":         {"{} edge with guard {}", newGuardSaid},
		"guards/stair-height":     {"guard height"},
		"guards/stair-opening":    {"guard opening"},
		"guards/stair-required":   {"a guard on the stair {} high, with openings of {}"},
		"guards/triangle-opening": {"guard triangle opening"},
		"handrail/both-sides":     {"a handrail {} high, round, {}", "sides with a handrail"},
		"handrail/clearance":      {"handrail clearance"},
		"handrail/continuity":     {"handrail continuous", "handrail returns"},
		"handrail/finger-recess":  {"finger recess depth"},
		"handrail/grip":           {"a round handrail of {} instead of a {}"},
		"handrail/height":         {"handrail height"},
		"handrail/projection":     {"handrail projection"},
		"handrail/required":       {"a handrail {} high, round, {}", "sides with a handrail"},
		"guards/climbable":        {"infill"},
		"guards/load":             {"guard listed load"},
	}
}

func saidOfSupports() map[string][]string {
	return map[string][]string{
		"footings/area":             {"footing diameter", "footing side"},
		"footings/depth":            {"footings depth"},
		"footings/near-house":       {"footings depth"},
		"footings/pressure":         {"footing diameter", "footing side"},
		"footings/soil":             {"soil below footings"},
		"footings/thickness":        {"footings thickness"},
		"ledger/cladding":           {"house cladding removed at ledger"},
		"ledger/drainage-gap":       {"ledger gap to house"},
		"ledger/fastener-placement": {"fasteners edge distance top"},
		"ledger/fastener-spacing":   {"fastener spacing"},
		"ledger/flashing":           {"flashing present"},
		"ledger/flashing-metal":     {"flashing material"},
		"ledger/lateral-devices":    {"capacity of lateral devices", "lateral devices"},
		"ledger/size":               {"ledger"},
		"ledger/fastener-type":      {"fasteners type"},
	}
}

func saidOfFrame() map[string][]string {
	return map[string][]string{
		"beams/bearing":            {"beam bearing length", "posts"},
		"beams/cantilever":         {"end post at"},
		"beams/depth":              {"beam"},
		"beams/joint-bearing":      {"posts"},
		"beams/ply-joint":          {"joint of plies at"},
		"beams/span":               {"beam", "plies", "posts spaced evenly, at", "with one more post, posts at"},
		"decking/fasteners":        {"fasteners per joist"},
		"decking/frame-blocking":   {"picture frame blocking"},
		"decking/gap":              {"gap between boards"},
		"decking/joist-spacing":    {"board angle", "joist spacing"},
		"egress/door-landing":      {"opening landing depth"},
		"engineering/agreement":    {"beam", "beam from house", "joist spacing", "joists", "ledger", "outside joist", "rim joist", "a support under the stringers {} from their top"},
		"joists/bearing":           {"joists bearing at beams"},
		"joists/cantilever":        {"beam from house", "joist spacing", "joists", "ledger", "outside joist", "rim joist"},
		"joists/guard-joists":      {"joist spacing", "joists", "ledger", "outside joist", "rim joist"},
		"joists/hangers":           {"hangers at ledger"},
		"joists/lateral-restraint": {"lateral restraint at beams"},
		"joists/midspan-blocking":  {"joists blocking", "a row of blocking at {}"},
		"joists/span":              {"beam from house", "joist spacing", "joists", "ledger", "outside joist", "rim joist"},
		"joists/ties":              {"joists beam ties"},
		"posts/base":               {"post bases that stand off and hold down instead of {}"},
		"posts/bracing":            {"braces directions"},
		"posts/cap":                {"cap kind"},
		"posts/height":             {"posts"},
		"posts/joint-post":         {"posts"},
		"posts/size":               {"posts"},
		"beams/support":            {"posts near both ends, at"},
		"layout/even-joists":       {"joist spacing", "joists in equal bays of at most {} instead of {} from one side"},
		"joists/skewed-hangers":    {"skewed hangers at the edge {}"},
		"lumber/treatment":         {"framing treated"},
		"scope/live-load":          {"site live load"},
	}
}
