// Package caution holds the remarks that nothing the program prints goes
// without: that it proves nothing, and who decides.
//
// A remark has terms that another country calls otherwise, and a wording may
// say those. What stands around them is the same under every rule set, so that
// no set can take a remark out, or the authority and the licensed practice that
// it defers to. It chooses no sets and lays nothing out.
//
// Floor: above wording.
package caution
