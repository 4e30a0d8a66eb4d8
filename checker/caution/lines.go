package caution

// Closing gives the remarks that stand in every report, whatever was found.
func Closing() []Line {
	return []Line{
		"Only the rule sets named here were run, on nothing but what the file shows. That something was not found is no proof that nobody can get hurt.",
		"The authority at the place decides, not this report: {the building department}, by {the code that it has adopted}, with any local amendments. Editions differ.",
		"Figures from span and footing tables hold for the loads, species, grade, moisture and layout they were worked out for. Beyond those, licensed practice has to answer: ask {a licensed engineer}.",
		"A drawing is not a deck: look at what is built. Have it inspected before concrete is placed and again before framing is covered.",
		"Have {buried lines} located before anybody digs.",
		"{Treated wood} eats plain steel: use coatings rated for it, and do not mix metals.",
		"{Ledgers}, {guards} and stairs are where people get hurt. Look at those findings before the others.",
		"{Hot tubs}, roofs, planters, decks of {several stories} and attachment to a cantilevered floor of the house are outside such tables: each needs an engineer.",
	}
}

// Short is the one line left of the remarks where there is room for no more.
func Short() Line {
	return "nothing found is no proof; the authority at the place ({the building department}) and licensed practice ({a licensed engineer}) decide"
}

// Decides says who decides, for what is no report: a packet, the words about a
// check, the page of a set.
func Decides() Line {
	return "The authority at the place ({the building department}) decides, by {the code that it has adopted}; licensed practice answers for what is built."
}

// All gives every remark of the program.
func All() []Line { return append(Closing(), Short(), Decides()) }
