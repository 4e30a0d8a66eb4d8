package content

// Cautions gives the remarks that stand in every report, whatever was found.
func Cautions() []string {
	return []string{
		"Only the rule sets named here were run, on nothing but what the file shows. That something was not found is no proof that nobody can get hurt.",
		"The building department decides, by the code that it has adopted and its local amendments. Editions differ.",
		"Figures from span and footing tables hold for the loads, species, grade, moisture and layout they were worked out for. Beyond those, ask a licensed engineer.",
		"A drawing is not a deck: look at what is built. Have it inspected before concrete is placed and again before framing is covered.",
		"Have buried lines located before anybody digs.",
		"Treated wood eats plain steel: use coatings listed for it, and do not mix metals.",
		"Ledgers, guards and stairs are where people get hurt. Look at those findings before the others.",
		"Hot tubs, roofs, planters, decks of several storeys and attachment to a cantilevered floor of the house are outside such tables: each needs an engineer.",
	}
}

// Caution is the one line left of the cautions where a report has room for no
// more.
func Caution() string {
	return "nothing found is no proof; the building department and licensed practice decide"
}

// NothingChecked is all that stands in place of rule sets and cautions on a
// terminal where not one file could be read: the list would drown the reasons.
func NothingChecked() string {
	return "nothing was checked, which says nothing of the deck; the building department and licensed practice decide"
}
