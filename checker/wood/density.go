package wood

// Density is the weight in lb per cubic foot that goes with a specific gravity G of 0.35 to 0.55, published in the 1992
// list of revisions to the Wood Structural Design Data; false for a G that the list does not have.
func Density(g float64) (pcf float64, ok bool) {
	switch g {
	case 0.35:
		return 24.0, true
	case 0.36:
		return 24.6, true
	case 0.37:
		return 25.3, true
	case 0.42:
		return 28.5, true
	case 0.43:
		return 29.2, true
	case 0.44:
		return 29.8, true
	case 0.50:
		return 33.6, true
	case 0.55:
		return 36.7, true
	}
	return 0, false
}
