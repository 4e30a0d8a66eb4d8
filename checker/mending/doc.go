// Package mending names the kinds of change that may mend a finding: the next
// larger joist, one more riser, a length moved to its limit. A check names in
// its METADATA those that the trade would try on it.
//
// It holds names and what they mean, and makes no change; remedy does.
//
// Floor: 1, it imports nothing of this module.
package mending
