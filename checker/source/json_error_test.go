package source

import "testing"

func TestBrokenJSON(t *testing.T) {
	for _, b := range []broken{
		// Commas and colons.
		{"{\n \"a\": 1,\n}", "2:8 a comma after the last value, which JSON does not allow", ",", "delete"},
		{`[1, 2 , ]`, "1:7 a comma after the last value, which JSON does not allow", ",", "delete"},
		{`[1,,2]`, "1:4 a comma where a value is expected", ",", "delete"},
		{`{"a": 1 "b": 2}`, "1:9 a comma is missing before this", `"`, ""},
		{`[1 2]`, "1:4 a comma is missing before this", "2", ""},
		{`[{} {}]`, "1:5 a comma is missing before this", "{", ""},
		{`{"a" 1}`, "1:6 a colon is missing between the key and its value", "1", ""},
		{`{"a":"b":1}`, "1:9 a colon where a comma or closing bracket is expected", ":", ""},
		{`{"a": }`, "1:7 a value is missing before this", "}", "write null"},

		// Comments.
		{"{\"a\": 1, // why\n}", "1:10 a comment, which JSON does not allow", "// why", ".yaml"},
		{"{\"a\": 1 /* why */}", "1:9 a comment, which JSON does not allow", "/* why */}", ".yaml"},
		{"# why\n{}", "1:1 a comment, which JSON does not allow", "# why", ".yaml"},
		{"{}\n# why\n", "2:1 a comment, which JSON does not allow", "# why", ".yaml"},

		// Keys.
		{`{"é": 1, "b": {"é": 2}, "\u00e9": 3}`, `1:25 the key "é" was already given at line 1, column 2`, `"\u00e9"`, "keep one"},
		{`{a: 1}`, `1:2 the key "a" is not in double quotes`, "a", `write "a"`},
		{`{"b": 1, 1: 2}`, `1:10 the key "1" is not in double quotes`, "1", `write "1"`},
		{`{'a': 1}`, "1:2 JSON puts text in double quotes, not single ones", "'", `write "`},

		// Cut short.
		{`{"a": [1, 2`, "1:12 the file ends, but the '[' at line 1, column 7 is not closed", "", "complete"},
		{"{\"a\": 1,\n", "2:1 the file ends, but the '{' at line 1, column 1 is not closed", "", "complete"},
		{`{"a"`, "1:5 the file ends, but the '{' at line 1, column 1 is not closed", "", "complete"},
		{"{\"a\": \"x", "1:7 the text that starts here is never closed", `"x`, "close it"},
		{"tru", "1:4 the file ends before its value is complete", "", ""},

		// Text.
		{"{\"a\": \"x\ny\"}", "1:7 the text that starts here is not closed on its line", `"x`, `\n`},
		{"{\"a\": \"x\ty\"}", "1:9 a tab inside JSON text", "\t", `\t`},
		{`{"a": "6\'"}`, "1:9 an unknown or incomplete escape after a backslash", `\'`, `\"`},
		{`{"a": "\ud800"}`, "1:8 an unknown or incomplete escape after a backslash", `\u`, `\"`},

		// Bare words and numbers.
		{`{"a": 16 in}`, `1:10 in is not in double quotes`, "in", `"16 in"`},
		{`{"a": tru}`, `1:7 tru is not in double quotes`, "tru", "text"},
		{`{"a": True}`, "1:7 True must be in lower case", "True", "write true"},
		{`{"a": None}`, "1:7 JSON has no value None", "None", "null"},
		{`{"a": 010}`, "1:7 010 starts with a zero, which some readers take for an octal number", "010", "write 10,"},
		{`{"a": 0x1F}`, "1:7 0x1F is not a decimal number", "0x1F", "write 31,"},
		{`{"a": 1_000}`, "1:7 1_000 has underscores inside a number", "1_000", "write 1000,"},
		{`{"a": +5}`, "1:7 +5 has a plus sign", "+5", "write 5,"},
		{`{"a": .5}`, "1:7 .5 has no digit before the decimal point", ".5", "write 0.5,"},
		{`{"a": 5.}`, "1:7 5. has no digit after the decimal point", "5.", "write 5,"},
		{`{"a": NaN}`, "1:7 NaN is not a number", "NaN", "leave the value out"},
		{`{"a": -Infinity}`, "1:7 -Infinity is not a finite number", "-Infinity", "leave the value out"},

		// Too much, or closed by the wrong bracket.
		{`{"a": 1}}`, "1:9 this '}' closes nothing", "}", "delete"},
		{`{"a": 1]`, "1:8 this ']' does not close the '{' at line 1, column 1", "]", ""},
		{"{}\n{}", "2:1 text after the end of the JSON value", "{", "one design"},
		{"\ufeff{}x", "1:3 text after the end of the JSON value", "x", "one design"},
		{"deck", "1:1 deck is not in double quotes", "deck", "text"},
	} {
		t.Run(b.text, func(t *testing.T) { b.check(t, "t.json") })
	}
}
