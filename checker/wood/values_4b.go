package wood

// table4B holds reference design values of visually graded southern pine dimension lumber, in psi. Each row serves the
// widths up to the one it names, in actual inches, and has the size factor in it. They are from memory of the NDS
// Supplement, Table 4B, as changed on 1 June 2013.
func table4B() []row {
	const upTo4, upTo6, upTo8, upTo10, upTo12 = 3.5, 5.5, 7.25, 9.25, 11.25
	return []row{
		{SouthernPine, SelectStructural, upTo4, 0.55, values{2350, 1650, 175, 565, 1900, 1.8e6, 660e3}, unconfirmed},
		{SouthernPine, SelectStructural, upTo6, 0.55, values{2100, 1450, 175, 565, 1800, 1.8e6, 660e3}, unconfirmed},
		{SouthernPine, SelectStructural, upTo8, 0.55, values{1950, 1350, 175, 565, 1700, 1.8e6, 660e3}, unconfirmed},
		{SouthernPine, SelectStructural, upTo10, 0.55, values{1700, 1150, 175, 565, 1650, 1.8e6, 660e3}, unconfirmed},
		{SouthernPine, SelectStructural, upTo12, 0.55, values{1600, 1100, 175, 565, 1650, 1.8e6, 660e3}, unconfirmed},
		{SouthernPine, No1, upTo4, 0.55, values{1500, 1000, 175, 565, 1650, 1.6e6, 580e3}, unconfirmed},
		{SouthernPine, No1, upTo6, 0.55, values{1350, 875, 175, 565, 1550, 1.6e6, 580e3}, unconfirmed},
		{SouthernPine, No1, upTo8, 0.55, values{1250, 800, 175, 565, 1500, 1.6e6, 580e3}, unconfirmed},
		{SouthernPine, No1, upTo10, 0.55, values{1050, 700, 175, 565, 1450, 1.6e6, 580e3}, unconfirmed},
		{SouthernPine, No1, upTo12, 0.55, values{1000, 650, 175, 565, 1400, 1.6e6, 580e3}, unconfirmed},
		{SouthernPine, No2, upTo4, 0.55, values{1100, 675, 175, 565, 1450, 1.4e6, 510e3}, unconfirmed},
		{SouthernPine, No2, upTo6, 0.55, values{1000, 600, 175, 565, 1400, 1.4e6, 510e3}, governs},
		{SouthernPine, No2, upTo8, 0.55, values{925, 550, 175, 565, 1350, 1.4e6, 510e3}, governs},
		{SouthernPine, No2, upTo10, 0.55, values{800, 475, 175, 565, 1300, 1.4e6, 510e3}, governs},
		{SouthernPine, No2, upTo12, 0.55, values{750, 450, 175, 565, 1250, 1.4e6, 510e3}, governs},
	}
}
