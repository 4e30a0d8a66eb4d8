package wood

// table4A holds reference design values of visually graded dimension lumber, 2 to 4 in thick, all species but southern
// pine, in psi, in the order of values. They are from memory of the NDS Supplement, 2012 to 2018 editions, Table 4A.
func table4A() []row {
	return []row{
		{DouglasFirLarch, SelectStructural, 0, 0.5, values{1500, 1000, 180, 625, 1700, 1.9e6, 690e3}, unconfirmed},
		{DouglasFirLarch, No1AndBetter, 0, 0.5, values{1200, 800, 180, 625, 1550, 1.8e6, 660e3}, unconfirmed},
		{DouglasFirLarch, No1, 0, 0.5, values{1000, 675, 180, 625, 1500, 1.7e6, 620e3}, unconfirmed},
		{DouglasFirLarch, No2, 0, 0.5, values{900, 575, 180, 625, 1350, 1.6e6, 580e3}, governs},
		{DouglasFirLarch, No3, 0, 0.5, values{525, 325, 180, 625, 775, 1.4e6, 510e3}, unconfirmed},
		{HemFir, SelectStructural, 0, 0.43, values{1400, 925, 150, 405, 1500, 1.6e6, 580e3}, unconfirmed},
		{HemFir, No1AndBetter, 0, 0.43, values{1100, 725, 150, 405, 1350, 1.5e6, 550e3}, unconfirmed},
		{HemFir, No1, 0, 0.43, values{975, 625, 150, 405, 1350, 1.5e6, 550e3}, unconfirmed},
		{HemFir, No2, 0, 0.43, values{850, 525, 150, 405, 1300, 1.3e6, 470e3}, governs},
		{HemFir, No3, 0, 0.43, values{500, 300, 150, 405, 725, 1.2e6, 440e3}, unconfirmed},
		{SprucePineFir, SelectStructural, 0, 0.42, values{1250, 700, 135, 425, 1400, 1.5e6, 550e3}, unconfirmed},
		{SprucePineFir, No1No2, 0, 0.42, values{875, 450, 135, 425, 1150, 1.4e6, 510e3}, unconfirmed},
		{SprucePineFir, No3, 0, 0.42, values{500, 250, 135, 425, 650, 1.2e6, 440e3}, unconfirmed},
		{SprucePineFirSouth, SelectStructural, 0, 0.36, values{1300, 575, 135, 335, 1200, 1.3e6, 470e3}, unconfirmed},
		{SprucePineFirSouth, No1, 0, 0.36, values{875, 400, 135, 335, 1050, 1.2e6, 440e3}, unconfirmed},
		{SprucePineFirSouth, No2, 0, 0.36, values{775, 350, 135, 335, 1000, 1.1e6, 400e3}, unconfirmed},
		{Redwood, SelectStructural, 0, 0.44, values{1350, 800, 160, 650, 1500, 1.4e6, 510e3}, unconfirmed},
		{Redwood, No1, 0, 0.44, values{975, 575, 160, 650, 1200, 1.3e6, 470e3}, unconfirmed},
		{Redwood, No1OpenGrain, 0, 0.37, values{775, 450, 160, 425, 900, 1.1e6, 400e3}, unconfirmed},
		{Redwood, No2, 0, 0.44, values{925, 525, 160, 650, 950, 1.2e6, 440e3}, unconfirmed},
		{Redwood, No2OpenGrain, 0, 0.37, values{725, 425, 160, 425, 700, 1.0e6, 370e3}, unconfirmed},
		{WesternCedars, SelectStructural, 0, 0.36, values{1000, 600, 155, 425, 1000, 1.1e6, 400e3}, unconfirmed},
		{WesternCedars, No1, 0, 0.36, values{725, 425, 155, 425, 825, 1.0e6, 370e3}, unconfirmed},
		{WesternCedars, No2, 0, 0.36, values{700, 425, 155, 425, 650, 1.0e6, 370e3}, governs},
		{WesternWoods, SelectStructural, 0, 0.36, values{900, 400, 135, 335, 1050, 1.2e6, 440e3}, unconfirmed},
		{WesternWoods, No1, 0, 0.36, values{675, 300, 135, 335, 950, 1.1e6, 400e3}, unconfirmed},
		{WesternWoods, No2, 0, 0.36, values{675, 300, 135, 335, 900, 1.0e6, 370e3}, governs},
		{NorthernSpecies, SelectStructural, 0, 0.35, values{975, 425, 110, 350, 1100, 1.1e6, 400e3}, unconfirmed},
		{NorthernSpecies, No1No2, 0, 0.35, values{625, 275, 110, 350, 850, 1.1e6, 400e3}, governs},
	}
}
