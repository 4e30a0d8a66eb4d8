package catalog

import (
	"maps"
	"slices"
	"strings"

	"plumbrule/checker/mending"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// metadataBlock gives the METADATA comment above the package as a document of
// its own in which every line and column is that of the module, or nil where
// there is none, and the place where the module begins to say something.
//
// The block is read here and not by the Rego parser because that gives neither
// the place of a single key nor an answer to keys that nobody knows, and
// because the text of strangers is not to be parsed in this process.
func metadataBlock(text []byte) (block []byte, begins source.Position) {
	var b strings.Builder
	inside, found := false, false
	begins.Column = 1
	for line := range strings.SplitAfterSeq(string(text), "\n") {
		comment, trimmed := strings.HasPrefix(line, "#"), strings.TrimSpace(line)
		if trimmed != "" && !strings.HasPrefix(trimmed, "#") {
			break // a package stands above everything but comments
		}
		begins.Line++
		begins.Offset += len(line)
		switch {
		case !comment:
			inside = false
		case !found && trimmed == "# METADATA":
			inside, found = true, true
			line = "\n"
		}
		if inside {
			b.WriteString(strings.Replace(line, "#", " ", 1))
		} else {
			b.WriteString("\n")
		}
	}
	begins.Line++
	if !found {
		return nil, begins
	}
	return []byte(b.String()), begins
}

// readMetadata fills a check from its METADATA block. It returns nil when the
// block is of no use; problems say why.
func readMetadata(file string, text []byte, found *problems) *Check {
	block, begins := metadataBlock(text)
	if block == nil {
		found.add(file, source.Span{Start: begins, End: begins}, "the check has no METADATA block above its package")
		return nil
	}
	doc, err := source.Read(file, block)
	if err != nil {
		found.list = append(found.list, asError(file, err))
		return nil
	}
	if wrong := schema.Validate("check", doc); len(wrong) > 0 {
		found.schema(file, wrong)
		return nil
	}
	r := metadataReader{file: file, problems: found}
	return r.check(doc.Root)
}

// metadataReader turns a block that fits the schema into a check.
type metadataReader struct {
	file     string
	problems *problems
}

func (r metadataReader) check(root *source.Node) *Check {
	custom := root.Member("custom").Value
	c := &Check{
		ID:          text(custom, "id"),
		Aliases:     texts(custom, "aliases"),
		Title:       text(root, "title"),
		Description: text(root, "description"),
		Why:         text(custom, "why"),
		AppliesWhen: text(custom, "applies_when"),
		Consequence: result.Consequence(text(custom, "consequence")),
		Values:      map[string]Kind{},
		Mend:        texts(custom, "mend"),
		Unmended:    texts(custom, "unmended"),
		Tries:       r.tries(custom),
		Asks:        text(custom, "asks") == "true",
		Reads:       texts(custom, "reads"),
		File:        r.file,
	}
	c.Topic, _, _ = strings.Cut(c.ID, "/")
	for _, member := range members(custom, "figures") {
		c.Figures = append(c.Figures, r.figure(member))
	}
	for _, member := range members(custom, "values") {
		if reservedKey(member.Key) {
			r.problems.add(r.file, member.KeySpan, "%q is a key that every check has, a value needs another name", member.Key)
		}
		c.Values[member.Key] = Kind(member.Value.Text)
	}
	c.Messages = r.templates(custom, "messages", c.Values, "have", "limit", "margin")
	c.Exempt = r.templates(custom, "exempt", c.Values)
	if member := custom.Member("unmended"); member != nil {
		for _, item := range member.Value.Items {
			if _, said := c.Messages[item.Text]; !said {
				r.problems.add(r.file, item.Span, "the check has no message %q%s", item.Text, nearestOf(item.Text, slices.Sorted(maps.Keys(c.Messages))))
			}
		}
	}
	return c
}

// tries reads which kinds of change may mend a finding.
func (r metadataReader) tries(custom *source.Node) []mending.Kind {
	member := custom.Member("tries")
	if member == nil {
		return mending.Usual()
	}
	kinds := []mending.Kind{}
	for _, item := range member.Value.Items {
		kind := mending.Kind(item.Text)
		if kind.About() == "" {
			r.problems.add(r.file, item.Span, "there is no kind of change %q%s", item.Text, nearestOf(item.Text, mending.Names()))
		}
		kinds = append(kinds, kind)
	}
	return kinds
}

func (r metadataReader) figure(member source.Member) Figure {
	n := member.Value
	f := Figure{
		Name:     member.Key,
		Kind:     Kind(text(n, "type")),
		Relation: result.Relation(text(n, "relation")),
		About:    text(n, "about"),
		Unit:     UnitOf(valueOf(n, "unit")),
		Optional: text(n, "optional") == "true",
		Cells:    Kind(text(n, "value")),
		Keys:     texts(n, "keys"),
		Gaps:     text(n, "gaps") == "true",
	}
	if !isName(f.Name) {
		r.problems.add(r.file, member.KeySpan, "%q cannot name a figure, use lower case with underscores", f.Name)
	}
	if f.Kind != Table && (f.Cells != "" || f.Keys != nil || f.Gaps) {
		r.problems.add(r.file, member.KeySpan, "figure %q has keys, gaps or a value type, which only a table has", f.Name)
	}
	return f
}

func (r metadataReader) templates(custom *source.Node, key string, values map[string]Kind, more ...string) map[string]Template {
	lines := map[string]Template{}
	for _, member := range members(custom, key) {
		template, err := parseTemplate(member.Value.Text)
		if err != nil {
			r.problems.add(r.file, member.Value.Span, "%v", err)
			continue
		}
		for _, name := range template.Names() {
			known := append([]string{}, more...)
			for value := range values {
				known = append(known, value)
			}
			if !slices.Contains(known, name) {
				r.problems.add(r.file, member.Value.Span, "the line names {%s}, which is none of %s%s", name, list(known), nearestOf(name, known))
			}
		}
		lines[member.Key] = template
	}
	return lines
}

func text(n *source.Node, key string) string {
	if m := n.Member(key); m != nil {
		return m.Value.Text
	}
	return ""
}

func valueOf(n *source.Node, key string) *source.Node {
	if m := n.Member(key); m != nil {
		return m.Value
	}
	return nil
}

func texts(n *source.Node, key string) []string {
	m := n.Member(key)
	if m == nil {
		return nil
	}
	var all []string
	for _, item := range m.Value.Items {
		all = append(all, item.Text)
	}
	return all
}

func members(n *source.Node, key string) []source.Member {
	if m := n.Member(key); m != nil {
		return m.Value.Members
	}
	return nil
}
