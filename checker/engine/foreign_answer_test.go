package engine_test

import (
	"context"
	"strings"
	"testing"

	"plumbrule/checker/engine"
	"plumbrule/checker/sandbox"
)

// TestForeignAnswerIsBounded has a check return more rows than fit.
func TestForeignAnswerIsBounded(t *testing.T) {
	_, source := office(t, replace(toeFile, "n := _n", "some n in numbers.range(1, 3000)"))
	results := source.evaluate(t, confined(func(l *sandbox.Limits) { l.Answer = 64 << 10 }))
	if reason := failed(results, "office/toe"); !strings.Contains(reason, "answered at too great a length") {
		t.Errorf("reason %q", reason)
	}
	if got := len(of(results, "office/kick")); got != 4 {
		t.Errorf("the check that ended before gives %d results", got)
	}
	if got := len(of(source.evaluate(t, confined(func(l *sandbox.Limits) { l.Answer = 64 << 20 })), "office/toe")); got != 12000 {
		t.Errorf("with room for it: %d results", got)
	}
}

// liar is a process that says what it likes.
type liar []string

func (l liar) Run(context.Context, []byte) ([][]byte, error) {
	var lines [][]byte
	for _, line := range l {
		lines = append(lines, []byte(line))
	}
	return lines, nil
}

// TestForeignAnswerIsValidated stands in for a process that somebody took over.
func TestForeignAnswerIsValidated(t *testing.T) {
	const done = `{"done":true}`
	row := `{"check":"office/toe","applies":true,"rows":{"readings":[{"at":["/stairs/0"],"figure":"max","have":1,"limit":2,"outside":false}]}}`
	for _, test := range []struct {
		name string
		says liar
		want string
	}{
		{"sound", liar{row, done}, ""},
		{"nothing", nil, "ended in the middle"},
		{"no end", liar{row}, ""},
		{"no JSON", liar{"sorry", done}, "gave no answer that can be read"},
		{"unknown key", liar{`{"check":"office/toe","verdict":"fine"}`, done}, "gave no answer that can be read"},
		{"twice", liar{row, row, done}, "answered 2 times"},
		{"goes on", liar{done, row}, "went on after it was done"},
		{"no row", liar{`{"check":"office/toe","applies":true,"rows":{"readings":[7]}}`, done}, "a row is 7, not an object"},
		{"deep row", liar{`{"check":"office/toe","applies":true,"rows":{"readings":[` + strings.Repeat("[", 20000) + strings.Repeat("]", 20000) + `]}}`, done}, "gave no answer that can be read"},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, source := office(t, nil)
			results := source.evaluate(t, test.says)
			if reason := failed(results, "office/toe"); !strings.Contains(reason, test.want) || (reason == "") != (test.want == "") {
				t.Errorf("reason %q, want %q", reason, test.want)
			}
			if got := len(of(results, "stairs/rise")); got != 4 || failed(results, "stairs/rise") != "" {
				t.Errorf("the program's own check gives %d results", got)
			}
		})
	}
}

func TestServeRefusesWhatIsNoQuestion(t *testing.T) {
	for _, text := range []string{"", "[]", `{"files":`} {
		if err := engine.Serve(t.Context(), strings.NewReader(text), &strings.Builder{}, ours()); err == nil {
			t.Errorf("%q is taken", text)
		}
	}
}
