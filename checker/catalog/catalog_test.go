package catalog_test

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
)

const defaults = `# METADATA
# title: Shapes
# scope: subpackages
# schemas:
#   - input: schema.facts
#   - data.figures: schema.figures
package checks
`

const rise = `# METADATA
# title: Rise of a step
# description: The greatest step of each ladder against the limit.
# custom:
#   id: ladders/step-rise
#   aliases: [ladders/rise]
#   consequence: workmanship
#   why: "Feet expect even steps: a high one trips."
#   applies_when: a ladder is described
#   figures:
#     max: {type: length, relation: at most, about: greatest step}
#     few: {type: count, unit: [step, steps], relation: at least, about: least steps, optional: true}
#   values: {n: count}
#   messages:
#     outside: "step {n} rises {have}, the limit is {limit}"
#   exempt: {rope: "it is a rope ladder of {n} rungs"}
#   mend: ["more steps: each becomes lower"]
package checks.ladders.step_rise

import data.figures.ladders.step_rise as figures

applies if count(input.flights) > 0

readings contains {"at": f.at, "figure": "max", "have": 1, "limit": figures.max, "outside": true, "n": f.n} if {
	some f in input.flights
}

exempt contains {"at": f.at, "because": "rope", "n": 1} if some f in input.flights

_spare := 1
`

func load(t *testing.T, files map[string]string) (*catalog.Catalog, error) {
	t.Helper()
	tree := fstest.MapFS{"checks/defaults.rego": {Data: []byte(defaults)}}
	for name, text := range files {
		tree[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return catalog.Load(tree)
}

const riseFile = "checks/ladders/step_rise/step_rise.rego"

func TestLoadReadsMetadata(t *testing.T) {
	c, err := load(t, map[string]string{riseFile: rise, "checks/ladders/step_rise/step_rise_test.rego": "this is no rego"})
	if err != nil {
		t.Fatal(err)
	}
	check := c.Find("ladders/rise")
	if check == nil {
		t.Fatal("the alias finds nothing")
	}
	if check != c.Find("ladders/step-rise") || check.ID != "ladders/step-rise" {
		t.Errorf("alias gives %q", check.ID)
	}
	want := []catalog.Figure{
		{Name: "max", Kind: catalog.Length, Relation: result.AtMost, About: "greatest step"},
		{Name: "few", Kind: catalog.Count, Relation: result.AtLeast, About: "least steps", Unit: catalog.Unit{One: "step", Many: "steps"}, Optional: true},
	}
	if diff := cmp.Diff(want, check.Figures); diff != "" {
		t.Errorf("figures:\n%s", diff)
	}
	if check.Why != "Feet expect even steps: a high one trips." || check.Consequence != result.Workmanship || check.Topic != "ladders" {
		t.Errorf("why, consequence or topic differ: %+v", check)
	}
	if got := check.Messages["outside"].String(); got != "step {n} rises {have}, the limit is {limit}" {
		t.Errorf("message %q", got)
	}
	if !slices.Equal(check.Rules, []string{"applies", "readings", "exempt"}) {
		t.Errorf("rules %v", check.Rules)
	}
	if check.Figure("few") == nil || check.Figure("many") != nil {
		t.Error("figures are not found by name")
	}
	if got := check.Ref("readings").String(); got != "data.checks.ladders.step_rise.readings" {
		t.Errorf("ref %s", got)
	}
}

// TestLoadRefuses changes one thing at a time in a module that loads.
func TestLoadRefuses(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"unknown key", "#   mend:", "#   mends:", "step_rise.rego:17:5: "},
		{"unknown consequence", "consequence: workmanship", "consequence: looks", "step_rise.rego:7:18: "},
		{"metadata is no YAML", "#   why: \"Feet", "#   why: \"Feet\" \"", "step_rise.rego:8:"},
		{"unknown figure type", "type: length", "type: lenght", "step_rise.rego:11:19: "},
		{"no relation", "relation: at most, ", "", `step_rise.rego:24:42: figure "max" does not say on which side`},
		{"count of nothing", "unit: [step, steps], ", "", `step_rise.rego:12:12: the figure that is a count lacks the key "unit" (add it, for example unit: ["riser","risers"])`},
		{"one noun", "unit: [step, steps]", "unit: [steps]", "step_rise.rego:12:32: expected exactly 2"},
		{"share of nothing", "type: count, unit: [step, steps]", "type: ratio", `step_rise.rego:12:12: the figure that is a ratio lacks the key "unit"`},
		{"unit of a length", "{type: length,", "{type: length, unit: [inch, inches],", "only a count or a ratio has one"},
		{"keys without table", "about: greatest step}", "about: greatest step, keys: [a]}", `step_rise.rego:11:7: figure "max" has keys`},
		{"figure's name", "#     few:", "#     Few:", `step_rise.rego:12:7: "Few" cannot name a figure`},
		{"placeholder", "rises {have}", "rises {heve}", `step_rise.rego:15:16: the line names {heve}, which is none of have, limit, margin, n; did you mean have?`},
		{"mending nothing", "#   mend:", "#   unmended: [outsite]\n#   mend:", `step_rise.rego:17:16: the check has no message "outsite"; did you mean outside?`},
		{
			"no such change", "#   mend:", "#   tries: [treads, risrs]\n#   mend:",
			`step_rise.rego:17:21: there is no kind of change "risrs"; did you mean risers?`,
		},
		{"a change by another name", "#   mend:", "#   tries: risers\n#   mend:", "step_rise.rego:17:12: "},
		{"placeholder in a reason", "rope ladder of {n}", "rope ladder of {have}", "step_rise.rego:16:20: the line names {have}, which is none of n"},
		{"brace", "rises {have}", "rises {have", "step_rise.rego:15:16: stray brace"},
		{"reserved value", "{n: count}", "{say: words, n: count}", `step_rise.rego:13:14: "say" is a key`},
		{"package", "package checks.ladders.step_rise", "package checks.ladders.steps", "step_rise.rego:18:1: the package of check ladders/step-rise must be checks.ladders.step_rise"},
		{"outside the tree", "package checks.ladders.step_rise", "package rules.step_rise", "step_rise.rego:18:1: data.rules.step_rise is neither below checks nor below lib"},
		{"no metadata", "# METADATA\n", "# METADAT\n", "step_rise.rego:18:1: the check has no METADATA block"},
		{"public rule", "_spare := 1", "spare := 1", `step_rise.rego:30:1: rule "spare" is none that a check has`},
		{"no applies", "applies if", "_applies if", `step_rise.rego:18:1: check ladders/step-rise has no rule "applies"`},
		{"readings no set", "readings contains {", "readings := {", "readings must be a set"},
		{"row key", `"outside": true`, `"outsde": true`, `step_rise.rego:24:82: readings return "outsde"`},
		{"row misses key", `"outside": true, `, "", `step_rise.rego:24:1: readings return no "outside"`},
		{"row figure", `"figure": "max"`, `"figure": "mx"`, `step_rise.rego:24:42: figure "mx" is not in the metadata, which has few, max; did you mean max?`},
		{"row reason", `"because": "rope"`, `"because": "roap"`, `because "roap" is not in the metadata, which has rope; did you mean rope?`},
		{"row message", `"have": 1`, `"say": "inside"`, `say "inside" is not in the metadata`},
		{"foreign figures", "import data.figures.ladders.step_rise", "import data.figures.ladders.other", "step_rise.rego:20:8: data.figures.ladders.other is neither a figure of the check"},
		{"all figures", "_spare := 1", "_spare := data.figures", "step_rise.rego:30:11: data.figures is neither"},
		{"foreign check", "_spare := 1", "_spare := data.checks.ladders.step_rise.readings", "step_rise.rego:30:11: "},
		{"reads nothing known", "#   values:", "#   reads: [ladders/step-ris]\n#   values:", "check ladders/step-rise reads ladders/step-ris, which is no check; did you mean ladders/step-rise?"},
		{"alias of itself", "aliases: [ladders/rise]", "aliases: [ladders/step-rise]", "ladders/step-rise is taken by check ladders/step-rise"},
		{"syntax", "some f in input.flights\n}", "some f in input.flights\n", "step_rise.rego:"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if !strings.Contains(rise, tt.old) {
				t.Fatalf("the module has no %q to change", tt.old)
			}
			_, err := load(t, map[string]string{riseFile: strings.Replace(rise, tt.old, tt.new, 1)})
			if err == nil {
				t.Fatal("loaded")
			}
			if !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error\n%v\ndoes not say\n%s", err, tt.want)
			}
		})
	}
}

func TestLoadNeedsSchemaBinding(t *testing.T) {
	_, err := load(t, map[string]string{riseFile: rise, "checks/defaults.rego": "package checks\n"})
	if err == nil || !strings.Contains(err.Error(), "no module of package checks binds") {
		t.Errorf("error %v", err)
	}
}

func TestLibraryReadsOnlyArguments(t *testing.T) {
	for name, body := range map[string]string{
		"input.flights is out of reach":                "double(x) := x * count(input.flights)",
		"data.figures.ladders.step_rise.max is out of": "double(x) := x * data.figures.ladders.step_rise.max",
	} {
		_, err := load(t, map[string]string{riseFile: rise, "lib/sums.rego": "package lib.sums\n\n" + body + "\n"})
		if err == nil || !strings.Contains(err.Error(), name) || !strings.Contains(err.Error(), "lib/sums.rego:3:") {
			t.Errorf("error %v does not say %s", err, name)
		}
	}
	if _, err := load(t, map[string]string{riseFile: rise, "lib/sums.rego": "package lib.sums\n\nimport data.lib.more\n\ndouble(x) := more.twice(x)\n"}); err != nil {
		t.Errorf("a library that uses another is refused: %v", err)
	}
}

func TestIDsAreTakenOnce(t *testing.T) {
	other := strings.NewReplacer("ladders/step-rise", "ladders/tread", "step_rise", "tread").Replace(rise)
	_, err := load(t, map[string]string{riseFile: rise, "checks/ladders/tread/tread.rego": other})
	if err == nil || !strings.Contains(err.Error(), "ladders/rise is taken by check ladders/step-rise in "+riseFile) {
		t.Errorf("error %v", err)
	}
}

func TestFiguresSchema(t *testing.T) {
	c, err := load(t, map[string]string{riseFile: rise})
	if err != nil {
		t.Fatal(err)
	}
	whole := map[string]any{"type": "integer"}
	closed := func(properties map[string]any) map[string]any {
		return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
	}
	want := closed(map[string]any{"ladders": closed(map[string]any{"step_rise": closed(map[string]any{"max": whole, "few": whole})})})
	if diff := cmp.Diff(want, c.FiguresSchema()); diff != "" {
		t.Error(diff)
	}
}

func TestTemplateExpand(t *testing.T) {
	c, err := load(t, map[string]string{riseFile: rise})
	if err != nil {
		t.Fatal(err)
	}
	line := c.Find("ladders/step-rise").Messages["outside"]
	got, err := line.Expand(map[string]string{"n": "3", "have": `8"`, "limit": `7-3/4"`})
	if want := `step 3 rises 8", the limit is 7-3/4"`; err != nil || got != want {
		t.Errorf("got %q, %v", got, err)
	}
	for n, want := range map[string]string{"step 3": "step 3 rises a", "stepladder 3": "step stepladder 3 rises a", "step": "step step rises a"} {
		if got, err := line.Expand(map[string]string{"n": n, "have": "a", "limit": "b"}); err != nil || got != want+", the limit is b" {
			t.Errorf("%s: got %q, %v", n, got, err)
		}
	}
	if _, err := line.Expand(map[string]string{"n": "3", "have": `8"`}); err == nil || !strings.Contains(err.Error(), "{limit}") {
		t.Errorf("a missing value gives %v", err)
	}
}

func TestNearest(t *testing.T) {
	ids := []string{"stairs/riser-height", "stairs/headroom", "guards/height"}
	for word, want := range map[string]string{"stairs/riser-hight": "stairs/riser-height", "guard/height": "guards/height", "zzz": ""} {
		if got := catalog.Nearest(word, ids); got != want {
			t.Errorf("%s: %q, want %q", word, got, want)
		}
	}
}

func BenchmarkLoad(b *testing.B) {
	tree := fstest.MapFS{"checks/defaults.rego": {Data: []byte(defaults)}, riseFile: {Data: []byte(rise)}}
	for b.Loop() {
		if _, err := catalog.Load(tree); err != nil {
			b.Fatal(err)
		}
	}
}
