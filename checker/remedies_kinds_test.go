package checker_test

import (
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/measure"
	"plumbrule/checker/mending"
	"plumbrule/checker/result"
)

// tried lists the changes that stand under the findings of a check.
func tried(d *result.Design, check string) []string {
	var list []string
	for _, f := range d.Findings {
		for _, r := range f.Remedies {
			if f.Check == check && f.Outcome == result.Outside {
				list = append(list, r.Text)
			}
		}
	}
	return list
}

// A joint of plies is moved over a post that has another on each side of it, and
// over no other: a stub past the end post rests on that alone.
func TestPlyJointIsMovedOverAnInnerPost(t *testing.T) {
	const frame = `deck: 1
site: {live_load: 40 psf, ground_snow_load: 25 psf}
lumber: {framing: {species: southern pine, grade: No. 2, treated: true, incised: false, wet_service: true}}
platforms:
  - mark: A
    support: ledger
    measured_to: frame
    outline: {along_house: 20 ft, out_from_house: 12 ft}
    ledger: {size: 2x10, lumber: framing}
    joists: {size: 2x10, lumber: framing, direction: out_from_house, layout: on_center, spacing: 16 in}
    beams: [{mark: B1, kind: dropped, size: 2x12, plies: 3, lumber: framing, from_house: 10 ft, posts_at: POSTS, ply_joints_at: JOINTS}]
    posts: {size: 6x6}
`
	for _, c := range []struct {
		posts, joints string
		want          []string // where joints are moved, in the order of the findings
	}{
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[10 ft 1 in]", []string{"13 ft"}},
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[9 ft 11 in]", []string{"7 ft"}},
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[18 ft 6 in]", []string{"13 ft"}}, // not to 19 ft, which is nearer
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[1 ft 6 in]", []string{"7 ft"}},   // not to 1 ft
		{"[19 ft, 13 ft, 7 ft, 1 ft]", "[1 ft 6 in]", []string{"7 ft"}},
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[7 ft, 8 ft]", []string{"13 ft"}}, // one lies over 7 ft already
		{"[1 ft, 7 ft, 13 ft, 19 ft]", "[4 ft, 7 ft, 13 ft]", nil},
		{"[300 mm, 2100 mm, 3900 mm, 5700 mm]", "[5400 mm]", []string{"3900 mm"}},
		{"[1 ft, 10 ft]", "[6 ft]", nil}, // there is no inner post
	} {
		text := strings.NewReplacer("POSTS", c.posts, "JOINTS", c.joints).Replace(frame)
		d := only(t, menderFor(t, "irc-2021"), "a.deck.yaml", text)
		if !slices.ContainsFunc(d.Findings, func(f result.Result) bool { return f.Check == "beams/ply-joint" && f.Outcome == result.Outside }) {
			t.Errorf("%s %s: nothing is outside", c.posts, c.joints)
		}
		var got []string
		for _, text := range tried(&d, "beams/ply-joint") {
			words, found := strings.CutPrefix(text, "joint of plies at ")
			if to, _, _ := strings.Cut(words, " instead of "); found {
				got = append(got, to)
			} else {
				t.Errorf("%s %s: %q is offered", c.posts, c.joints, text)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s %s: moved to %q, want %q", c.posts, c.joints, got, c.want)
		}
	}
}

// Whatever the opening is, no change of it is offered that mends the last gap
// and leaves the opening too wide, or the other way round.
func TestChangesOfAnOpeningAnswerAllFindingsOnIt(t *testing.T) {
	const guard = `deck: 1
platforms: [{mark: A, outline: {along_house: 12 ft, out_from_house: 10 ft}, edges: {front: {drop: 5 ft, guard: G1}}}]
guards: [{mark: G1, height: 36 in, infill: {kind: balusters, opening: OPENING, bottom_gap: 2 in, baluster_width: 1-1/4 in}, posts: {size: 4x4, max_spacing: SPACING}}]
`
	both, offered := 0, 0
	for _, opening := range []string{"4 in", "4-3/16 in", "4-1/4 in", "4-7/16 in", "4-1/2 in", "4-11/16 in", "100 mm", "101 mm", "102 mm", "112 mm"} {
		for _, spacing := range []string{"5 ft", "5 ft 6 in", "6 ft", "1800 mm"} {
			text := strings.NewReplacer("OPENING", opening, "SPACING", spacing).Replace(guard)
			d := only(t, menderFor(t, ""), "a.deck.yaml", text)
			wide, uneven := tried(&d, "guards/opening"), tried(&d, "guards/baluster-gap")
			outside := func(check string) bool {
				return slices.ContainsFunc(d.Findings, func(f result.Result) bool { return f.Check == check && f.Outcome == result.Outside })
			}
			if outside("guards/opening") && outside("guards/baluster-gap") {
				both++
				if changeOf(wide) != changeOf(uneven) {
					t.Errorf("%s, %s: one asks for %q, the other for %q", opening, spacing, wide, uneven)
				}
			}
			for i := range d.Findings {
				for j := range d.Findings[i].Remedies {
					offered++
					holds(t, "a.deck.yaml", text, "", &d, &d.Findings[i], &d.Findings[i].Remedies[j])
					if l := opened(t, d.Findings[i].Remedies[j].Changes); l >= 4*measure.Inch {
						t.Errorf("%s, %s: an opening of %s is offered", opening, spacing, l.Text(measure.Imperial))
					}
				}
			}
		}
	}
	if both < 5 || offered < 40 {
		t.Errorf("%d openings are outside by both checks, %d changes are offered", both, offered)
	}
}

// changeOf gives what a change is, without what it comes to.
func changeOf(texts []string) string {
	if len(texts) == 0 {
		return ""
	}
	change, _, _ := strings.Cut(texts[0], ":")
	return change
}

// opened is the opening that changes come to, 0 where they leave it.
func opened(t *testing.T, changes []result.Change) measure.Length {
	t.Helper()
	for _, c := range changes {
		if strings.HasSuffix(c.Pointer, "/infill/opening") {
			l, _, err := measure.ParseLength(c.To)
			if err != nil {
				t.Fatal(err)
			}
			return l
		}
	}
	return 0
}

// What kinds of change come to on designs that ask for them.
func TestKindsOfChange(t *testing.T) {
	const frame = `deck: 1
site: {live_load: 40 psf, ground_snow_load: 25 psf}
lumber: {framing: {species: southern pine, grade: GRADE, treated: true, incised: false, wet_service: true}}
platforms:
  - mark: A
    support: ledger
    measured_to: frame
    outline: {along_house: WIDE, out_from_house: 11 ft}
    ledger: {size: 2x10, lumber: framing}
    joists: {size: 2x10, lumber: framing, direction: out_from_house, layout: on_center, spacing: 16 in, start: left}
    beams: [{mark: B1, kind: dropped, size: 2x10, plies: 3, lumber: framing, from_house: 10 ft, posts_at: [1 ft, 6 ft, 11 ft]}]
    posts: {size: 6x6}
`
	stair := func(more string) string {
		return "deck: 1\nstairs: [{mark: ST1, width: 36 in, total_rise: 52 in, risers: 7, " + more + "}]\n"
	}
	in := func(grade, wide string) string {
		return strings.NewReplacer("GRADE", grade, "WIDE", wide).Replace(frame)
	}
	for _, c := range []struct{ name, text, check, want string }{
		{"a better grade", in("No. 3", "12 ft"), "joists/span", "framing grade No. 2 instead of No. 3"},
		{"equal bays", in("No. 2", "11 ft 1-1/2 in"), "layout/even-joists", "joists in equal bays of at most 16 in instead of 16 in from one side: the bays are equal"},
		{
			"closed risers", stair("riser_opening: 4-1/2 in, nosing: 1 in, tread_depth: 10 in"), "stairs/open-riser",
			"closed risers instead of openings of 4-1/2 in: risers are closed",
		},
		{"a narrower opening", stair("riser_opening: 4-1/2 in, nosing: 1 in, tread_depth: 10 in"), "stairs/open-riser", "stair riser opening 3-7/8 in instead of 4-1/2 in: inside by 1/8\""},
		{"a wider tread", stair("tread_depth: 9-1/2 in, nosing: 1 in"), "stairs/tread-depth", "tread depth 10 in instead of 9-1/2 in: at the limit"},
		{"a wider tread in millimetres", stair("tread_depth: 250 mm, nosing: 1 in"), "stairs/tread-depth", "tread depth 255 mm instead of 250 mm: inside by 0.0394\""},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := only(t, menderFor(t, ""), "a.deck.yaml", c.text)
			got := tried(&d, c.check)
			if !slices.Contains(got, c.want) {
				t.Errorf("offered: %q, want %q", got, c.want)
			}
			for i := range d.Findings {
				for j := range d.Findings[i].Remedies {
					holds(t, "a.deck.yaml", c.text, "", &d, &d.Findings[i], &d.Findings[i].Remedies[j])
				}
			}
		})
	}
}

// A check that can no longer compare anything has not been answered: a total
// rise is not made right by treads that end elsewhere.
func TestExemptionOfAnotherKindClearsNothing(t *testing.T) {
	in := readInput(t, "../fixtures/checks/stairs/total-rise/outside.deck.yaml")
	d := only(t, menderFor(t, "common-practice"), in.Name, string(in.Data))
	if got := tried(&d, "stairs/total-rise"); len(got) > 0 {
		t.Errorf("offered: %q", got)
	}
	if got := tried(&d, "stairs/comfort"); len(got) == 0 {
		t.Error("nothing is offered for the comfort of the stair, whose changes leave nothing to compare")
	}
}

// Every check of the program says which changes may mend it, if any, and every
// kind of change is one that some check names.
func TestChecksNameTheirChanges(t *testing.T) {
	checks, err := checker.Checks()
	if err != nil {
		t.Fatal(err)
	}
	named := map[mending.Kind]bool{}
	for _, check := range checks.Checks() {
		if slices.Equal(check.Tries, mending.Usual()) {
			t.Errorf("%s does not say which changes are tried", check.ID)
		}
		for _, kind := range check.Tries {
			named[kind] = true
		}
	}
	for _, d := range mending.Kinds() {
		if !named[d.Kind] {
			t.Errorf("no check has %s tried", d.Kind)
		}
	}
}
