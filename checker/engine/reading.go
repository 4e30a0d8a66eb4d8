package engine

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// base is a result with what every outcome of the check shares.
func (r *run) base(outcome result.Outcome) result.Result {
	return result.Result{
		Check: r.check.ID, Title: r.check.Title, Set: r.set.ID, Clause: r.given.Clause,
		Outcome: outcome, Consequence: r.check.Consequence, Why: r.check.Why,
	}
}

// whole is a result that concerns the design as a whole.
func (r *run) whole(outcome result.Outcome, reason string, d design) result.Result {
	one := r.base(outcome)
	one.At = []string{""}
	one.Span = d.opening(d.doc.Root)
	one.Reason = reason
	one.Fingerprint = d.fingerprint(r.check.ID, "", "")
	return one
}

func (r *run) doesNotApply(d design) []result.Result {
	return []result.Result{r.whole(result.DoesNotApply, "applies where "+r.check.AppliesWhen, d)}
}

// takenOut is the answer of a check that an overlay took out.
func (r *run) takenOut(d design) []result.Result {
	one := r.whole(result.DoesNotApply, r.given.Off.String(), d)
	one.Clause = r.given.Off.Clause
	return []result.Result{one}
}

func (r *run) couldNotRun(d design, err error) []result.Result {
	reason := strings.Join(strings.Fields(err.Error()), " ") // one line
	one := r.whole(result.CouldNotRun, reason, d)
	one.Message = "the check could not run: " + reason
	return []result.Result{one}
}

// reading turns a row of readings into within or outside.
func (r *run) reading(row row, d design) (result.Result, error) {
	one := r.base(result.Within)
	at, err := row.pointers()
	if err != nil {
		return one, err
	}
	if len(at) == 0 {
		return one, errors.New("a reading names no place in the design")
	}
	if err := d.place(&one, at); err != nil {
		return one, err
	}
	outside, err := row.flag("outside")
	if err != nil {
		return one, err
	}
	if outside {
		one.Outcome = result.Outside
		one.Mend = r.mend(row)
	}
	by, err := r.basis(&one, row, d)
	if err != nil {
		return one, err
	}
	said, err := r.values(row)
	if err != nil {
		return one, err
	}
	texts := r.texts(said, d)
	if err := r.compare(&one, row, by, texts, d); err != nil {
		return one, err
	}
	if one.Message, err = r.say(row, outside, texts); err != nil {
		return one, err
	}
	if one.Engineered, err = d.engineered(row); err != nil {
		return one, err
	}
	one.Fingerprint = d.fingerprint(r.check.ID, at[0], "")
	return one, row.rest()
}

// basis is what the values of a reading rest on.
type basis struct {
	kind     catalog.Kind // as which the values print
	relation result.Relation
	unit     catalog.Unit    // what values of a count are of
	given    *ruleset.Figure // nil where a listing is the limit
}

// basis finds the figure that decided, or the listing that did in its place,
// and notes in the result how far it can be trusted.
func (r *run) basis(one *result.Result, row row, d design) (basis, error) {
	listing, err := d.listing(row, one.At)
	if err != nil {
		return basis{}, err
	}
	if listing != nil {
		one.Listing, one.Clause, one.Status = listing, "", result.StatedInDesign
		declared, err := r.listed(row)
		if err != nil {
			return basis{}, err
		}
		return basis{kind: declared.Kind, relation: declared.Relation, unit: declared.Unit}, nil
	}
	declared, given, err := r.figure(row)
	if err != nil {
		return basis{}, err
	}
	return basis{kind: printed(given), relation: declared.Relation, unit: declared.Unit, given: given}, r.trust(one, row, given)
}

// mend gives the general ways to mend what a row finds outside.
func (r *run) mend(row row) []string {
	if key, named, err := row.text("say"); err == nil && named && slices.Contains(r.check.Unmended, key) {
		return nil
	}
	return r.check.Mend
}

// figure finds the figure that decided, as the check asks for it and as the set
// gives it.
func (r *run) figure(row row) (*catalog.Figure, *ruleset.Figure, error) {
	name, err := row.must("figure")
	if err != nil {
		return nil, nil, err
	}
	declared, given := r.check.Figure(name), r.given.Figure(name)
	if declared == nil {
		return nil, nil, fmt.Errorf("the check asks for no figure %q", name)
	}
	if !declared.Limits() {
		return nil, nil, fmt.Errorf("figure %q does not say on which side of it the inside lies", name)
	}
	if given == nil {
		return nil, nil, fmt.Errorf("set %s does not give the figure %q", r.set.ID, name)
	}
	return declared, given, nil
}

// trust copies clause, status and source of the figure, or of the cell that a
// row of a table gives.
func (r *run) trust(one *result.Result, row row, given *ruleset.Figure) error {
	one.Clause, one.Status, one.Source = given.Clause, string(given.Status), given.Source
	one.Amended = given.Amended()
	path, hasCell := row.get("cell")
	var cell ruleset.Cell
	if hasCell {
		steps, ok := path.([]any)
		if !ok || given.Table == nil {
			return fmt.Errorf("the cell %s is not in a table", show(path))
		}
		var err error
		if cell, err = given.Table.Cell(steps); err != nil {
			return err
		}
		one.Status, one.Source = string(cell.Status), cell.Source
		if cell.Amends != nil {
			one.Clause, one.Amended = cell.Clause, cell.Amended()
		}
		one.Table, one.Row = given.Table.Title, cell.Row
		one.Notes = append(one.Notes, fmt.Sprintf("%s: %s", given.Table.Title, cell.Row))
	}
	for _, note := range []string{cell.Note, given.Note, r.given.Note} {
		if note != "" {
			one.Notes = append(one.Notes, note)
		}
	}
	return nil
}

// values reads the check's own values of a row.
func (r *run) values(row row) (map[string]quantity, error) {
	values := map[string]quantity{}
	for name, kind := range r.check.Values {
		raw, ok := row.get(name)
		if !ok {
			continue
		}
		q, err := newQuantity(kind, raw)
		if err != nil {
			return nil, fmt.Errorf("value %q: %w", name, err)
		}
		values[name] = q
	}
	return values, nil
}

// texts prints values for a message. Words stay as the design has them; a part
// without a mark goes by the set's word for it.
func (r *run) texts(values map[string]quantity, d design) map[string]string {
	texts := make(map[string]string, len(values)+3)
	for name, q := range values {
		text := q.text(d.system)
		if q.kind == catalog.Part && !d.marks[text] {
			text = r.set.Wording().Say(text)
		}
		texts[name] = text
	}
	return texts
}

// compare prints what was measured, the limit, and the margin between them.
func (r *run) compare(one *result.Result, row row, by basis, texts map[string]string, d design) error {
	kind := by.kind
	var sides [2]*quantity
	for i, key := range []string{"have", "limit"} {
		raw, ok := row.get(key)
		if !ok {
			continue
		}
		q, err := newQuantity(kind, raw)
		if err != nil {
			return fmt.Errorf("%q: %w", key, err)
		}
		sides[i] = &q
	}
	have, limit := sides[0], sides[1]
	if have != nil {
		one.Have = d.value(*have)
	}
	if limit != nil {
		one.Limit = d.value(*limit)
		one.Limit.Relation = by.relation
		inUnits := kind == catalog.Length || kind == catalog.Pressure || kind == catalog.Force
		if inUnits && by.given != nil && r.set.System != d.system && by.given.States(limit.whole) {
			one.Limit.Standard = limit.text(r.set.System)
		}
	}
	if have != nil && limit != nil {
		one.Have.Text, one.Limit.Text = distinct(*have, *limit, d.system)
		if m, ok := margin(*have, *limit, by.relation, one.Outcome == result.Outside); ok {
			one.Margin = d.value(m)
			one.Margin.Text = magnitude(m, d.system)
		}
	}
	for name, value := range map[string]*result.Value{"have": one.Have, "limit": one.Limit, "margin": one.Margin} {
		if value != nil {
			texts[name] = value.Text // a message has its own words for what is counted
			value.Text = by.unit.After(value.Text)
		}
	}
	return nil
}

func (d design) value(q quantity) *result.Value {
	v := &result.Value{Text: q.text(d.system)}
	v.Number, v.Unit = q.number(d.system)
	return v
}

// printed gives the kind as which the values of a figure's readings print.
func printed(given *ruleset.Figure) catalog.Kind {
	switch given.Kind {
	case catalog.Table:
		return given.Table.Kind
	case catalog.Steps:
		return catalog.Pressure
	case catalog.Groups:
		return catalog.List
	}
	return given.Kind
}

// say puts together the message of a reading. One that lies within and asks
// for no message in particular needs none.
func (r *run) say(row row, outside bool, texts map[string]string) (string, error) {
	key, named, err := row.text("say")
	if err != nil {
		return "", err
	}
	if !named {
		key = "within"
		if outside {
			key = "outside"
		}
	}
	template, ok := r.check.Messages[key]
	switch {
	case !ok && named:
		return "", fmt.Errorf("the check has no message %q", key)
	case !ok:
		return "", nil
	}
	return template.Expand(texts)
}

// notShown turns a row of unknown into what the description lacks.
func (r *run) notShown(row row, d design) (result.Result, error) {
	one := r.base(result.NotShown)
	at, err := row.places()
	if err != nil {
		return one, err
	}
	if err := d.place(&one, at); err != nil {
		return one, err
	}
	if one.Needs, err = row.must("needs"); err != nil {
		return one, err
	}
	if _, named := row.members["figure"]; named {
		_, given, err := r.figure(row)
		if err != nil {
			return one, err
		}
		one.Clause = given.Clause
	}
	node, err := d.find(at[0])
	if err != nil {
		return one, err
	}
	one.Span = d.opening(node)
	one.Message = d.missing(at[0], one.Needs, r.set.Wording())
	one.Fingerprint = d.fingerprint(r.check.ID, at[0], one.Needs)
	one.Needs = fieldShown(one.Needs)
	return one, row.rest()
}

// exempt turns a row of exempt into a subject that the check leaves alone.
func (r *run) exempt(row row, d design) (result.Result, error) {
	one := r.base(result.DoesNotApply)
	at, err := row.places()
	if err != nil {
		return one, err
	}
	if err := d.place(&one, at); err != nil {
		return one, err
	}
	because, err := row.must("because")
	if err != nil {
		return one, err
	}
	template, ok := r.check.Exempt[because]
	if !ok {
		return one, fmt.Errorf("the check has no reason %q to exempt a subject", because)
	}
	values, err := r.values(row)
	if err != nil {
		return one, err
	}
	if one.Reason, err = template.Expand(r.texts(values, d)); err != nil {
		return one, err
	}
	one.Fingerprint = d.fingerprint(r.check.ID, at[0], "")
	return one, row.rest()
}
