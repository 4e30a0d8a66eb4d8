// Package json writes comparisons as JSON in the shape that schema
// compare.schema.json describes. That shape is a contract with other programs:
// within a version keys are only added.
//
// Floor: above the words of comparisons, beside their other formats.
package json
