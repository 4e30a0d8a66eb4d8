package source

import (
	"strings"
	"testing"
)

func TestMisspelt(t *testing.T) {
	for _, c := range []struct{ text, problem, meant string }{
		{"010", "starts with a zero", "write 10,"},
		{"00", "starts with a zero", "write 0,"},
		{"-007.50", "starts with a zero", "write -7.50,"},
		{"09e2", "starts with a zero", "write 9e2,"},
		{"0x1F", "not a decimal number", "write 31,"},
		{"-0xff_ff", "not a decimal number", "write -65535,"},
		{"0o17", "not a decimal number", "write 15,"},
		{"+0b101", "not a decimal number", "write 5,"},
		{"0x_", "not a decimal number", "write it as a decimal number,"},
		{"1_000", "underscores", "write 1000,"},
		{"+1_000.5_0", "underscores", "write 1000.50,"},
		{"+5", "plus sign", "write 5,"},
		{"+.5", "plus sign", "write 0.5,"},
		{".5", "before the decimal point", "write 0.5,"},
		{"-.5e-3", "before the decimal point", "write -0.5e-3,"},
		{"5.", "after the decimal point", "write 5,"},
		{"0.", "after the decimal point", "write 0,"},
		{".inf", "not a finite number", "leave the value out"},
		{"-.INF", "not a finite number", "leave the value out"},
		{"Infinity", "not a finite number", "leave the value out"},
		{".nan", "not a number", "leave the value out"},
		{"NaN", "not a number", "leave the value out"},
	} {
		problem, hint := misspelt(c.text)
		if !strings.HasPrefix(problem, c.text+" ") || !strings.Contains(problem, c.problem) {
			t.Errorf("%s: the problem is %q, want %q", c.text, problem, c.problem)
		}
		if !strings.HasPrefix(hint, c.meant) || !strings.Contains(hint, `"`+c.text+`" in quotes`) {
			t.Errorf("%s: the hint is %q, want %q", c.text, hint, c.meant)
		}
	}
	for _, text := range []string{
		"", "0", "-0", "10", "0.5", "1e5", "1E+999999", "-", "+", ".", "-.", "e5", ".e5", "1-1/2", "2x10", "16 in", "1,000",
		"1.2.3", "2024-01-05", "12:30", "0x", "0xg", "_1", "inf", "nan", "No. 2", "Info", "½", "1e", "+-1", strings.Repeat("0", 65),
	} {
		if problem, _ := misspelt(text); problem != "" {
			t.Errorf("%q: %s", text, problem)
		}
	}
}
