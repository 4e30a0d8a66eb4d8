package schema

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/source"
)

// word turns a complaint of the validator into what a builder can act on. One complaint can hold several mistakes: an
// object with two unknown keys is complained of once.
func (p *published) word(l leaf, root *source.Node) []finding {
	n := find(root, l.path)
	if n == nil {
		n = root // cannot happen while the validator looks at the same tree; the message still gets out
	}
	if l.inName {
		return []finding{{closes: true, Problem: Problem{
			Span: keySpan(n), Pointer: n.Pointer,
			Message: fmt.Sprintf("%s cannot be a name here", shown(l.path[len(l.path)-1])),
		}}}
	}
	switch l.keyword {
	case "additionalProperties":
		return p.unknownKeys(l, n)
	case "required":
		return p.missingKeys(l, n)
	case "type":
		return []finding{{Problem: p.wrongKind(l, n)}}
	case "false":
		return []finding{{closes: true, Problem: Problem{
			Span: keySpan(n), Pointer: n.Pointer, Message: name(n) + " has no place here",
		}}}
	case "not":
		return []finding{refused(l, n)}
	case "anyOf", "oneOf", "minProperties":
		return []finding{p.lacking(l, n)}
	}
	message, hint := p.wrongValue(l, n)
	return []finding{{Problem: Problem{Span: n.Span, Pointer: n.Pointer, Message: message, Hint: hint}}}
}

// unknownKeys names every key that the object does not know, in its place.
func (p *published) unknownKeys(l leaf, n *source.Node) []finding {
	properties, _ := l.owner["properties"].(map[string]any)
	known := sortedKeys(properties)
	var found []finding
	for _, m := range n.Members {
		if _, ok := properties[m.Key]; ok {
			continue
		}
		f := finding{closes: true, object: n.Pointer, Problem: Problem{
			Span: m.KeySpan, Pointer: m.Value.Pointer,
			Message: fmt.Sprintf("unknown key %s in %s", shown(m.Key), titled(l.owner)),
		}}
		f.meant, f.Hint = p.meantKey(m.Key, properties)
		f.Hint = sentences(f.Hint, "keys here: "+list(known))
		found = append(found, f)
	}
	return found
}

// missingKeys says what an object cannot be without.
func (p *published) missingKeys(l leaf, n *source.Node) []finding {
	properties, _ := l.owner["properties"].(map[string]any)
	var found []finding
	for _, key := range texts(l.owner["required"]) {
		if n.Member(key) != nil {
			continue
		}
		f := finding{lacks: []string{key}, Problem: Problem{
			Span: start(n), Pointer: n.Pointer, Message: fmt.Sprintf("%s lacks the key %s", titled(l.owner), shown(key)),
		}}
		property, _ := properties[key].(map[string]any)
		if examples, _ := property["examples"].([]any); len(examples) > 0 {
			if example, err := json.Marshal(examples[0]); err == nil {
				f.Hint = fmt.Sprintf("add it, for example %s: %s", key, example)
			}
		}
		found = append(found, f)
	}
	return found
}

// refused words a "not", which says in a comment why. An empty one refuses the key, any other one the value.
func refused(l leaf, n *source.Node) finding {
	why, _ := l.owner["$comment"].(string)
	if never, _ := l.owner["not"].(map[string]any); len(never) > 0 {
		return finding{Problem: Problem{Span: n.Span, Pointer: n.Pointer, Message: orElse(why, name(n)+" does not fit here")}}
	}
	message := name(n) + " has no place here"
	if why != "" {
		message += ": " + why
	}
	return finding{closes: true, Problem: Problem{Span: keySpan(n), Pointer: n.Pointer, Message: message}}
}

// lacking words alternatives that say in a comment what is wanted, or of which more than one is there, and an object
// without any key.
func (p *published) lacking(l leaf, n *source.Node) finding {
	why, _ := l.owner["$comment"].(string)
	otherwise := name(n) + " fits more than one of the ways to write it"
	if l.keyword == "minProperties" {
		otherwise = titled(l.owner) + " is empty"
	}
	f := finding{Problem: Problem{Span: start(n), Pointer: n.Pointer, Message: orElse(why, otherwise)}}
	branches, _ := l.owner[l.keyword].([]any)
	for _, branch := range branches {
		if b, ok := branch.(map[string]any); ok {
			f.lacks = append(f.lacks, texts(b["required"])...)
		}
	}
	return f
}

// meantKey guesses what an unknown key was meant to be: a word used elsewhere for a key that is known here, the
// nearest spelling, or a key that belongs into another object, which is what a wrong indentation makes of it.
func (p *published) meantKey(key string, properties map[string]any) (meant, hint string) {
	known := sortedKeys(properties)
	for _, candidate := range known {
		property, _ := properties[candidate].(map[string]any)
		if slices.Contains(p.elsewhere(property), folded(key)) {
			return candidate, "it is called " + shown(candidate) + " here"
		}
	}
	if meant := nearest(key, known); meant != "" {
		return meant, "did you mean " + shown(meant) + "?"
	}
	if owners := p.ownersOf(key); len(owners) > 0 && len(owners) <= maxOwners {
		return "", "it belongs into " + strings.Join(owners, " or ")
	}
	return "", ""
}

const maxOwners = 3

// elsewhere gives the words that a description lists after "Elsewhere:", folded.
func (p *published) elsewhere(property map[string]any) []string {
	var words []string
	for _, s := range []map[string]any{property, p.resolve(property)} {
		description, _ := s["description"].(string)
		_, tail, _ := strings.Cut(description, "Elsewhere: ")
		tail, _, _ = strings.Cut(tail, ".")
		for _, part := range strings.Split(withoutParentheses(tail), ",") {
			if word := folded(part); word != "" {
				words = append(words, word)
			}
		}
	}
	return words
}

// withoutParentheses drops the countries behind a word, whose commas do not part words.
func withoutParentheses(text string) string {
	var b strings.Builder
	for {
		before, rest, found := strings.Cut(text, "(")
		b.WriteString(before)
		if !found {
			return b.String()
		}
		_, text, _ = strings.Cut(rest, ")")
	}
}

// ownersOf gives the titles of the objects that know a key, sorted.
func (p *published) ownersOf(key string) []string {
	var owners []string
	definitions := p.object([]string{"$defs"})
	for _, definition := range definitions {
		d, _ := definition.(map[string]any)
		properties, _ := d["properties"].(map[string]any)
		if _, ok := properties[key]; ok {
			owners = append(owners, titled(d))
		}
	}
	slices.Sort(owners)
	return slices.Compact(owners)
}
