package source

import "testing"

func TestBrokenYAML(t *testing.T) {
	for _, b := range []broken{
		// Nothing there, or too much.
		{"# only\n# comments", "1:1 the file holds only comments", "", ""},
		{"---\n# nothing\n", "1:1 the file holds no value", "", ""},
		{"a: 1\n---\nb: 2\n", "2:1 a second YAML document starts here", "---", "one design"},
		{"a: 1\n---\n", "2:1 a second YAML document starts here", "---", "one design"},
		{"a: 1\n...\n\nb: 2\n", "4:1 a second YAML document starts here", "b: 2", "one design"},
		{"{a: 1}\nb: 2\n", "2:1 the file's value ends before this", "b: 2", ""},
		{"\"a\" b\n", "1:5 the file's value ends before this", "b", ""},

		// Keys.
		{"x: 1\ny: 2\n\"x\": 3\n", `3:1 the key "x" was already given at line 1, column 1`, `"x"`, "keep one"},
		{"é: {ü: 1, b: 2, ü: 3}", `1:17 the key "ü" was already given at line 1, column 5`, "ü", "keep one"},
		{"a: 1\n1: 2\n", "2:1 the key 1 is read as a number, and keys are text", "1", `"1" in quotes`},
		{"010: 2\n", "1:1 the key 010 is read as a number, and keys are text", "010", `"010"`},
		{"true: 2\n", "1:1 the key true is read as a boolean, and keys are text", "true", `"true"`},
		{"~: 2\n", "1:1 the key ~ is read as a null, and keys are text", "~", `"~"`},
		{": 2\n", "1:1 a key is missing before the colon", ":", ""},
		{"a: 1\n[b]: 2\n", "2:1 a list or mapping is used as a key", "[", "quotes"},
		{"? {a: b}\n: 2\n", "1:3 a list or mapping is used as a key", "{", "quotes"},

		// What JSON has no counterpart for.
		{"a: &beam 2x10\nb: *beam\n", "1:4 YAML anchors (&name) are not read, as they hide where a value stands", "&beam", "delete"},
		{"a: &beam\n  c: 1\n", "1:4 YAML anchors (&name) are not read, as they hide where a value stands", "&beam", "delete"},
		{"a: & b\n", "1:4 YAML anchors (&name) are not read, as they hide where a value stands", "&", "quotes"},
		{"a: [1, *beam]\n", "1:8 YAML aliases (*name) are not read, as they hide where a value stands", "*beam", "in full"},
		{"a: * b\n", "1:4 YAML aliases (*name) are not read, as they hide where a value stands", "*", "quotes"},
		{"a:\n  <<: {b: 1}\n", "2:3 YAML merge keys (<<) are not read, as they hide where a value stands", "<<", "in full"},
		{"a: !!binary aGk=\n", "1:4 YAML tags (!name) are not read", "!!binary", "delete"},
		{"a: !deck {b: 1}\n", "1:4 YAML tags (!name) are not read", "!deck", "delete"},
		{"! a: 1\n", "1:1 YAML tags (!name) are not read", "!", "delete"},
		{"!!str a: 1\n", "1:1 YAML tags (!name) are not read", "!!str", "delete"},
		{"a: !x!y b\n", "1:4 YAML tags (!name) are not read", "!x!y", "delete"},
		{"a: !<x\n", "1:4 YAML tags (!name) are not read", "!<x", "delete"},
		{"%YAML 1.2\n---\na: 1\n", "1:1 YAML directives (%NAME) are not read", "%YAML 1.2", "delete the line"},
		{"%FOO\n", "1:1 YAML directives (%NAME) are not read", "%FOO", "delete the line"},

		// Numbers that are spelt so that readers differ.
		{"a: 010", "1:4 010 starts with a zero, which some readers take for an octal number", "010", `write 10, or "010" in quotes`},
		{"a: [1, 0x1F]", "1:8 0x1F is not a decimal number", "0x1F", `write 31, or "0x1F"`},
		{"a: 1_000 # c", "1:4 1_000 has underscores inside a number", "1_000", "write 1000,"},
		{"a: .inf", "1:4 .inf is not a finite number", ".inf", "leave the value out"},
		{"a: .NaN", "1:4 .NaN is not a number", ".NaN", "leave the value out"},

		// Quotes.
		{"a: 1\nb: \"two\nc: 3\nd: 4\n", "2:4 the quoted text that starts here is never closed", "\"two", "closing quote"},
		{"a: 1\nb: 'two\nc: 3\nd: 4\n", "2:4 the quoted text that starts here is never closed", "'two", "closing quote"},
		{"a: \"two\n---\nb: 1\n", "1:4 the quoted text that starts here is never closed", "\"two", "closing quote"},
		{"a: 1\nb: \"two\nc: 3\nd: \"four\"\n", "2:4 the quoted text that starts here runs on to line 4", "\"two", "closing quote"},
		{"a: ['1, b]\nc: ['2']\n", "1:5 the quoted text that starts here runs on to line 2", "'1, b]", "closing quote"},
		{"a: 1\nb: \"12\" in\nc: 1\n", "2:9 text after the closing quote", "in", `write \"`},
		{"a: 1\nb: '6' 5\"'\nc: 1\n", "2:8 text after the closing quote", "5\"'", "double a single quote"},
		{"a: 1\nb: \"x\\qz\"\n", "2:6 an unknown or incomplete escape after a backslash", `\q`, `\"`},

		// Brackets.
		{"a: 1\nb: [1, 2\nc: 3\nd: 4\n", "2:4 this '[' is never closed", "[", ""},
		{"a: 1\nb: {x: 1, y: 2\nc: 3\n", "2:4 this '{' is never closed", "{", ""},
		{"a: 1\nb: {x: 1, y: 2\n", "2:4 this '{' is never closed", "{", ""},
		{"a:\n  - [\n    1,\n    2\n  - 3\n", "2:5 this '[' is never closed", "[", ""},
		{"a: [\n", "1:4 this '[' is never closed", "[", ""},
		{"éé: [ü, é\r\nc: 3\r\n", "1:5 this '[' is never closed", "[", ""},
		{"\ufeffa: [1\n", "1:4 this '[' is never closed", "[", ""},
		{"a: 1\nb: [1, 2]]\nc: 3\n", "2:10 this ']' closes nothing", "]", "delete"},
		{"a: 1\nb: [1, 2}\nc: 3\n", "2:9 this '}' does not close the '[' at line 2, column 4", "}", ""},
		{"a: {x: 1, y: [2, 3}\n", "1:19 this '}' does not close the '[' at line 1, column 14", "}", ""},
		{"b: {x: 1 y: 2}\n", "1:10 a comma or closing bracket is missing before this", "y:", "quotes"},
		{"b: {x: \"1\" y: 2}\n", "1:12 a comma or closing bracket is missing before this", "y", ""},
		{"b: {\n  x: 1\n  y: 2\n}\n", "3:3 a comma or closing bracket is missing before this", "y:", "quotes"},
		{"b: {title: Karaka: Bay}\n", "1:18 a second colon in one value", ":", "quotes"},
		{"a: [1, , 2]\n", "1:8 a value is missing before this", ",", ""},
		{"a: [b] c\n", "1:8 text after the closing bracket", "c", "quotes"},

		// Lines and indentation.
		{"x: 1\na: b: c\n", "2:5 a second colon in one line", ":", "quotes"},
		{"s:\n  - mark: A\n    size: 2x10: two\n", "3:15 a second colon in one line", ":", "quotes"},
		{"x: 1\nkey:value\ny: 2\n", `2:1 a space is missing after the colon of "key"`, "key:value", `write "key: value"`},
		{"key:value # c\nx: 1\n", `1:1 a space is missing after the colon of "key"`, "key:value", `write "key: value"`},
		{"x:\n  a: 1\n  some_key:[1]\n  y: 2\n", `3:3 a space is missing after the colon of "some_key"`, "some_key:[1]", `"some_key: [1]"`},
		{"- b: 1\n  c:v\n  d: 1\n", `2:3 a space is missing after the colon of "c"`, "c:v", `write "c: v"`},
		{"a: 1\nb\nc: 3\n", "2:1 this line has no colon and is no list item", "b", ""},
		{"a b\nc: 3\n", "1:1 this line has no colon and is no list item", "a b", ""},
		{"a: 1\n  b: 2\nc: 3\n", "2:3 this is indented deeper than the line above, which already has a value", "b", "align"},
		{"a: 1\n\n# c\n  b: 2\n", "4:3 this is indented deeper than the line above, which already has a value", "b: 2", "align"},
		{"- a\n  - b: 1\n", "2:3 this is indented deeper than the line above, which already has a value", "- b", "align"},
		{"a:\n    b: 1\n  c: 2\nd: 3\n", "3:3 this line is indented like no line above it (the keys before it start in column 1)", "c: 2", "align"},
		{"a:\n  - x\n - y\n", "3:2 this line is indented like no line above it (the keys before it start in column 1)", "- y", "align"},
		{"a: |\n   x\n  y\nb: 1\n", "3:3 this line is indented like no line above it (the keys before it start in column 1)", "y", "align"},
		{"a: 1\n- b\n", "2:1 a list item stands where a key is expected", "-", ""},
		{"- b\na: 1\n", "2:1 a list item (- ...) is expected here", "a: 1", ""},
		{"a: - b\n", "1:4 a list cannot start on the line of its key", "-", "line of its own"},
		{"a:\n\tb: 1\n", "2:1 a tab is used for indentation, which YAML does not allow", "\t", "spaces"},
		{"a:\n  \tb: 1\n", "2:3 a tab is used for indentation, which YAML does not allow", "\t", "spaces"},
		{"a:\n  b: 1\n\t\tc: 1\n", "3:1 a tab is used for indentation, which YAML does not allow", "\t\t", "spaces"},

		// Characters.
		{"a: @b\n", "1:4 text cannot start with '@'", "@", "quotes"},
		{"a: `b`\n", "1:4 text cannot start with '`'", "`", "quotes"},
		{"a: %b\n", "1:4 text cannot start with '%'", "%", "quotes"},
		{"a: > 5 ft\n", "1:4 text cannot start with '>'", "> 5 ft", "quotes"},
		{"a: ? b\n", "1:4 text cannot start with '?'", "?", "quotes"},
		{"a: é\u2028b\n", "1:5 an invisible line separator (U+2028)", "\u2028", `\u2028`},
		{"a: \ufeffb\n", "1:4 a byte order mark (U+FEFF) inside the text", "\ufeff", "delete"},
	} {
		t.Run(b.text, func(t *testing.T) { b.check(t, "t.yaml") })
	}
}
