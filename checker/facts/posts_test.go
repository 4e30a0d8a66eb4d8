package facts_test

import (
	"slices"
	"testing"
)

// A post that is described by itself is of the lumber of all where it names
// none of its own.
func TestLumberOfAPostByItself(t *testing.T) {
	const whole, graded = "{size: 4x4, lumber: whole, each: [", "{size: 4x4, lumber: ungraded, each: ["
	cases := map[string]struct {
		posts, species string
		missing        []string
	}{
		"of all":                  {whole + "{beam: B1, at: 1 ft}]}", "hem-fir", nil},
		"its own":                 {whole + "{beam: B1, at: 1 ft, lumber: other}]}", "redwood", nil},
		"its own, not graded":     {whole + "{beam: B1, at: 1 ft, lumber: ungraded}]}", "cypress", []string{"lumber.<ungraded>.grade"}},
		"of all, not graded":      {graded + "{beam: B1, at: 1 ft}]}", "cypress", []string{"lumber.<ungraded>.grade"}},
		"its own, all not graded": {graded + "{beam: B1, at: 1 ft, lumber: other}]}", "redwood", nil},
		"none":                    {"{size: 4x4, each: [{beam: B1, at: 1 ft}]}", "", []string{"platforms[].posts.lumber"}},
		"none of all":             {"{size: 4x4, each: [{beam: B1, at: 1 ft, lumber: other}]}", "redwood", nil},
		"not described":           {"", "", []string{"platforms[].posts.lumber"}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			design := "lumber: {whole: {species: hem-fir, grade: No. 2}, other: {species: redwood, grade: No. 2}, ungraded: {species: cypress}}\n" +
				frame(twelveOut, onCenter16, dropped("B1", "from_house: 10 ft, posts_at: [1 ft, 9 ft]"))
			if c.posts != "" {
				design += "    posts: " + c.posts + "\n"
			}
			f := derive(t, design)
			if len(f.Posts) != 2 {
				t.Fatalf("%d posts", len(f.Posts))
			}
			got, species := f.Posts[0].Lumber, ""
			if got.Species != nil {
				species = got.Species.Value
			}
			if species != c.species || !slices.Equal(got.Missing, c.missing) {
				t.Errorf("species %q, missing %q, want %q, %q", species, got.Missing, c.species, c.missing)
			}
		})
	}
}
