package schema

import (
	"slices"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// leaf is one complaint of the validator that has no deeper cause.
type leaf struct {
	path    []string       // of the value, as plain keys
	keyword string         // what it does not satisfy; "false" where nothing may stand
	owner   map[string]any // the schema object with that keyword
	words   []string       // words that may stand instead of the value
	inName  bool           // the complaint is about a key, not about its value
}

// leaves goes down to the complaints that name a mistake. Of alternatives only the branch that fits best is followed,
// and none where the schema says in a $comment what is wanted. The words are alternatives met on the way down.
func (p *published) leaves(e *jsonschema.ValidationError, words []string) []leaf {
	if e.Message == "" { // a mere group, whose location is not that of a keyword
		return p.all(e.Causes, words)
	}
	path := tokens(e.AbsoluteKeywordLocation)
	if len(path) == 0 {
		return p.all(e.Causes, words)
	}
	if refused, is := p.at(path).(bool); is && !refused && len(e.Causes) == 0 && !isAssertion(path) {
		return []leaf{{path: tokens("#" + e.InstanceLocation), keyword: "false", words: words}}
	}
	keyword, owner := path[len(path)-1], p.object(path[:len(path)-1])
	if keyword == "else" {
		words = slices.Concat(words, wordsOf(p.object(slices.Concat(path[:len(path)-1], []string{"if"}))))
	}
	_, explained := owner["$comment"]
	switch {
	case len(e.Causes) == 0 || keyword == "contains" || keyword == "minContains":
		// Nothing lies deeper, or only why none of the entries is the missing one.
	case keyword != "anyOf" && keyword != "oneOf":
		return p.all(e.Causes, words)
	case !explained:
		return p.leaves(best(e.Causes), words)
	}
	if list := len(path) - 2; list > 0 && path[list-1] == "dependentRequired" {
		keyword, owner = "required", map[string]any{"required": []any{p.at(path)}}
	}
	return []leaf{{
		path:    tokens("#" + e.InstanceLocation),
		keyword: keyword,
		owner:   owner,
		words:   words,
		inName:  strings.Contains(e.KeywordLocation, "/propertyNames/"),
	}}
}

func (p *published) all(causes []*jsonschema.ValidationError, words []string) []leaf {
	var found []leaf
	for _, cause := range causes {
		found = append(found, p.leaves(cause, words)...)
	}
	return found
}

// isAssertion tells "additionalProperties": false, which names the object, from a false schema, which names the value.
func isAssertion(path []string) bool {
	last := path[len(path)-1]
	return last == "additionalProperties" || last == "uniqueItems"
}

// best picks the branch whose complaint lies deepest in the document: it is the one that got furthest before it
// stopped fitting. Of equals the one with fewer complaints is taken, then the first.
func best(branches []*jsonschema.ValidationError) *jsonschema.ValidationError {
	return slices.MinFunc(branches, func(a, b *jsonschema.ValidationError) int {
		deepA, countA := reach(a)
		deepB, countB := reach(b)
		if deepA != deepB {
			return deepB - deepA
		}
		return countA - countB
	})
}

// reach gives how deep in the document the deepest complaint lies, and how many there are.
func reach(e *jsonschema.ValidationError) (deepest, count int) {
	if len(e.Causes) == 0 {
		return strings.Count(e.InstanceLocation, "/"), 1
	}
	for _, cause := range e.Causes {
		d, c := reach(cause)
		deepest, count = max(deepest, d), count+c
	}
	return deepest, count
}

// wordsOf gives the words that a condition asks for: its enum or const.
func wordsOf(condition map[string]any) []string {
	if word, ok := condition["const"].(string); ok {
		return []string{word}
	}
	return texts(condition["enum"])
}

// texts gives the strings of a list of a schema.
func texts(list any) []string {
	items, _ := list.([]any)
	var found []string
	for _, item := range items {
		if text, ok := item.(string); ok {
			found = append(found, text)
		}
	}
	return found
}
