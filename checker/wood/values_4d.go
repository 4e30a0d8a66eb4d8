package wood

// table4D holds reference design values of posts and timbers, 5 in and thicker and at most 2 in wider than thick, in
// psi. They are from memory of the NDS Supplement, Table 4D; the last rows are remembered poorly. Beams and stringers,
// which are wider, have values of their own and are not here.
func table4D() []row {
	return []row{
		{SouthernPine, SelectStructural, 0, 0.55, values{1500, 1000, 165, 375, 950, 1.5e6, 550e3}, unconfirmed},
		{SouthernPine, No1, 0, 0.55, values{1350, 900, 165, 375, 825, 1.5e6, 550e3}, unconfirmed},
		{SouthernPine, No2, 0, 0.55, values{850, 550, 165, 375, 525, 1.2e6, 440e3}, unconfirmed},
		{DouglasFirLarch, SelectStructural, 0, 0.5, values{1500, 1000, 170, 625, 1150, 1.6e6, 580e3}, unconfirmed},
		{DouglasFirLarch, No1, 0, 0.5, values{1200, 825, 170, 625, 1000, 1.6e6, 580e3}, unconfirmed},
		{DouglasFirLarch, No2, 0, 0.5, values{750, 475, 170, 625, 700, 1.3e6, 470e3}, unconfirmed},
		{HemFir, SelectStructural, 0, 0.43, values{1200, 800, 140, 405, 975, 1.3e6, 470e3}, unconfirmed},
		{HemFir, No1, 0, 0.43, values{975, 650, 140, 405, 850, 1.3e6, 470e3}, unconfirmed},
		{HemFir, No2, 0, 0.43, values{575, 375, 140, 405, 575, 1.1e6, 400e3}, unconfirmed},
		{SprucePineFir, SelectStructural, 0, 0.42, values{1050, 700, 125, 425, 800, 1.3e6, 470e3}, unconfirmed},
		{SprucePineFir, No1, 0, 0.42, values{850, 550, 125, 425, 700, 1.3e6, 470e3}, unconfirmed},
		{SprucePineFir, No2, 0, 0.42, values{500, 325, 125, 425, 500, 1.0e6, 370e3}, unconfirmed},
		{Redwood, SelectStructural, 0, 0.44, values{1400, 950, 145, 650, 1200, 1.3e6, 470e3}, unconfirmed},
		{Redwood, No1, 0, 0.44, values{1200, 800, 145, 650, 1050, 1.3e6, 470e3}, unconfirmed},
		{Redwood, No2, 0, 0.44, values{1000, 525, 145, 650, 900, 1.1e6, 400e3}, unconfirmed},
		{Redwood, No2OpenGrain, 0, 0.37, values{750, 400, 145, 420, 650, 0.9e6, 330e3}, lowConfidence},
		{WesternCedars, SelectStructural, 0, 0.36, values{1100, 725, 140, 425, 925, 1.0e6, 370e3}, lowConfidence},
		{WesternCedars, No1, 0, 0.36, values{875, 600, 140, 425, 800, 1.0e6, 370e3}, lowConfidence},
		{WesternCedars, No2, 0, 0.36, values{550, 350, 140, 425, 475, 0.8e6, 290e3}, lowConfidence},
		{WesternWoods, No2, 0, 0.36, values{500, 325, 125, 335, 400, 0.9e6, 330e3}, lowConfidence},
		{NorthernSpecies, No2, 0, 0.35, values{450, 300, 110, 350, 325, 0.9e6, 330e3}, lowConfidence},
	}
}
