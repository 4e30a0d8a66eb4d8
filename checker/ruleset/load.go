package ruleset

import (
	"cmp"
	"io/fs"
	"path"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
	"plumbrule/schema"
)

// loader reads one set.
type loader struct {
	files    fs.FS
	dir      string // where the set's file lies
	shown    string // the same for messages
	checks   *catalog.Catalog
	id       string            // of the set
	by       string            // whose rules the set holds
	sources  map[string]string // title by id, those of the sets below included
	problems problems
}

func newLoader(at origin) *loader {
	return &loader{files: at.files, dir: path.Dir(at.file), shown: path.Dir(at.shown), problems: problems{file: at.shown}}
}

// document reads a file that fits a schema.
func (l *loader) document(file, shown, schemaName string, found *problems) (*source.Document, error) {
	data, err := fs.ReadFile(l.files, file)
	if err != nil {
		return nil, err
	}
	doc, err := source.Read(shown, data)
	if err != nil {
		return nil, err
	}
	found.schema(schema.Validate(schemaName, doc))
	if err := found.err(); err != nil {
		return nil, err
	}
	return doc, nil
}

// set reads a set that fits its schema, over the one that it extends, if any.
func (l *loader) set(root *source.Node, base *Set) *Set {
	set := &Set{
		ID: text(root, "set"), Title: text(root, "title"), Edition: text(root, "edition"),
		Publisher: text(root, "publisher"), Place: text(root, "place"), Scope: text(root, "scope"), File: l.problems.file,
		checks: l.checks,
	}
	l.id, l.by = set.ID, cmp.Or(set.Place, set.Publisher)
	if text(root, "system") == measure.Metric.String() {
		set.System = measure.Metric
	}
	if m := root.Member("not_covered"); m != nil {
		for _, item := range m.Value.Items {
			set.NotCovered = append(set.NotCovered, item.Text)
		}
	}
	l.sources = map[string]string{}
	if m := root.Member("sources"); m != nil {
		for _, s := range m.Value.Members {
			l.sources[s.Key] = s.Value.Text
			set.Sources = append(set.Sources, Source{ID: s.Key, Title: s.Value.Text})
		}
	}
	if base != nil {
		l.inherit(set, root, base)
	}
	taken := map[string]bool{}
	for _, m := range root.Member("checks").Value.Members {
		declared := l.checks.Find(m.Key)
		if declared == nil {
			l.problems.add(m.KeySpan, "there is no check %q%s", m.Key, nearest(m.Key, l.checks.IDs()))
			continue
		}
		if taken[declared.ID] {
			l.problems.add(m.KeySpan, "%s names the check %s, which the set has already", m.Key, declared.ID)
			continue
		}
		taken[declared.ID] = true
		if base != nil {
			l.change(set, declared, m)
			continue
		}
		set.Checks = append(set.Checks, l.check(declared, m))
	}
	l.checkReads(root, set)
	slices.SortFunc(set.Checks, func(a, b Check) int { return strings.Compare(a.ID, b.ID) })
	l.words(set, root, base)
	return set
}

func (l *loader) check(declared *catalog.Check, m source.Member) Check {
	c := Check{ID: declared.ID, Clause: text(m.Value, "clause"), Note: text(m.Value, "note"), Class: class(m.Value)}
	given := m.Value.Member("figures").Value
	l.knownFigures(declared, given)
	for i := range declared.Figures {
		f := &declared.Figures[i]
		g := given.Member(f.Name)
		if g == nil {
			if !f.Optional {
				l.problems.add(m.KeySpan, "check %s needs the figure %q: %s", declared.ID, f.Name, f.About)
			}
			continue
		}
		if figure, ok := l.figure(f, *g, c.Clause); ok {
			c.Figures = append(c.Figures, figure)
		}
	}
	return c
}

// knownFigures refuses figures that the check does not ask for.
func (l *loader) knownFigures(declared *catalog.Check, given *source.Node) {
	var names []string
	for _, f := range declared.Figures {
		names = append(names, f.Name)
	}
	for _, g := range given.Members {
		if declared.Figure(g.Key) == nil {
			l.problems.add(g.KeySpan, "check %s asks for no figure %q%s", declared.ID, g.Key, nearest(g.Key, names))
		}
	}
}

func (l *loader) figure(declared *catalog.Figure, m source.Member, clause string) (Figure, bool) {
	f := Figure{Name: declared.Name, Kind: declared.Kind, Set: l.id, Clause: clause, Note: text(m.Value, "note")}
	own := text(m.Value, "clause")
	table := m.Value.Member("table")
	if table == nil != (declared.Kind != catalog.Table) {
		if table != nil {
			l.problems.add(table.KeySpan, "figure %q is a %s, not a table", f.Name, declared.Kind)
		} else {
			l.problems.add(m.KeySpan, "figure %q is a table, write {table: its name}", f.Name)
		}
		return f, false
	}
	if table != nil {
		t := l.table(declared, table.Value)
		if t == nil {
			return f, false
		}
		f.Table, f.Value, f.Text, f.Clause, f.Status = t, t.data(), t.Title, t.Clause, t.status()
		f.Note = joined(f.Note, t.Note)
	} else {
		value, text, bad := read(declared.Kind, m.Value.Member("value").Value)
		if bad != nil {
			l.problems.add(bad.span, "figure %q: %s", f.Name, bad.message)
		}
		f.Value, f.Text = value, declared.Unit.After(text)
		f.Status, f.Source = l.trust(m.Value, l.sources, &l.problems)
	}
	if own != "" {
		f.Clause = own
	}
	return f, true
}

// trust reads status and source, which go together: what was seen in print
// says where, and nothing else does.
func (l *loader) trust(n *source.Node, sources map[string]string, found *problems) (Status, string) {
	status, named := Status(text(n, "status")), n.Member("source")
	switch {
	case status == Published && named == nil:
		found.add(n.Span, "a published figure names the source in which it was seen")
	case status != Published && named != nil:
		found.add(named.KeySpan, "only a published figure has a source, this one is %s", status)
	case named != nil && sources[named.Value.Text] == "":
		var ids []string
		for id := range sources {
			ids = append(ids, id)
		}
		found.add(named.Value.Span, "there is no source %q%s", named.Value.Text, nearest(named.Value.Text, ids))
	case named != nil:
		return status, sources[named.Value.Text]
	}
	return status, ""
}

// checkReads refuses a check whose neighbour's figures it reads and the set
// does not have.
func (l *loader) checkReads(root *source.Node, set *Set) {
	for _, m := range root.Member("checks").Value.Members {
		declared := l.checks.Find(m.Key)
		if declared == nil {
			continue
		}
		for _, id := range declared.Reads {
			if set.Check(id) == nil {
				l.problems.add(m.KeySpan, "check %s reads the figures of %s, which the set does not have", declared.ID, id)
			}
		}
	}
}

// class is the class that a set gives a check; empty where it gives none.
func class(n *source.Node) result.Consequence { return result.Consequence(text(n, "class")) }

func text(n *source.Node, key string) string {
	if m := n.Member(key); m != nil {
		return m.Value.Text
	}
	return ""
}

func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}

func nearest(word string, candidates []string) string {
	if near := catalog.Nearest(word, candidates); near != "" {
		return "; did you mean " + near + "?"
	}
	return ""
}
