package schema

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/source"
)

// wrongKind words a value of a kind that does not belong here: text for a list, a bare number for a length.
func (p *published) wrongKind(l leaf, n *source.Node) Problem {
	problem := Problem{Span: n.Span, Pointer: n.Pointer}
	if n.Kind == source.Null {
		problem.Message = "nothing is written here"
		problem.Hint = "leave the key out if the drawing does not show it"
		return problem
	}
	words := slices.Concat(l.words, wordsOf(p.inner(l.owner, "if")))
	if q, ok := p.quantity(l.owner); ok {
		problem.Message = fmt.Sprintf("expected %s, found %s", orWords(q.name+" such as "+q.example, words), found(n))
		if n.Kind == source.Number {
			_, problem.Hint = q.unreadable(n.Text)
			problem.Message = fmt.Sprintf("%s needs its unit, found the bare number %s", q.name, n.Text)
			if q.unitless {
				problem.Message = fmt.Sprintf("expected %s, found the bare number %s", q.name, n.Text)
			}
		}
		return problem
	}
	problem.Message = fmt.Sprintf("expected %s, found %s", p.expected(l.owner), found(n))
	problem.Hint = kindHint(l.owner, n)
	return problem
}

// kindHint repairs the commonest slips: one entry without its dash, a YAML 1.1 truth value, a number meant as a name.
func kindHint(owner map[string]any, n *source.Node) string {
	wants := kinds(owner)
	only, _ := owner["then"].(map[string]any)
	switch word := text(only["const"]); {
	case word != "" && n.Text == "true":
		return "write what the drawing shows of it"
	case word != "" && n.Text == "false":
		return "write " + word
	case wants["array"] && n.Kind == source.Object:
		return "a single entry of a list needs a dash before it, or [ ] around it"
	case wants["boolean"] && n.Kind == source.String:
		switch strings.ToLower(n.Text) {
		case "yes", "y", "on", "true":
			return "write true"
		case "no", "n", "off", "false", "none":
			return "write false"
		}
	case wants["string"] && !wants["boolean"] && (n.Kind == source.Number || n.Kind == source.Bool):
		return `put it in quotes: "` + n.Text + `"`
	case (wants["integer"] || wants["number"]) && n.Kind == source.String && isNumber(n.Text):
		return "write " + n.Text + " without quotes"
	}
	return ""
}

// wrongValue words a value of the right kind that does not fit.
func (p *published) wrongValue(l leaf, n *source.Node) (message, hint string) {
	limit := fmt.Sprint(l.owner[l.keyword])
	switch l.keyword {
	case "enum", "const":
		return wrongWord(l, n)
	case "pattern":
		return p.wrongText(l, n)
	case "minItems", "maxItems":
		if l.owner["minItems"] == l.owner["maxItems"] {
			limit = "exactly " + limit
		} else {
			limit = atLeast(l.keyword) + limit
		}
		return fmt.Sprintf("expected %s, found %d", p.entries(l.owner, limit), len(n.Items)), ""
	case "minimum", "maximum":
		return fmt.Sprintf("expected %s%s, found %s", atLeast(l.keyword), limit, n.Text), ""
	case "exclusiveMinimum":
		return fmt.Sprintf("expected more than %s, found %s", limit, n.Text), ""
	case "exclusiveMaximum":
		return fmt.Sprintf("expected less than %s, found %s", limit, n.Text), ""
	case "multipleOf":
		return fmt.Sprintf("expected a multiple of %s, found %s", limit, n.Text), ""
	case "minLength":
		if n.Text == "" {
			return "the text is empty", "leave the key out if the drawing does not show it"
		}
		return fmt.Sprintf("the text is shorter than %s characters", limit), ""
	case "maxLength":
		return fmt.Sprintf("the text is longer than %s characters", limit), ""
	case "uniqueItems":
		return "an entry stands in the list twice", ""
	case "maxProperties":
		return fmt.Sprintf("there are more than %s keys", limit), ""
	case "contains", "minContains":
		return "an entry is missing from the list", ""
	}
	return name(n) + " does not fit here", ""
}

// wrongWord words a value that is none of the few allowed.
func wrongWord(l leaf, n *source.Node) (message, hint string) {
	if word := text(l.owner["const"]); word != "" && text(l.owner["title"]) != "" {
		if slices.Contains([]string{"no", "n", "not", "off", "false", "-"}, strings.ToLower(n.Text)) || nearest(n.Text, []string{word}) != "" {
			hint = "write " + word
		}
		return fmt.Sprintf("expected keys with values for %s or the word %s, found %s", titled(l.owner), word, found(n)), hint
	}
	if only := l.owner["const"]; l.keyword == "const" && len(wordsOf(l.owner)) == 0 {
		why, _ := l.owner["$comment"].(string)
		return fmt.Sprintf("expected %v, found %s", only, found(n)), why
	}
	known := slices.Concat(wordsOf(l.owner), l.words)
	if n.Kind != source.String || len(known) == 0 {
		return fmt.Sprintf("%s is not among the values known here", found(n)), "values here: " + valuesOf(l.owner["enum"])
	}
	if near := nearest(n.Text, known); near != "" {
		hint = "did you mean " + shown(near) + "?"
	}
	return fmt.Sprintf("%s is not a word known here", shown(n.Text)), sentences(hint, "words here: "+list(known))
}

// valuesOf lists values that are not all words.
func valuesOf(enum any) string {
	items, _ := enum.([]any)
	values := make([]string, len(items))
	for i, item := range items {
		values[i] = fmt.Sprint(item)
	}
	return list(values)
}

// wrongText words a text that cannot be read as what it should be.
func (p *published) wrongText(l leaf, n *source.Node) (message, hint string) {
	if q, ok := p.quantity(l.owner); ok {
		if near := nearest(n.Text, l.words); near != "" {
			return fmt.Sprintf("%s is not a word known here", shown(n.Text)), "did you mean " + shown(near) + "?"
		}
		message, hint = q.unreadable(n.Text)
		if len(l.words) > 0 {
			hint += ", or " + list(l.words)
		}
		return message, hint
	}
	title, _ := l.owner["title"].(string)
	message = fmt.Sprintf("%s is no %s", shown(n.Text), orElse(title, "text that fits here"))
	if examples := texts(l.owner["examples"]); len(examples) > 0 {
		hint = "write it like " + examples[0]
	}
	return message, hint
}

// quantity gives the quantity that a schema object asks for, itself or unless a word stands instead.
func (p *published) quantity(s map[string]any) (quantity, bool) {
	pattern, ok := p.resolve(s)["pattern"].(string)
	if !ok {
		pattern, _ = p.inner(s, "else")["pattern"].(string)
	}
	return quantityOf(pattern)
}

// inner gives the schema object under a keyword, references followed.
func (p *published) inner(s map[string]any, keyword string) map[string]any {
	inner, _ := s[keyword].(map[string]any)
	return p.resolve(inner)
}

// expected says in plain words what kind of value a schema object asks for.
func (p *published) expected(s map[string]any) string {
	wants := kinds(s)
	var ways []string
	for _, kind := range []struct{ kind, plain string }{
		{"array", p.entries(s, "")}, {"object", "keys with values for " + titled(s)}, {"boolean", "true or false"},
		{"integer", "a whole number"}, {"number", "a number"}, {"string", "text"},
	} {
		if wants[kind.kind] {
			ways = append(ways, kind.plain)
		}
		if word := text(p.inner(s, "then")["const"]); kind.kind == "string" && wants["string"] && word != "" {
			ways[len(ways)-1] = "the word " + word
		}
	}
	return strings.Join(ways, " or ")
}

// entries says what a list holds, with a count before it where there is one.
func (p *published) entries(s map[string]any, count string) string {
	title, _ := p.inner(s, "items")["title"].(string)
	switch {
	case title == "" && count == "":
		return "a list"
	case title == "":
		return count + " entries"
	case count == "":
		return "a list of " + title + "s"
	}
	return count + " " + title + "s"
}
