package engine_test

import (
	"strings"
	"testing"
)

// TestSchemaKeywordsAreHonoured shows for each keyword of the facts schema that
// the type checker acts on it, and that enumerations would be lost on it: the
// schema has none.
func TestSchemaKeywordsAreHonoured(t *testing.T) {
	tests := []struct{ name, fact, want string }{
		{"type of a whole number", `guard.opening.value.inches`, "undefined ref: guard.opening.value.inches"},
		{"type of a text", `upper(guard.mark.text)`, "undefined ref: guard.mark.text"},
		{"type of a flag", `guard.climbable.value.yes`, "undefined ref: guard.climbable.value.yes"},
		{"type of an argument", `upper(guard.opening.value)`, "invalid argument(s)"},
		{"properties", `guard.opning`, "there is no opning, the nearest is opening"},
		{"items", `guard.edges[0].name`, "undefined ref: guard.edges[0].name"},
		{"$ref", `guard.opening.valeu`, "there is no valeu, the nearest is value"},
		{"$ref inside items", `input.platforms[0].area.vlaue`, "there is no vlaue, the nearest is value"},
		{"additionalProperties", `input.pergolas`, "there is no pergolas"},
		{"nested object", `input.site.live_lode`, "there is no live_lode, the nearest is live_load"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := build(t, replace(openingFile, "not guard.opening", tt.fact), imperialSet)
			if err == nil {
				t.Fatal("loaded")
			}
			if !strings.Contains(err.Error(), tt.want) || !strings.Contains(err.Error(), "opening.rego:30:") {
				t.Errorf("error\n%v\ndoes not say\n%s in line 30", err, tt.want)
			}
		})
	}
	for _, right := range []string{`guard.opening.value > 0`, `upper(guard.mark) == "G1"`, `guard.climbable.value == false`, `guard.edges[0] == "left"`, `input.site.live_load.at[0] == ""`} {
		if _, err := build(t, replace(openingFile, "not guard.opening", right), imperialSet); err != nil {
			t.Errorf("%s is refused: %v", right, err)
		}
	}
}
