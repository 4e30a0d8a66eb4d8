package engine

import (
	"reflect"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// encoder builds a term of the language from a value of one Go type. It gives
// nil for a nil pointer.
type encoder func(reflect.Value) *ast.Term

// newEncoder prepares the encoder of a type, which must be made of structs,
// slices, pointers, texts, flags and whole numbers. Names and omissions follow
// the json tags. Terms are built directly, as writing and reading JSON would
// take several times as long.
func newEncoder(t reflect.Type) encoder {
	return (&encoders{made: map[reflect.Type]encoder{}}).of(t)
}

// encoders shares the encoders of types met more than once.
type encoders struct {
	made map[reflect.Type]encoder
}

func (e *encoders) of(t reflect.Type) encoder {
	if made, ok := e.made[t]; ok {
		return made
	}
	made := e.make(t)
	e.made[t] = made
	return made
}

func (e *encoders) make(t reflect.Type) encoder {
	switch t.Kind() {
	case reflect.Pointer:
		return pointer(e.of(t.Elem()))
	case reflect.Slice:
		return array(e.of(t.Elem()))
	case reflect.Struct:
		return e.object(t)
	case reflect.String:
		return func(v reflect.Value) *ast.Term { return ast.StringTerm(v.String()) }
	case reflect.Bool:
		return func(v reflect.Value) *ast.Term { return ast.InternedTerm(v.Bool()) }
	default:
		return func(v reflect.Value) *ast.Term { return ast.InternedTerm(v.Int()) }
	}
}

func pointer(elem encoder) encoder {
	return func(v reflect.Value) *ast.Term {
		if v.IsNil() {
			return nil
		}
		return elem(v.Elem())
	}
}

func array(elem encoder) encoder {
	return func(v reflect.Value) *ast.Term {
		terms := make([]*ast.Term, v.Len())
		for i := range terms {
			terms[i] = elem(v.Index(i))
		}
		return ast.ArrayTerm(terms...)
	}
}

// member is one field of a struct.
type member struct {
	index     int
	key       *ast.Term
	omitEmpty bool
	encode    encoder
}

func (e *encoders) object(t reflect.Type) encoder {
	members := make([]member, t.NumField())
	for i := range members {
		name, options, _ := strings.Cut(t.Field(i).Tag.Get("json"), ",")
		members[i] = member{i, ast.StringTerm(name), options == "omitempty", e.of(t.Field(i).Type)}
	}
	return func(v reflect.Value) *ast.Term {
		pairs := make([][2]*ast.Term, 0, len(members))
		for _, m := range members {
			field := v.Field(m.index)
			if m.omitEmpty && field.IsZero() {
				continue
			}
			if term := m.encode(field); term != nil {
				pairs = append(pairs, [2]*ast.Term{m.key, term})
			}
		}
		return ast.ObjectTerm(pairs...)
	}
}
