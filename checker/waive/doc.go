// Package waive reads waivers and applies them: a finding outside its limit
// that a waiver names becomes excused, and stays in the report with the words
// by whom, why, until when and in which document. A waiver that excuses nothing
// and one that has run out are findings of their own.
//
// It does not know the clock: whoever calls it says which day it is. It reads
// no file by itself, and no waiver excuses what is not shown.
//
// Floor: above the catalog of checks, beside the rule sets.
package waive
