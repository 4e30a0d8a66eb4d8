package json_test

import (
	"bytes"
	stdjson "encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/json"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
	"plumbrule/schema"
)

func write(t testing.TB, report result.Report) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := json.New(json.Options{}).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// reports are kept under testdata and held against the schema.
func reports(t *testing.T) map[string]result.Report {
	canned := reporttest.Canned(t)
	return map[string]result.Report{
		"everything": canned,
		"unread":     {Sets: canned.Sets[1:], Designs: canned.Designs[2:4]},
		"nothing":    {},
	}
}

func TestReports(t *testing.T) {
	for name, report := range reports(t) {
		t.Run(name, func(t *testing.T) {
			got := write(t, report)
			golden.Equal(t, name+".golden", got)
			if err := schema.ValidateValue("report", decode(t, got)); err != nil {
				t.Errorf("it does not fit its schema: %v", err)
			}
		})
	}
}

func decode(t testing.TB, data []byte) any {
	t.Helper()
	decoder := stdjson.NewDecoder(bytes.NewReader(data))
	decoder.UseNumber()
	var v any
	if err := decoder.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}

// TestSchemaIsStrict makes sure that fitting the schema means something.
func TestSchemaIsStrict(t *testing.T) {
	breaks := map[string]func(report map[string]any){
		"another version":        func(r map[string]any) { r["version"] = 2 },
		"no cautions":            func(r map[string]any) { delete(r, "cautions") },
		"an unknown key":         func(r map[string]any) { finding(r, "outside")["severity"] = "high" },
		"an unknown disposition": func(r map[string]any) { first(r, "designs")["disposition"] = "fine" },
		"a negative count":       func(r map[string]any) { first(r, "designs")["counts"].(map[string]any)["outside"] = -1 },
		"within as a finding":    func(r map[string]any) { finding(r, "outside")["outcome"] = "within" },
		"outside as a reading":   func(r map[string]any) { first(deck(r), "readings")["outcome"] = "outside" },
		"outside without limit":  func(r map[string]any) { delete(finding(r, "outside"), "limit") },
		"not shown, but what":    func(r map[string]any) { delete(finding(r, "not shown"), "needs") },
		"could not run, but why": func(r map[string]any) { delete(finding(r, "could not run"), "reason") },
		"excused, but by whom":   func(r map[string]any) { delete(finding(r, "excused"), "waiver") },
		"a waiver, not excused": func(r map[string]any) {
			finding(r, "outside")["waiver"] = map[string]any{"by": "a", "reason": "b"}
		},
		"a message of two lines": func(r map[string]any) { finding(r, "outside")["message"] = "a\nb" },
		"margin as an object":    func(r map[string]any) { finding(r, "outside")["margin"] = map[string]any{"value": 1} },
		"a number without unit":  func(r map[string]any) { delete(finding(r, "outside")["have"].(map[string]any), "unit") },
		"line 0":                 func(r map[string]any) { finding(r, "outside")["start"].(map[string]any)["line"] = 0 },
		"a pointer without /":    func(r map[string]any) { finding(r, "outside")["at"] = "stairs/0" },
	}
	data := write(t, reporttest.Canned(t))
	for name, spoil := range breaks {
		broken := decode(t, data).(map[string]any)
		spoil(broken)
		if schema.ValidateValue("report", broken) == nil {
			t.Errorf("%s fits the schema", name)
		}
	}
}

func first(object map[string]any, key string) map[string]any {
	return object[key].([]any)[0].(map[string]any)
}

// deck gives the first design.
func deck(report map[string]any) map[string]any { return first(report, "designs") }

// finding gives the first finding of an outcome.
func finding(report map[string]any, outcome string) map[string]any {
	for _, f := range deck(report)["findings"].([]any) {
		if f := f.(map[string]any); f["outcome"] == outcome {
			return f
		}
	}
	return nil
}

// TestCore reads the report as another program would: by the promised keys.
func TestCore(t *testing.T) {
	var report struct {
		Version int
		Sets    []struct{ ID, Edition, Title string }
		Designs []struct {
			File, Disposition string
			Counts            map[string]int
			Findings          []struct {
				Check, Set, Clause, Outcome, Consequence, At, Mark, See string
				Start, End                                              struct{ Line, Column int }
				Have, Limit                                             struct {
					Value                float64
					Unit, Text, Relation string
				}
				Message     string
				Mend        []string
				Fingerprint string
			}
			Readings []struct {
				Check, Set, Outcome, At string
				Margin                  float64
			}
		}
		Cautions []string
	}
	decoder := stdjson.NewDecoder(bytes.NewReader(write(t, reporttest.Canned(t))))
	if err := decoder.Decode(&report); err != nil {
		t.Fatal(err)
	}
	if report.Version != 1 || len(report.Designs) != 5 || report.Sets[0].ID != "irc-2021" || len(report.Cautions) != len(content.Cautions(nil)) {
		t.Errorf("version %d, %d designs, sets %v", report.Version, len(report.Designs), report.Sets)
	}
	d := report.Designs[0]
	want := map[string]int{"outside": 6, "within": 5, "not_shown": 5, "does_not_apply": 1, "excused": 1, "could_not_run": 1}
	if len(d.Counts) != len(want) || d.Disposition != "revise and resubmit" {
		t.Errorf("disposition %q, counts %v", d.Disposition, d.Counts)
	}
	for key, n := range want {
		if d.Counts[key] != n {
			t.Errorf("%s %d, want %d", key, d.Counts[key], n)
		}
	}
	f := d.Findings[0]
	if f.Check != "stairs/riser-height" || f.Set != "irc-2021" || f.Clause != "R311.7.5.1" || f.At != "/stairs/0/risers" ||
		f.Mark != "ST1" || f.See != "S3" || f.Fingerprint != "5d0c6a91e2f4" || len(f.Mend) != 2 {
		t.Errorf("first finding is %+v", f)
	}
	if f.Start.Line != 22 || f.Start.Column != 13 || f.End.Line != 22 || f.End.Column != 14 {
		t.Errorf("it goes from %v to %v", f.Start, f.End)
	}
	if f.Have.Value != 8 || f.Have.Unit != "in" || f.Limit.Value != 7.75 || f.Limit.Text != `7-3/4"` || f.Limit.Relation != "at most" {
		t.Errorf("have %v, limit %v", f.Have, f.Limit)
	}
	if r := d.Readings[0]; r.Check != "stairs/tread-depth" || r.Margin != 0.25 || r.Outcome != "within" {
		t.Errorf("first reading is %+v", r)
	}
}

func TestSpelling(t *testing.T) {
	got := string(write(t, result.Report{Designs: []result.Design{{File: "a<b>&c"}}}))
	for _, want := range []string{`"file": "a<b>&c"`, `"sets": [],`, `"findings": [],`, "{\n  \"version\": 1,"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %s in\n%s", want, got)
		}
	}
	if !strings.HasSuffix(got, "}\n") || strings.HasSuffix(got, "\n\n") || strings.Contains(got, "null") {
		t.Errorf("it does not end with one line break, or holds a null:\n%s", got)
	}
}

func TestZeroMarginIsWritten(t *testing.T) {
	zero := &result.Value{Unit: "in", Text: `0"`}
	got := string(write(t, result.Report{Designs: []result.Design{{
		Readings: []result.Result{{Have: zero, Limit: zero, Margin: zero}},
	}}}))
	if !strings.Contains(got, `"margin": 0,`) || strings.Count(got, `"value": 0,`) != 2 {
		t.Errorf("zero was left out:\n%s", got)
	}
}

func TestSameBytesEveryTime(t *testing.T) {
	want := write(t, reporttest.Canned(t))
	for range 20 {
		if !bytes.Equal(write(t, reporttest.Canned(t)), want) {
			t.Fatal("two reports of the same run differ")
		}
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestErrors(t *testing.T) {
	if err := json.New(json.Options{}).Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
	nan := result.Result{Have: &result.Value{Number: math.NaN(), Unit: "in"}}
	err := json.New(json.Options{}).Write(&bytes.Buffer{}, result.Report{Designs: []result.Design{{Findings: []result.Result{nan}}}})
	if err == nil || !strings.Contains(err.Error(), "NaN") {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, report)
	}
}
