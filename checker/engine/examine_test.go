package engine_test

import (
	"strings"
	"testing"

	"plumbrule/checker/engine"
)

const kickTest = `package checks.office.kick_test

import data.checks.office.kick as check

_said with_riser := r

test_over if {
	check.readings with input.flights as [{"at": ["/stairs/0"], "of": 1, "riser_max": {"value": 9, "at": ["/stairs/0"]}}]
		with data.figures as {"office": {"kick": {"max": 8}}, "stairs": {"rise": {"max": 8}}}
}

test_wrong[name] if {
	some name, limit in {"low": 8, "high": 10}
	some r in check.readings with input.flights as [{"at": ["/stairs/0"], "of": 1, "riser_max": {"value": 9, "at": ["/stairs/0"]}}]
		with data.figures as {"office": {"kick": {"max": limit}}, "stairs": {"rise": {"max": limit}}}
	r.outside
}
`

func TestExamine(t *testing.T) {
	set, _ := office(t, nil)
	tests := map[string]string{"checks/office/kick/kick_test.rego": strings.Replace(kickTest, "_said with_riser := r\n\n", "", 1)}
	found, err := engine.Examine(t.Context(), set, tests, confined(nil))
	if err != nil {
		t.Fatal(err)
	}
	if len(found.Tests) != 2 || found.Tests[0].Name != "test_over" || found.Tests[0].Problem != "" ||
		found.Tests[1].Problem != "it fails for high" || found.Tests[1].Row != 10 {
		t.Errorf("tests %+v", found.Tests)
	}
	reached := map[string]bool{}
	for _, line := range found.Unreached {
		reached[line.File] = true
	}
	if !reached[toeFile] || !reached[kickFile] || reached["lib/office.rego"] || reached[riseFile] || found.Lines < 10 {
		t.Errorf("unreached %v of %d", found.Unreached, found.Lines)
	}
	for name, text := range map[string]string{
		"no Rego": kickTest, "unknown field": "package checks.office.kick_test\n\ntest_it if input.flight\n",
		"clock": "package checks.office.kick_test\n\ntest_it if time.now_ns() > 0\n",
	} {
		tests := map[string]string{"checks/office/kick/kick_test.rego": text}
		if _, err := engine.Examine(t.Context(), set, tests, confined(nil)); err == nil || !strings.Contains(err.Error(), "kick_test.rego:") {
			t.Errorf("%s: %v", name, err)
		}
	}
	endless := map[string]string{"checks/office/kick/kick_test.rego": "package checks.office.kick_test\n\ntest_it if count([1 | some a in numbers.range(1, 100000); some b in numbers.range(1, 100000); a + b < 0]) > 0\n"}
	if _, err := engine.Examine(t.Context(), set, endless, confined(lowTime)); err == nil || !strings.Contains(err.Error(), "too long") {
		t.Errorf("a test without end: %v", err)
	}
}
