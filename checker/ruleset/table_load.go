package ruleset

import (
	"fmt"
	"maps"
	"path"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/source"
)

// notPermitted is what a table writes where it allows nothing.
const notPermitted = "not permitted"

// notInTable is what a table writes for a cell that the set does not hold,
// because nobody saw it in print.
const notInTable = "not in this table"

// table reads the table that a figure names, or records why it cannot.
func (l *loader) table(declared *catalog.Figure, named *source.Node) *Table {
	file := path.Join("tables", named.Text+".yaml")
	found := problems{file: path.Join(l.shown, file)}
	doc, err := l.document(path.Join(l.dir, file), found.file, "table", &found)
	if err != nil {
		if len(found.list) == 0 {
			l.problems.add(named.Span, "table %q: %v", named.Text, err)
		}
		l.problems.list = append(l.problems.list, found.list...)
		return nil
	}
	r := tableReader{loader: l, problems: &found, root: doc.Root, gaps: declared.Gaps}
	t := r.read(declared, named.Text)
	if len(found.list) > 0 {
		l.problems.list = append(l.problems.list, found.list...)
		return nil
	}
	return t
}

// tableReader reads one table that fits its schema.
type tableReader struct {
	*loader
	problems *problems
	root     *source.Node
	gaps     bool // cells may be left out
	sources  map[string]string
	columns  []trusted        // of each column
	rowKeys  [][]keyValue     // of each row, all keys but the last
	places   []*source.Node   // of each row
	cells    [][]*source.Node // of each row
}

// trusted is how far a column can be trusted.
type trusted struct {
	status Status
	source string
}

// keyValue is one value of a key: its text, and for a measure its number.
type keyValue struct {
	text  string
	whole int64
}

func (r *tableReader) read(declared *catalog.Figure, name string) *Table {
	t := &Table{
		Name: text(r.root, "table"), Title: text(r.root, "title"), Clause: text(r.root, "clause"),
		Note: text(r.root, "note"), Kind: catalog.Kind(text(r.root, "value")),
	}
	r.sources = maps.Clone(r.loader.sources)
	if m := r.root.Member("sources"); m != nil {
		for _, s := range m.Value.Members {
			r.sources[s.Key] = s.Value.Text
		}
	}
	if t.Name != name {
		r.problems.add(r.root.Member("table").Value.Span, "the table is called %q, its file %q", t.Name, name)
	}
	for _, k := range r.root.Member("keys").Value.Items {
		key := Key{Name: text(k, "name"), Kind: catalog.Kind(text(k, "type"))}
		if unit := k.Member("unit"); unit != nil {
			key.Unit = catalog.UnitOf(unit.Value)
		}
		t.Keys = append(t.Keys, key)
	}
	r.compare(declared, t)
	r.readColumns(t)
	r.readRows(t)
	if len(r.problems.list) == 0 {
		r.collectKeys(t)
		r.fill(t)
	}
	return t
}

// compare holds the table against what the check says of it.
func (r *tableReader) compare(declared *catalog.Figure, t *Table) {
	var names []string
	for _, key := range t.Keys {
		names = append(names, key.Name)
	}
	if declared.Keys != nil && !slices.Equal(declared.Keys, names) {
		r.problems.add(r.root.Member("keys").Value.Span, "the check asks for the keys %s in this order", strings.Join(declared.Keys, ", "))
	}
	if declared.Cells != "" && declared.Cells != t.Kind {
		r.problems.add(r.root.Member("value").Value.Span, "the check asks for cells of type %s", declared.Cells)
	}
}

// value reads one value of a key.
func (r *tableReader) value(key *Key, n *source.Node) keyValue {
	if key.Kind == catalog.Words {
		if n.Kind != source.String {
			r.problems.add(n.Span, "key %q is a word, write it as text", key.Name)
		}
		return keyValue{text: n.Text}
	}
	v, err := whole(key.Kind, n)
	if err != nil {
		r.problems.add(n.Span, "key %q: %v", key.Name, err)
	}
	return keyValue{n.Text, v}
}

func (r *tableReader) readColumns(t *Table) {
	last := &t.Keys[len(t.Keys)-1]
	columns := r.root.Member("columns").Value
	status := r.root.Member("status").Value
	one := status.Member("status") != nil
	var names []string
	seen := map[keyValue]bool{}
	for i, n := range columns.Items {
		v := r.value(last, n)
		names = append(names, v.text)
		if last.Kind != catalog.Words {
			v.text = ""
		}
		if seen[v] {
			r.problems.add(n.Span, "column %s stands here twice", n.Text)
		}
		seen[v] = true
		if last.Kind != catalog.Words && i > 0 {
			if before, err := whole(last.Kind, columns.Items[i-1]); err == nil && v.whole < before {
				r.problems.add(n.Span, "columns must rise, %s does not", n.Text)
			}
		}
		of := status
		if m := status.Member(n.Text); m != nil && m.Value.Kind == source.Object {
			of = m.Value
		} else if !one {
			r.problems.add(status.Span, "column %s has no status", n.Text)
			continue
		}
		level, from := r.trust(of, r.sources, r.problems)
		r.columns = append(r.columns, trusted{level, from})
	}
	for _, m := range status.Members {
		if !slices.Contains(names, m.Key) && !(one && (m.Key == "status" || m.Key == "source")) {
			r.problems.add(m.KeySpan, "there is no column %q%s", m.Key, nearest(m.Key, names))
		}
	}
}

func (r *tableReader) readRows(t *Table) {
	keys := t.Keys[:len(t.Keys)-1]
	seen := map[string]*source.Node{}
	for _, row := range r.root.Member("rows").Value.Items {
		at, cells := row.Member("at").Value, row.Member("cells").Value
		if len(at.Items) != len(keys) {
			r.problems.add(at.Span, "the row has %d key values, the table has %d keys besides its columns", len(at.Items), len(keys))
			continue
		}
		if have, want := len(cells.Items), len(r.root.Member("columns").Value.Items); have != want {
			r.problems.add(cells.Span, "the row has %d cells, the table %d columns", have, want)
			continue
		}
		var values []keyValue
		identity := ""
		for i := range keys {
			v := r.value(&keys[i], at.Items[i])
			values = append(values, v)
			identity += identify(keys[i].Kind, v)
		}
		if first := seen[identity]; first != nil {
			r.problems.add(at.Span, "the row stands in line %d already", first.Span.Start.Line)
			continue
		}
		seen[identity] = at
		r.rowKeys, r.places, r.cells = append(r.rowKeys, values), append(r.places, row), append(r.cells, cells.Items)
	}
}

// identify tells key values apart; measures by number, since 12 in and 1 ft
// are the same row.
func identify(kind catalog.Kind, v keyValue) string {
	if kind == catalog.Words {
		return v.text + "\x00"
	}
	return fmt.Sprintf("%d\x00", v.whole)
}

// collectKeys gathers the values of each key from rows and columns: words as
// they come, measures ascending.
func (r *tableReader) collectKeys(t *Table) {
	for i := range t.Keys {
		key := &t.Keys[i]
		var values []keyValue
		if i == len(t.Keys)-1 {
			for _, n := range r.root.Member("columns").Value.Items {
				values = append(values, r.value(key, n))
			}
		} else {
			for _, row := range r.rowKeys {
				values = append(values, row[i])
			}
		}
		key.collect(values)
	}
}

func (k *Key) collect(values []keyValue) {
	if k.Kind != catalog.Words {
		slices.SortStableFunc(values, func(a, b keyValue) int { return int(min(max(a.whole-b.whole, -1), 1)) })
		k.Breaks = []int64{}
	}
	seen := map[string]bool{}
	for _, v := range values {
		if id := identify(k.Kind, v); !seen[id] {
			seen[id] = true
			k.Texts = append(k.Texts, v.text)
			if k.Kind != catalog.Words {
				k.Breaks = append(k.Breaks, v.whole)
			}
		}
	}
}

// fill puts every cell in its place and names the combinations that no row
// gives.
func (r *tableReader) fill(t *Table) {
	size := 1
	for _, key := range t.Keys {
		size *= len(key.Texts)
	}
	columns := len(r.columns)
	if size > maxCells || columns == 0 {
		r.problems.add(r.root.Span, "the table would have %d cells, %d are the most", size, maxCells)
		return
	}
	t.cells = make([]Cell, size)
	filled := make([]bool, size/columns)
	for i, values := range r.rowKeys {
		row := 0
		for k, v := range values {
			row = row*len(t.Keys[k].Texts) + t.Keys[k].position(v)
		}
		filled[row] = true
		for column, n := range r.cells[i] {
			at := row*columns + column
			t.cells[at] = r.cell(t.Kind, n, r.columns[column])
			t.cells[at].Row = t.describe(at)
		}
	}
	for row, ok := range filled {
		if !ok {
			description := t.describe(row * columns)
			description = description[:max(strings.LastIndex(description, ", "), 0)]
			r.problems.add(r.root.Member("rows").KeySpan, "the table has a hole: no row %s", description)
		}
	}
}

// maxCells keeps a table with many key values and few rows from taking all
// memory before its holes are named.
const maxCells = 100_000

func (k *Key) position(v keyValue) int {
	if k.Kind == catalog.Words {
		return slices.Index(k.Texts, v.text)
	}
	return slices.Index(k.Breaks, v.whole)
}

func (r *tableReader) cell(kind catalog.Kind, n *source.Node, column trusted) Cell {
	c := Cell{Status: column.status, Source: column.source}
	if n.Kind == source.Object {
		c.Status, c.Source = r.trust(n, r.sources, r.problems)
		c.Note = text(n, "note")
		n = n.Member("value").Value
	}
	c.Text = n.Text
	switch {
	case n.Text == notPermitted:
		return c
	case n.Text == notInTable && r.gaps:
		c.Gap = true
		return c
	case n.Text == notInTable:
		r.problems.add(n.Span, "the check has no answer for a cell that is left out")
		return c
	}
	v, err := whole(kind, n)
	if err != nil {
		r.problems.add(n.Span, "%v; a cell that allows nothing says %q", err, notPermitted)
		return c
	}
	c.Value = &v
	return c
}
