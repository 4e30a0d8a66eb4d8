package ruleset

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/source"
)

// whole reads a value of a kind that is one whole number.
func whole(kind catalog.Kind, n *source.Node) (int64, error) {
	var value int64
	var err error
	switch {
	case kind == catalog.Count:
		return count(n)
	case n.Kind != source.String && !(kind == catalog.Angle && n.Kind == source.Number):
		return 0, unquoted(kind, n)
	case kind == catalog.Length:
		var v measure.Length
		v, _, err = measure.ParseLength(n.Text)
		value = int64(v)
	case kind == catalog.Pressure:
		var v measure.Pressure
		v, _, err = measure.ParsePressure(n.Text)
		value = int64(v)
	case kind == catalog.Force:
		var v measure.Force
		v, _, err = measure.ParseForce(n.Text)
		value = int64(v)
	case kind == catalog.Angle:
		var v measure.Angle
		v, err = measure.ParseAngle(n.Text)
		value = int64(v)
	default:
		return 0, fmt.Errorf("%s is not a kind of number", kind)
	}
	if err == nil && value < 0 {
		err = fmt.Errorf("a figure cannot be negative")
	}
	return value, err
}

// unquoted refuses a number that stands where a quantity should.
func unquoted(kind catalog.Kind, n *source.Node) error {
	if kind == catalog.Length && n.Kind == source.Number {
		return fmt.Errorf("a %s is written as text with its unit: %s", kind, measure.SuggestLength(n.Text))
	}
	return fmt.Errorf("a %s is written as text with its unit", kind)
}

func count(n *source.Node) (int64, error) {
	value, err := strconv.ParseInt(n.Text, 10, 64)
	if n.Kind != source.Number || err != nil || value < 0 {
		return 0, errors.New("a count is a whole number without quotes")
	}
	return value, nil
}

// problem is what is wrong with a value, and where in it.
type problem struct {
	span    source.Span
	message string
}

func wrong(n *source.Node, format string, args ...any) *problem {
	return &problem{n.Span, fmt.Sprintf(format, args...)}
}

// read converts a figure from the way a set writes it to the form in which
// checks read it, and gives its text.
func read(kind catalog.Kind, n *source.Node) (value any, text string, bad *problem) {
	switch kind {
	case catalog.Flag:
		if n.Kind != source.Bool {
			return nil, "", wrong(n, "a flag is true or false without quotes")
		}
		return n.Text == "true", n.Text, nil
	case catalog.Words:
		if n.Kind != source.String {
			return nil, "", wrong(n, "words are written as text")
		}
		return n.Text, n.Text, nil
	case catalog.List:
		return readList(n)
	case catalog.Groups:
		return readGroups(n)
	case catalog.Steps:
		return readSteps(n)
	case catalog.Slope, catalog.Ratio:
		slope, err := fraction(kind, n)
		if err != nil {
			return nil, "", wrong(n, "%v", err)
		}
		text := n.Text
		if kind == catalog.Ratio && slope.Run == 1 { // 1/1, which nobody says
			text = strconv.FormatInt(slope.Rise, 10)
		}
		return map[string]any{"rise": slope.Rise, "run": slope.Run}, text, nil
	default:
		v, err := whole(kind, n)
		if err != nil {
			return nil, "", wrong(n, "%v", err)
		}
		return v, n.Text, nil
	}
}

// fraction reads a slope, 1 in 48 or 2%, or a ratio, 1/4.
func fraction(kind catalog.Kind, n *source.Node) (measure.Slope, error) {
	if n.Kind != source.String {
		return measure.Slope{}, fmt.Errorf("a %s is written as text", kind)
	}
	if kind == catalog.Slope {
		return measure.ParseSlope(n.Text)
	}
	over, under, _ := strings.Cut(n.Text, "/")
	rise, err1 := strconv.ParseInt(strings.TrimSpace(over), 10, 32)
	run, err2 := strconv.ParseInt(strings.TrimSpace(under), 10, 32)
	if err1 != nil || err2 != nil || rise < 0 || run <= 0 {
		return measure.Slope{}, fmt.Errorf("%q is not a ratio, which is written as 1/4", n.Text)
	}
	return measure.NewSlope(rise, run)
}

func readList(n *source.Node) (any, string, *problem) {
	if n.Kind != source.Array || len(n.Items) == 0 {
		return nil, "", wrong(n, "a list holds one text or more in brackets")
	}
	var texts []string
	var values []any
	for _, item := range n.Items {
		if item.Kind != source.String {
			return nil, "", wrong(item, "a list holds texts")
		}
		texts = append(texts, item.Text)
		values = append(values, item.Text)
	}
	return values, strings.Join(texts, ", "), nil
}

func readGroups(n *source.Node) (any, string, *problem) {
	if n.Kind != source.Object || len(n.Members) == 0 {
		return nil, "", wrong(n, "groups are lists of texts by name")
	}
	groups := map[string]any{}
	var names []string
	for _, m := range n.Members {
		values, _, bad := readList(m.Value)
		if bad != nil {
			return nil, "", bad
		}
		groups[m.Key] = values
		names = append(names, m.Key)
	}
	return groups, strings.Join(names, ", "), nil
}

// readSteps reads pressures that stand for ranges of pressures: up to one, read
// the other.
func readSteps(n *source.Node) (any, string, *problem) {
	if n.Kind != source.Array || len(n.Items) == 0 {
		return nil, "", wrong(n, "steps are a list of {upto, read}")
	}
	var steps []any
	var texts []string
	last := int64(-1)
	for _, item := range n.Items {
		upto, to := item.Member("upto"), item.Member("read")
		if upto == nil || to == nil || len(item.Members) != 2 {
			return nil, "", wrong(item, "a step has the keys upto and read, and no others")
		}
		limit, err := whole(catalog.Pressure, upto.Value)
		if err != nil {
			return nil, "", wrong(upto.Value, "%v", err)
		}
		column, err := whole(catalog.Pressure, to.Value)
		if err != nil {
			return nil, "", wrong(to.Value, "%v", err)
		}
		if limit <= last {
			return nil, "", wrong(upto.Value, "steps must rise, %s does not", upto.Value.Text)
		}
		last = limit
		steps = append(steps, map[string]any{"upto": limit, "read": column})
		texts = append(texts, "up to "+upto.Value.Text+" read "+to.Value.Text)
	}
	return steps, strings.Join(texts, ", "), nil
}
