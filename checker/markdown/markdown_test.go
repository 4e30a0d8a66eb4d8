package markdown_test

import (
	"testing"

	"plumbrule/checker/markdown"
)

func TestText(t *testing.T) {
	for in, want := range map[string]string{
		"a | b":                 `a \| b`,
		"bearing_length":        "bearing_length",
		"_loose_":               `\_loose\_`,
		"platforms[].<edge>":    `platforms\[\].\<edge\>`,
		`7-3/4" of 2x8, 4'-6"`:  `7-3/4" of 2x8, 4'-6"`,
		"a &lt; b & c":          `a \&lt; b & c`,
		"two\nlines  and space": "two lines and space",
		"R507.6 & `code` 5*3 $": "R507.6 & \\`code\\` 5\\*3 \\$",
	} {
		if got := markdown.Text(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

func TestCode(t *testing.T) {
	for in, want := range map[string]string{
		"":        "",
		"a|b":     "`a|b`",
		"a`b":     "``a`b``",
		"`a`":     "`` `a` ``",
		"plain x": "`plain x`",
	} {
		if got := markdown.Code(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

func TestAnchor(t *testing.T) {
	for in, want := range map[string]string{
		"What the rule sets give":         "what-the-rule-sets-give",
		"joist_spans[]":                   "joist_spans",
		"Table R507.6, span (in ft & in)": "table-r5076-span-in-ft--in",
	} {
		if got := markdown.Anchor(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

func TestPage(t *testing.T) {
	var p markdown.Page
	p.Comment("made -- by a test")
	if first, second := p.Heading(2, "Figures"), p.Heading(2, "Figures"); first != "figures" || second != "figures-1" {
		t.Errorf("anchors %q and %q", first, second)
	}
	p.Paragraph("one", "", "two")
	p.Paragraph("")
	p.List("a", "b")
	p.List()
	p.Table([]string{"x", "gone", "y"}, [][]string{{"1", "", "`2|4`"}, {`3 \| 5`, "", ""}})
	p.Table([]string{"x"}, nil)
	p.Code("text", "a\n```\nb\n\n")
	const want = "<!-- made - - by a test -->\n\n## Figures\n\n## Figures\n\none two\n\n- a\n- b\n\n" +
		"| x | y |\n|---|---|\n| 1 | `2\\|4` |\n| 3 \\| 5 |  |\n\n````text\na\n```\nb\n````\n"
	if got := p.String(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}
