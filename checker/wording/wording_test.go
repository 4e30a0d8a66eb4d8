package wording_test

import (
	"slices"
	"testing"

	"plumbrule/checker/wording"
)

func TestSay(t *testing.T) {
	w := wording.New(map[string]string{
		"tread depth": "going", "tread": "step", "ledger": "wall plate", "beam": "bearer", "a guard": "guarding", "guard": "guarding",
		"guards": "guarding", "opening": "gap", "lumber": "timber", "handrail": "handrail", "pier": "abutment",
		"Riser height": "Riser height (Steigung)", "batch": "box", "history": "story",
	})
	for text, want := range map[string]string{
		"treads are 9\" deep":                         "steps are 9\" deep",
		"the tread depth, tread by tread":             "the going, step by step",
		"least tread depths of a flight":              "least goings of a flight",
		"Tread depth":                                 "Going",
		"an opening below a ledger":                   "a gap below a wall plate",
		"A pier, a pier and the pier":                 "An abutment, an abutment and the abutment",
		"An opening":                                  "A gap",
		"a guard along the whole edge":                "guarding along the whole edge",
		"A guard, guards":                             "Guarding, guarding",
		"the beam's own place":                        "the bearer's own place",
		"a cross-beam, a beamless bay, beam-like":     "a cross-beam, a beamless bay, beam-like",
		"no handrail is shown; see handrail/required": "no handrail is shown; see handrail/required",
		"beams/span and stairs[].tread_depth":         "beams/span and stairs[].tread_depth",
		"ledger/size":                                 "ledger/size",
		"Riser height; riser height":                  "Riser height (Steigung); riser height",
		"Riser heights":                               "Riser heights",
		"batches, histories":                          "boxes, stories",
		"lumber, Lumber. (lumber)":                    "timber, Timber. (timber)",
		"Möwe beam über beam":                         "Möwe bearer über bearer",
		"":                                            "",
		"banana opening":                              "banana gap",
	} {
		if got := w.Say(text); got != want {
			t.Errorf("%q\n is %q\nwant %q", text, got, want)
		}
	}
}

func TestReplaceNamesPhrases(t *testing.T) {
	w := wording.New(map[string]string{"tread depth": "going", "tread": "step", "beam": "bearer"})
	said, phrases := w.Replace("tread depths below beams")
	if said != "goings below bearers" || !slices.Equal(phrases, []string{"tread depth", "beam"}) {
		t.Error(said, phrases)
	}
	if said, phrases := (wording.Wording{}).Replace("a beam"); said != "a beam" || phrases != nil {
		t.Error(said, phrases)
	}
}

// Whatever is replaced, what is around it stays.
func FuzzSay(f *testing.F) {
	w := wording.New(map[string]string{"beam": "bearer"})
	f.Add("a beam")
	f.Add("\xffbeam \x80")
	f.Fuzz(func(t *testing.T, text string) {
		said, phrases := w.Replace(text)
		if len(phrases) == 0 && said != text {
			t.Errorf("%q became %q", text, said)
		}
		if len(said) < len(text) {
			t.Errorf("%q lost something: %q", text, said)
		}
	})
}
