package facts_test

import "testing"

func TestGreatestHeight(t *testing.T) {
	for _, c := range []struct{ name, ground, height, at string }{
		{"as stated", "surface_above_grade: 5 ft", "5 ft", "/platforms/0/surface_above_grade"},
		{"as stated, the drop is alike", "surface_above_grade: 5 ft, edges: {front: {drop: 60 in}}", "5 ft", "/platforms/0/surface_above_grade"},
		{"the greater drop of two", "surface_above_grade: 5 ft, edges: {left: {drop: 61 in}, front: {drop: 62 in}, right: {drop: 59 in}}", "62 in", "/platforms/0/edges/front/drop"},
		{"drops past the edge are none", "surface_above_grade: 1500 mm, edges: {front: {drop: 1499 mm, drop_within_36_in: 2 m, drop_within_1200_mm: 3 m}}", "1500 mm", "/platforms/0/surface_above_grade"},
		{"a point", "surface_above_grade: 5 ft, grade_at: [{at: [1 ft, 0 ft], below_surface: 5 ft}, {at: [1 ft, 8 ft], below_surface: 61 in}]", "61 in", "/platforms/0/grade_at/1/below_surface"},
		{"a post", "surface_above_grade: 5 ft, posts: {each: [{mark: P1, ground_below_surface: 63 in}]}", "63 in", "/platforms/0/posts/each/0/ground_below_surface"},
		{"not stated", "edges: {front: {drop: 4 m}}", "4 m", "/platforms/0/edges/front/drop"},
		{"nothing shown", "edges: {front: {drop_within_36_in: 2 m}}", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := derive(t, "platforms:\n  - {outline: {along_house: 12 ft, out_from_house: 8 ft}, "+c.ground+"}\n").Platforms[0]
			want(t, "height", p.GreatestHeight, c.height)
			if p.GreatestHeight != nil && (len(p.GreatestHeight.At) != 1 || p.GreatestHeight.At[0] != c.at) {
				t.Errorf("it stands at %v, want %s", p.GreatestHeight.At, c.at)
			}
		})
	}
}
