package remedy

import (
	"strconv"
	"strings"

	"plumbrule/checker/measure"
	"plumbrule/checker/mending"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// ground is what a kind of change has to go on.
type ground struct {
	doc      *source.Document
	finding  *result.Result
	system   measure.System
	accepted []string       // words that the sets accept
	faulty   []string       // pointers to what is outside in the design
	farthest *result.Result // the finding at the same place that lies farthest outside
}

// move gives ladders of one kind of change, each with the smallest first. They
// are tried one after the other until one holds.
type move func(*ground) [][]rung

// rung is one change: a value, and those that have to follow it.
type rung struct {
	changes []change
	kind    mending.Kind
	// resized says that the change gives a list another length.
	resized bool
	// straight says that the value found goes one way only as the field does:
	// once it lies farther outside, more of the same is no use.
	straight bool
	// finer are smaller changes that are tried where this one holds.
	finer []rung
}

// change puts a value where a pointer leads.
type change struct {
	pointer string
	label   string // what people call it; the key where it is empty
	from    string // as typed; empty where something is added
	to      *source.Node
	said    string // the whole change in words, where its values would be too many, with gaps for those it has
	values  []string
	silent  bool // the words of another change say this one too
}

// replace is a change of a value that is there.
func replace(old *source.Node, label string, to *source.Node) change {
	return change{pointer: old.Pointer, label: label, from: spelled(old), to: to}
}

// find gives the value of a field, written as size or joists/size: where the
// finding names it, else in the nearest object around its place.
func (g *ground) find(field string) *source.Node {
	for _, at := range g.finding.At {
		if strings.HasSuffix(at, "/"+field) {
			return g.doc.Find(at)
		}
	}
	for node := g.doc.Find(first(g.finding.At)); node != nil; node = node.Parent {
		if found := g.doc.Find(node.Pointer + "/" + field); found != nil {
			return found
		}
	}
	return nil
}

// place is the value that the finding points at.
func (g *ground) place() *source.Node { return g.doc.Find(first(g.finding.At)) }

// name is what people call the value at a pointer: its key behind that of what
// it belongs to, as in handrail height or guard height.
func (c *change) name() string {
	if c.label != "" {
		return c.label
	}
	tokens := strings.Split(c.pointer, "/")
	key, owner := tokens[len(tokens)-1], tokens[len(tokens)-2]
	if _, err := strconv.Atoi(owner); err == nil { // one of a list: guards/0
		owner = strings.TrimSuffix(tokens[max(len(tokens)-3, 0)], "s")
	}
	return strings.ReplaceAll(strings.TrimSpace(owner+" "+key), "_", " ")
}

// alike reports whether two texts are exchanged for the same other.
func (c *change) alike(other *change) bool {
	return c.to.Kind == source.String && c.from == other.from && spelled(c.to) == spelled(other.to)
}

// words say a change: "13 risers instead of 12", "height 36 in instead of 34 in".
// Values stay as they are typed; what they are of is said in the words of a set.
func (c *change) words(say func(string) string) string {
	if c.said != "" {
		return filled(say(c.said), c.values)
	}
	name, to := say(c.name()), spelled(c.to)
	switch {
	case c.to.Kind == source.Bool && c.from == "":
		return name + ": " + to
	case c.to.Kind == source.Bool:
		return name + ": " + to + " instead of " + c.from
	case c.from == "":
		return name + " " + to
	case c.to.Kind == source.Number:
		return to + " " + name + " instead of " + c.from
	}
	return name + " " + to + " instead of " + c.from
}

// spelled writes a value for people.
func spelled(n *source.Node) string {
	switch n.Kind {
	case source.Bool:
		if n.Text == "true" {
			return "yes"
		}
		return "no"
	case source.Array:
		parts := make([]string, len(n.Items))
		for i, item := range n.Items {
			parts[i] = spelled(item)
		}
		return strings.Join(parts, ", ")
	case source.Object:
		parts := make([]string, len(n.Members))
		for i, m := range n.Members {
			parts[i] = strings.ReplaceAll(m.Key, "_", " ") + " " + spelled(m.Value)
		}
		return strings.Join(parts, ", ")
	case source.String, source.Number, source.Null:
	}
	return n.Text
}

// text says the change and what the changed design comes to.
func (r *rung) text(of *subject, before, after *result.Design, say func(string) string) string {
	var said []string
	for i := range r.changes {
		if r.changes[i].silent {
			continue
		}
		// What is changed alike is named together: joists and ledger 2x10.
		if c, next := r.changes[i], i+1; next < len(r.changes) && c.from != "" && c.alike(&r.changes[next]) {
			said = append(said, say(c.name()))
		} else {
			said = append(said, c.words(say))
		}
	}
	text := strings.Join(said, " and ")
	if reason := of.spared(before, after); reason != "" {
		return text + ": " + reason
	}
	if was, is := of.closest(before, after); is != nil {
		if came := r.outcome(was, is); came != "" {
			text += ": " + came
		}
	}
	return text
}

// outcome says what a finding became: what differs from it, and the margin.
func (r *rung) outcome(was, is *result.Result) string {
	var said []string
	if is.Have != nil && was.Have != nil && is.Have.Unit != "" && is.Have.Text != was.Have.Text && !r.says(is.Have) {
		said = append(said, "measured "+is.Have.Text)
	}
	if is.Limit != nil && is.Limit.Unit != "" && (was.Limit == nil || is.Limit.Text != was.Limit.Text) {
		said = append(said, "limit "+string(is.Limit.Relation)+" "+is.Limit.Text)
	}
	switch {
	case is.Margin == nil || is.Margin.Text == "":
	case is.Margin.Number == 0:
		said = append(said, "at the limit")
	default:
		said = append(said, "inside by "+strings.TrimLeft(is.Margin.Text, "-−"))
	}
	return strings.Join(said, ", ")
}

// says reports whether the words of a change give the value already.
func (r *rung) says(v *result.Value) bool {
	to := r.changes[0].to
	if to.Kind == source.Number {
		return v.Unit == "count" && to.Text == strconv.FormatFloat(v.Number, 'f', -1, 64)
	}
	length, system, err := measure.ParseLength(to.Text)
	if to.Kind != source.String || err != nil {
		return false
	}
	for _, s := range []measure.System{system, measure.Imperial, measure.Metric} {
		if n, unit := length.In(s); n == v.Number && unit == v.Unit {
			return true
		}
	}
	return false
}

// spared gives the reason why a check no longer asks for anything where a
// subject was outside; it is empty where the check has something to say.
func (s *subject) spared(before, after *result.Design) string {
	if _, is := s.closest(before, after); is != nil {
		return ""
	}
	for _, i := range s.findings {
		f := &before.Findings[i]
		for k := range after.Readings {
			r := &after.Readings[k]
			at, was := first(r.At)+"/", first(f.At)+"/"
			near := at != "/" && (strings.HasPrefix(was, at) || strings.HasPrefix(at, was))
			if r.Outcome == result.DoesNotApply && r.Check == f.Check && r.Set == f.Set && near {
				return r.Reason
			}
		}
	}
	return ""
}

// closest gives the reading that a changed design has in the place of a subject
// with the least margin, and a finding of the same set that it answers; nil
// where there is none.
func (s *subject) closest(before, after *result.Design) (was, is *result.Result) {
	for _, i := range s.findings {
		f := &before.Findings[i]
		for k := range after.Readings {
			r := &after.Readings[k]
			if r.Outcome != result.Within || r.Check != f.Check || r.Set != f.Set || numberless(first(r.At)) != numberless(first(f.At)) {
				continue
			}
			if is == nil || lesser(r, is) || r == is && lesser(f, was) {
				was, is = f, r
			}
		}
	}
	return was, is
}
