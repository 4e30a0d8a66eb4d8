package json_test

import (
	"bytes"
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/items"
	reportjson "plumbrule/checker/report/json"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
	"plumbrule/schema"
)

// again writes a report after the one in data.
func again(t *testing.T, data []byte, report result.Report) []byte {
	t.Helper()
	previous, err := reportjson.ReadPrevious(data)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := reportjson.New(reportjson.Options{Previous: previous}).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func TestSameRunKeepsAllNumbers(t *testing.T) {
	canned := reporttest.Canned(t)
	first := write(t, canned)
	if got := again(t, first, canned); !bytes.Equal(got, first) {
		t.Error("a run after one that found the same differs from it")
	}
}

// TestCycles goes through three reviews: findings go, come, come back, and one
// cannot be checked any more.
func TestCycles(t *testing.T) {
	canned := reporttest.Canned(t)
	all := canned.Designs[0].Findings
	first := write(t, canned)

	canned.Designs[0].Findings = append([]result.Result{{
		Check: "ledger/flashing", Set: "irc-2021", Outcome: result.NotShown, Consequence: result.Durability, At: []string{"/platforms/0"},
		Needs: "platforms[].ledger.flashing", Message: "flashing of the ledger is not shown", Fingerprint: "dd40",
	}}, all[3:5]...)
	second := again(t, first, canned)
	golden.Equal(t, "cycle.golden", second)
	if err := schema.ValidateValue("report", decode(t, second)); err != nil {
		t.Errorf("it does not fit its schema: %v", err)
	}

	canned.Designs[0].Findings = all[:2]
	third := numbers(t, again(t, second, canned))
	want := map[string]int{"5d0c6a91e2f4": numbers(t, first)["5d0c6a91e2f4"], "0b77c3d15a08": numbers(t, first)["0b77c3d15a08"]}
	if !reflect.DeepEqual(third, want) {
		t.Errorf("in the third cycle the numbers are %v, want %v", third, want)
	}
}

// numbers gives the item of each fingerprint found in the first design.
func numbers(t *testing.T, data []byte) map[string]int {
	t.Helper()
	var report struct {
		Designs []struct {
			Findings []struct {
				Item        int
				Fingerprint string
			}
		}
	}
	if err := json.Unmarshal(data, &report); err != nil {
		t.Fatal(err)
	}
	found := map[string]int{}
	for _, f := range report.Designs[0].Findings {
		found[f.Fingerprint] = f.Item
	}
	return found
}

func TestReadPrevious(t *testing.T) {
	previous, err := reportjson.ReadPrevious(write(t, reporttest.Canned(t)))
	if err != nil {
		t.Fatal(err)
	}
	if len(previous) != 5 || previous[0].File != "jobs/möwenweg.deck.yaml" {
		t.Fatalf("%d designs: %v", len(previous), previous)
	}
	// One check by two sets.
	want := items.Earlier{
		Number: 1, Outcome: result.Outside, At: "/stairs/0/risers", Mark: "ST1", See: "S3", Message: `riser height is 8", the limit is 7-3/4"`,
		Found: []items.Found{
			{Check: "stairs/riser-height", Set: "irc-2021", Fingerprint: "5d0c6a91e2f4"},
			{Check: "stairs/riser-height", Set: "common-practice", Fingerprint: "5d0c6a91e2f4"},
		},
	}
	if got := previous[0].Items[0]; !reflect.DeepEqual(got, want) {
		t.Errorf("first item is %+v", got)
	}
}

func TestReadPreviousRefuses(t *testing.T) {
	good := string(write(t, reporttest.Canned(t)))
	for name, c := range map[string]struct{ data, want string }{
		"no JSON":         {"deck: 1", "it is no JSON"},
		"another JSON":    {`{"version": "2.1.0", "runs": []}`, "no report of this program"},
		"without numbers": {strings.ReplaceAll(good, `"item": 1,`, ""), "has no item number"},
		"number zero":     {strings.Replace(good, `"item": 1,`, `"item": 0,`, 1), "no report of this program"},
	} {
		if _, err := reportjson.ReadPrevious([]byte(c.data)); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
