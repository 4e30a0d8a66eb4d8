package catalog_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/catalog"
)

// kick is a check as a rule set brings it. Its rules are not Rego, which shows
// that nothing here parses them.
const kick = `# METADATA
# title: Kick
# description: The height of a kick board against the set's limit.
# custom:
#   id: office/kick
#   aliases: [office/toe]
#   consequence: workmanship
#   why: A foot catches under a board that ends too high.
#   applies_when: a flight of ladders is described
#   figures:
#     min: {type: length, relation: at least, about: least height of a kick board}
#   messages:
#     outside: "the kick board is {have} high"
#   reads: [ladders/step-rise]
package checks.office.kick

this is { no Rego`

const kickFile = "checks/office/kick/kick.rego"

func own(t *testing.T) *catalog.Catalog {
	t.Helper()
	checks, err := catalog.Load(fstest.MapFS{
		"checks/defaults.rego":                    {Data: []byte(defaults)},
		"checks/ladders/step_rise/step_rise.rego": {Data: []byte(rise)},
		"lib/ladders.rego":                        {Data: []byte("package lib.ladders\n")},
	})
	if err != nil {
		t.Fatal(err)
	}
	return checks
}

func brought(files map[string]string) catalog.Source {
	from := catalog.Source{Files: fstest.MapFS{}, Shown: "../office"}
	for name, text := range files {
		from.Files.(fstest.MapFS)[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return from
}

func TestWithReadsMetadataOnly(t *testing.T) {
	ours := own(t)
	wider, err := ours.With(brought(map[string]string{
		kickFile: kick, "checks/office/kick/kick_test.rego": "nor is this", "lib/office.rego": "nor this", "set.yaml": "",
	}))
	if err != nil {
		t.Fatal(err)
	}
	check := wider.Find("office/toe")
	if check == nil || check.ID != "office/kick" || !check.Foreign || check.File != "../office/"+kickFile || check.Figure("min") == nil {
		t.Errorf("got %+v", check)
	}
	var names []string
	for _, m := range wider.Foreign() {
		names = append(names, m.Name+" "+m.Shown)
	}
	if got, want := strings.Join(names, ", "), kickFile+" ../office/"+kickFile+", lib/office.rego ../office/lib/office.rego"; got != want {
		t.Errorf("brought %s, want %s", got, want)
	}
	if ours.Find("office/kick") != nil || len(ours.Foreign()) > 0 || wider.Find("ladders/step-rise").Foreign {
		t.Error("the program's own catalog changed")
	}
	if again, err := ours.With(brought(map[string]string{"set.yaml": ""})); err != nil || len(again.Foreign()) > 0 {
		t.Errorf("a set without Rego gives %v", err)
	}
}

func TestWithRefuses(t *testing.T) {
	for _, test := range []struct{ name, file, text, want string }{
		{"topic of the program", "checks/ladders/kick/kick.rego", strings.ReplaceAll(kick, "office/", "ladders/"),
			`ladders/kick lies in the topic "ladders" of the program`},
		{"alias of the program", kickFile, strings.Replace(kick, "office/toe", "ladders/step-rise", 1),
			`ladders/step-rise lies in the topic "ladders" of the program`},
		{"other directory", "checks/office/toe/toe.rego", kick, "check office/kick stands in the directory checks/office/kick"},
		{"beside the schemas", "checks/more.rego", kick, "check office/kick stands in the directory checks/office/kick"},
		{"name of a file of the program", "lib/ladders.rego", "package lib.ladders", "the name lib/ladders.rego is taken by the program"},
		{"schemas", "checks/defaults.rego", defaults, "the name checks/defaults.rego is taken by the program"},
		{"no metadata", kickFile, "package checks.office.kick", "kick.rego:1:1: the check has no METADATA block"},
		{"wrong metadata", kickFile, strings.Replace(kick, "workmanship", "death", 1), "kick.rego:7:18: "},
		{"reads nothing there", kickFile, strings.Replace(kick, "reads: [ladders/step-rise]", "reads: [ladders/step-size]", 1),
			"office/kick reads ladders/step-size, which is no check; did you mean ladders/step-rise?"},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := own(t).With(brought(map[string]string{test.file: test.text}))
			if err == nil || !strings.Contains(err.Error(), test.want) || !strings.Contains(err.Error(), "../office/") {
				t.Errorf("got %v, want %s", err, test.want)
			}
		})
	}
	if _, err := own(t).With(brought(map[string]string{kickFile: kick, "checks/office/kick/other.rego": kick})); err == nil || !strings.Contains(err.Error(), "office/kick is taken") {
		t.Errorf("one id twice gives %v", err)
	}
}

// TestWithLeavesCarriedAside reads a bundle, which has the program's checks in
// it for others to run.
func TestWithLeavesCarriedAside(t *testing.T) {
	from := brought(map[string]string{
		kickFile: kick, "lib/ladders.rego": "package lib.ladders\nmore := 1", "checks/defaults.rego": "package checks",
		"checks/ladders/step_rise/step_rise.rego": "changed", "checks/ladders/later/later.rego": "of another version",
	})
	from.Carried = true
	wider, err := own(t).With(from)
	if err != nil {
		t.Fatal(err)
	}
	if all := wider.Foreign(); len(all) != 1 || all[0].Name != kickFile {
		t.Errorf("brought %v", all)
	}
}

func TestJoin(t *testing.T) {
	ours := own(t)
	one, err := ours.With(brought(map[string]string{kickFile: kick}))
	if err != nil {
		t.Fatal(err)
	}
	joined, err := catalog.Join(ours, one, one)
	if err != nil || joined.Find("office/kick") == nil || joined.Find("ladders/step-rise") == nil || len(joined.Checks()) != 2 {
		t.Errorf("joined %v, %v", joined, err)
	}
	other, err := ours.With(brought(map[string]string{kickFile: kick + "\n# changed"}))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := catalog.Join(ours, one, other); err == nil || !strings.Contains(err.Error(), "differs from ../office/"+kickFile) {
		t.Errorf("two checks of one id give %v", err)
	}
}
