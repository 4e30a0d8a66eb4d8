package facts

import (
	"slices"

	"plumbrule/checker/model"
)

// addOutdoorLumber lists the kinds of lumber that members outdoors are cut
// from, in the order of the description. What is glued or of steel is another
// matter: how it resists the weather is a question of the product.
func (f *Facts) addOutdoorLumber(deck *model.Deck) {
	var named []string
	use := func(names ...*model.Words) {
		for _, name := range names {
			if name != nil {
				named = append(named, name.V)
			}
		}
	}
	for i := range deck.Platforms {
		p := &deck.Platforms[i]
		use(p.LumberNames()...)
		if d := p.Decking; d != nil && words(d.Material) == "wood" {
			use(d.Lumber)
		}
	}
	for i := range deck.Stairs {
		if s := deck.Stairs[i].Stringers; s != nil {
			use(s.Lumber)
		}
	}
	for i := range deck.Lumber {
		kind := &deck.Lumber[i].Value
		if !slices.Contains(named, deck.Lumber[i].Name) || kind.Product != nil && kind.Product.V != "sawn" {
			continue
		}
		f.OutdoorLumber = append(f.OutdoorLumber, OutdoorLumber{
			At: []string{kind.At}, Name: deck.Lumber[i].Name,
			Species: shown(kind.Species), Treated: shown(kind.Treated), NaturallyDurable: shown(kind.Durable),
		})
	}
}
