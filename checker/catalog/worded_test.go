package catalog_test

import (
	"slices"
	"testing"

	"plumbrule/checker/wording"
)

func TestInOtherWords(t *testing.T) {
	c, err := load(t, map[string]string{"checks/ladders/step_rise/step_rise.rego": rise})
	if err != nil {
		t.Fatal(err)
	}
	check := c.Find("ladders/step-rise")
	said, phrases := check.In(wording.New(map[string]string{
		"step": "rung", "ladder": "iron stair", "rope": "hemp", "limit": "bound", "n": "N", "max": "most", "chain": "cord",
	}))
	for have, want := range map[string]string{
		said.Title:                         "Rise of a rung",
		said.Description:                   "The greatest rung of each iron stair against the bound.",
		said.Why:                           "Feet expect even rungs: a high one trips.",
		said.AppliesWhen:                   "an iron stair is described",
		said.Figures[0].About:              "greatest rung",
		said.Messages["outside"].String():  "rung {n} rises {have}, the bound is {limit}",
		said.Exempt["rope"].String():       "it is a hemp iron stair of {n} rungs",
		said.Mend[0]:                       "more rungs: each becomes lower",
		check.Title:                        "Rise of a step", // as it was
		check.Figures[0].About:             "greatest step",
		check.Mend[0]:                      "more steps: each becomes lower",
		check.Messages["outside"].String(): "step {n} rises {have}, the limit is {limit}",
	} {
		if have != want {
			t.Errorf("%q, want %q", have, want)
		}
	}
	if said.ID != check.ID || said.Figure("max") == nil || !slices.Equal(said.Rules, check.Rules) {
		t.Errorf("the check became another: %+v", said)
	}
	if want := []string{"ladder", "limit", "rope", "step"}; !slices.Equal(phrases, want) {
		t.Errorf("phrases %q, want %q", phrases, want)
	}
	if same, none := check.In(wording.Wording{}); same != check || none != nil {
		t.Error("no words changed the check")
	}
}
