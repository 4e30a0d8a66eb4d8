package source

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"go.yaml.in/yaml/v4"
	"go.yaml.in/yaml/v4/plugin/loaderlimits"
)

func (r *reader) readYAML() (*Node, *Error) {
	if err := r.checkYAMLText(); err != nil {
		return nil, err
	}
	base := r.starts[0]
	docs, err := parseYAML(r.data[base:])
	if err != nil {
		return nil, r.rewordYAML(err)
	}
	if len(docs) == 0 {
		return nil, r.refuse(base, base, "", "the file holds only comments")
	}
	if len(docs) > 1 {
		at := r.offset(docs[1].Line, docs[1].Column)
		return nil, r.refuse(at, r.lineEnd(at), "one file holds one design; move the second into a file of its own",
			"a second YAML document starts here")
	}
	top := docs[0].Content[0]
	if isEmpty(top) {
		return nil, r.refuse(base, base, "", "the file holds no value")
	}
	root := &Node{}
	if e := r.convert(root, top, 1); e != nil {
		return nil, e
	}
	return root, nil
}

// parseYAML reads the first document, and the start of a second if there is
// one, so that the caller can refuse it.
func parseYAML(data []byte) (docs []*yaml.Node, err error) {
	// The library panics where it finds its own state wrong; on a file from
	// outside that must end in an error and not in a crash.
	defer func() {
		if v := recover(); v != nil {
			err = fmt.Errorf("the YAML library failed: %v", v)
		}
	}()
	limits := loaderlimits.New(loaderlimits.DepthValue(MaxDepth))
	loader, err := yaml.NewLoader(bytes.NewReader(data), yaml.WithPlugin(limits))
	if err != nil {
		return nil, err
	}
	for len(docs) < 2 {
		doc := &yaml.Node{}
		if err := loader.Load(doc); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		docs = append(docs, doc)
	}
	return docs, nil
}

// convert fills n, whose Pointer and Parent are set, from the library's node.
func (r *reader) convert(n *Node, from *yaml.Node, depth int) *Error {
	start := r.offset(from.Line, from.Column)
	if err := r.checkFeatures(from, start); err != nil {
		return err
	}
	if from.Kind == yaml.ScalarNode {
		return r.convertScalar(n, from, start)
	}
	if depth > MaxDepth {
		return r.tooDeep(start)
	}
	var end int
	var err *Error
	if from.Kind == yaml.MappingNode {
		n.Kind = Object
		end, err = r.convertMapping(n, from, start, depth)
	} else {
		n.Kind = Array
		end, err = r.convertSequence(n, from, start, depth)
	}
	if err != nil {
		return err
	}
	if b := r.data[start]; from.Style&yaml.FlowStyle != 0 && (b == '{' || b == '[') {
		end = r.closingBracket(end)
	}
	n.Span = r.span(start, end)
	return nil
}

// convertMapping gives the offset where the last member ends, or where the
// first would start.
func (r *reader) convertMapping(n *Node, from *yaml.Node, start, depth int) (int, *Error) {
	end := start + 1
	keys := make(map[string]Span, len(from.Content)/2)
	for i := 0; i < len(from.Content); i += 2 {
		key, value := from.Content[i], from.Content[i+1]
		span, err := r.keySpan(key)
		if err != nil {
			return 0, err
		}
		if first, ok := keys[key.Value]; ok {
			return 0, r.duplicate(key.Value, span, first)
		}
		keys[key.Value] = span
		child := n.child(key.Value)
		n.add(key.Value, span, child)
		if isEmpty(value) {
			at := r.afterColon(span.End.Offset, r.offset(value.Line, value.Column))
			child.Kind, child.Span = Null, r.span(at, at)
		} else if err := r.convert(child, value, depth+1); err != nil {
			return 0, err
		}
		end = child.Span.End.Offset
	}
	return end, nil
}

// convertSequence gives the offset where the last item ends, or where the first
// would start.
func (r *reader) convertSequence(n *Node, from *yaml.Node, start, depth int) (int, *Error) {
	end := start + 1
	for _, value := range from.Content {
		item := n.item()
		n.Items = append(n.Items, item)
		if err := r.convert(item, value, depth+1); err != nil {
			return 0, err
		}
		end = item.Span.End.Offset
	}
	return end, nil
}

func (r *reader) convertScalar(n *Node, from *yaml.Node, start int) *Error {
	end := r.scalarEnd(from, start)
	n.Span = r.span(start, end)
	n.Kind, n.Text = String, from.Value
	if from.Style != 0 {
		return nil
	}
	if problem, hint := misspelt(from.Value); problem != "" {
		return r.refuse(start, end, hint, "%s", problem)
	}
	n.Kind, n.Text = resolve(from.Value)
	return nil
}

// resolve gives the kind and the text of a plain scalar after YAML 1.2's core
// schema, narrowed to JSON's numbers: yes, no, on, off and dates are strings.
func resolve(plain string) (Kind, string) {
	switch plain {
	case "", "~", "null", "Null", "NULL":
		return Null, ""
	case "true", "True", "TRUE":
		return Bool, "true"
	case "false", "False", "FALSE":
		return Bool, "false"
	}
	if mayBeNumber(plain) && numeral.MatchString(plain) {
		return Number, plain
	}
	return String, plain
}

// keySpan gives the place of a key after making sure that it is text.
func (r *reader) keySpan(key *yaml.Node) (Span, *Error) {
	start := r.offset(key.Line, key.Column)
	if err := r.checkFeatures(key, start); err != nil {
		return Span{}, err
	}
	if key.Kind != yaml.ScalarNode {
		return Span{}, r.refuse(start, min(start+1, len(r.data)), "a key is plain text, such as height; text that starts with a bracket needs quotes",
			"a list or mapping is used as a key")
	}
	if isEmpty(key) {
		return Span{}, r.refuse(start, min(start+1, len(r.data)), "", "a key is missing before the colon")
	}
	end := r.scalarEnd(key, start)
	if key.Style != 0 {
		return r.span(start, end), nil
	}
	if key.Value == "<<" {
		return Span{}, r.refuse(start, end, "write the members out in full", "YAML merge keys (<<) are not read, as they hide where a value stands")
	}
	kind, _ := resolve(key.Value)
	if problem, _ := misspelt(key.Value); problem != "" {
		kind = Number
	}
	if kind != String {
		return Span{}, r.refuse(start, end, fmt.Sprintf(`write "%s" in quotes if this key is meant`, clip(key.Value)),
			"the key %s is read as a %s, and keys are text", clip(key.Value), kind)
	}
	return r.span(start, end), nil
}

// checkFeatures refuses what has no counterpart in JSON.
func (r *reader) checkFeatures(n *yaml.Node, start int) *Error {
	switch {
	case n.Kind == yaml.AliasNode:
		return r.alias(start)
	case n.Anchor != "":
		return r.anchor(start)
	case n.Style&yaml.TaggedStyle != 0 || n.Tag == "!":
		return r.tag(start)
	}
	return nil
}

// isEmpty reports whether a node stands for a value that was left out.
func isEmpty(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Style == 0 && n.Value == "" && n.Anchor == "" && n.Tag != "!"
}
