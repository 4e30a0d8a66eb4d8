package lines

import "github.com/fatih/color"

// Paint puts color on a piece of a line, or leaves it as it is.
type Paint func(string) string

// Brush gives a paint of those attributes, or one that leaves everything as it
// is.
func Brush(colour bool, attributes ...color.Attribute) Paint {
	c := color.New(attributes...)
	// Set on the instance, or the library would look at the process's own terminal
	// and environment.
	if colour {
		c.EnableColor()
	} else {
		c.DisableColor()
	}
	return func(s string) string { return c.Sprint(s) }
}
