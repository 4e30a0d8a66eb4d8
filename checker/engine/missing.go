package engine

import (
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/source"
	"plumbrule/checker/wording"
)

// missing words what is not shown: "guard G1: height is not shown". The field
// is a path in the language of designs, guards[].height, and at leads to the
// object that lacks it.
//
// The element and the field are called what the set calls them; names that the
// design gives stay as they are.
func (d design) missing(at, field string, say wording.Wording) string {
	steps, err := d.walk(at)
	if err != nil {
		return notShown([]string{field}, []bool{false}, say)
	}
	steps = steps[1:] // the root has no name
	want := fieldTokens(field)
	element := namedStep(steps)
	subject := ""
	if element >= 0 {
		subject = subjectOf(steps, element, say) + ": "
	}
	if aligned(steps, want, element) {
		want = want[element+1:]
		steps = steps[element+1:]
	} else {
		steps = nil
	}
	given := fill(want, steps)
	return subject + notShown(want, given, say)
}

// notShown words the path of a field. Names that the design gives stay as they
// are.
func notShown(path []string, given []bool, say wording.Wording) string {
	var said, run []string
	end := func() {
		if len(run) > 0 {
			said = append(said, say.Say(strings.Join(run, " ")))
		}
		run = nil
	}
	last := ""
	for i, token := range path {
		for _, word := range split(token) {
			switch {
			case given[i]:
				end()
				said, last = append(said, word), ""
			case word != last: // house.house_rim is the house rim
				run, last = append(run, word), word
			}
		}
	}
	end()
	text, is := strings.Join(said, " "), verb(strings.Join(path, "."))
	if text == singular(text) { // guards may be called guarding
		is = "is"
	}
	return text + " " + is + " not shown"
}

// fill puts what the steps say in the place of wildcards, and leaves those
// empty that lie further on. It tells which ones were wildcards.
func fill(want []string, steps []step) (given []bool) {
	here := true
	given = make([]bool, len(want))
	for i := range want {
		given[i] = isWildcard(want[i])
		here = here && i < len(steps) && (isWildcard(want[i]) || want[i] == steps[i].token)
		if !isWildcard(want[i]) {
			continue
		}
		if i > 0 {
			want[i-1] = singular(want[i-1])
		}
		want[i] = named(want, i)
		if here {
			want[i] = steps[i].token
		}
		if n, err := strconv.Atoi(want[i]); err == nil {
			want[i] = strconv.Itoa(n + 1)
		}
	}
	return given
}

// fieldShown is a field as it is printed: edges.front.drop for
// edges.<front>.drop, while edges.<edge>.drop keeps its brackets.
func fieldShown(field string) string {
	tokens := strings.Split(field, ".")
	for i, token := range tokens {
		if inner, isName := strings.CutPrefix(strings.TrimSuffix(token, ">"), "<"); isName && i > 0 && !generic(inner, tokens[i-1]) {
			tokens[i] = inner
		}
	}
	return strings.Join(tokens, ".")
}

// named gives the name in <name> where that is one, and not the word for any
// element of its kind, as in edges.<edge>.
func named(want []string, i int) string {
	name, isName := strings.CutPrefix(strings.TrimSuffix(want[i], ">"), "<")
	if !isName || i > 0 && generic(name, want[i-1]) {
		return ""
	}
	return name
}

// generic reports whether a word in brackets stands for any element of its
// kind: edges.<edge>, lumber.<name>.
func generic(word, kind string) bool { return word == "name" || word == kind || word == singular(kind) }

// isWildcard recognizes the parts of a field that stand for an element: [] and
// <edge> for any, <front> for the one of that name.
func isWildcard(token string) bool {
	return token == "[]" || strings.HasPrefix(token, "<")
}

// fieldTokens splits guards[].height into guards, [] and height.
func fieldTokens(field string) []string {
	return strings.Split(strings.ReplaceAll(field, "[]", ".[]"), ".")
}

// namedStep gives the last step to an element with a mark, else the last one
// to an element of a list, else -1.
func namedStep(steps []step) int {
	listed := -1
	for i := len(steps) - 1; i >= 0; i-- {
		if label(steps[i].node, "mark") != "" {
			return i
		}
		if listed < 0 && steps[i].node.Parent.Kind == source.Array {
			listed = i
		}
	}
	return listed
}

// subjectOf names an element: by its mark, or by its number from one.
func subjectOf(steps []step, element int, say wording.Wording) string {
	kind := steps[element].token
	name := label(steps[element].node, "mark")
	if n, err := strconv.Atoi(kind); err == nil && element > 0 {
		kind = steps[element-1].token
		if name == "" {
			name = strconv.Itoa(n + 1)
		}
	}
	return strings.TrimSpace(say.Say(words(singular(kind))) + " " + name)
}

// aligned reports whether the field lies in the element that the steps lead
// to, so that the element's name says the first part of it.
func aligned(steps []step, want []string, element int) bool {
	if element+1 >= len(want) {
		return false
	}
	for i := range element + 1 {
		if want[i] != steps[i].token && !isWildcard(want[i]) {
			return false
		}
	}
	return true
}

// words prints a path of field names for people.
func words(path string) string { return strings.Join(split(path), " ") }

func split(path string) []string {
	path = strings.NewReplacer("[]", "", "<", "", ">", "").Replace(path) // a path that nothing filled
	return strings.FieldsFunc(path, func(r rune) bool { return r == '.' || r == '_' || r == ' ' })
}

func singular(word string) string {
	if strings.HasSuffix(word, "ss") || strings.HasSuffix(word, "us") {
		return word
	}
	return strings.TrimSuffix(word, "s")
}

// verb goes with the last field of a path: risers are, a drop within 36 in and
// a restraint at beams is.
func verb(path string) string {
	last := path[strings.LastIndex(path, ".")+1:]
	parts := strings.Split(last, "_")
	for _, part := range parts {
		if slices.Contains([]string{"at", "in", "of", "to", "per", "within"}, part) {
			return "is"
		}
	}
	if last != singular(last) {
		return "are"
	}
	return "is"
}
